// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.performance.ElasticLaunch;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.QuantityKind;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.examples.brief.Field;
import io.github.wingwright.stability.design.Launch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a brief says that its glider is launched: at a speed, or by an elastic from which the speed follows.
 *
 * <p>An elastic is told by its full pull and stretch, which are taken as a straight line from rest, or by a table of what was
 * measured on the way out:
 *
 * <pre>{@code
 * "elastic": { "pull": "8 N", "stretch": "0.5 m", "mass": "4 g", "glider_mass": "55 g" }
 * "elastic": { "measured": [["0.1 m", "3 N"], ["0.3 m", "5 N"], ["0.5 m", "8 N"]], "glider_mass": "55 g" }
 * }</pre>
 *
 * @param launch the launch
 * @param speedUnit the unit that speeds are shown in, that of the brief
 * @param heightUnit the unit that distances are shown in, that of the height of the hand
 */
record LaunchBrief(Launch launch, NamedUnit<Speed> speedUnit, NamedUnit<Length> heightUnit) {

  static LaunchBrief from(Field field) {
    Optional<Field> stretched = field.optional("elastic");
    QuantityKind.Written<Length> height = field.required("height").written(Length.KIND, "0.1 m", "100 m");
    if (stretched.isEmpty()) {
      QuantityKind.Written<Speed> speed = field.required("speed").written(Speed.KIND, "1 m/s", "40 m/s");
      field.refuseTheRest();
      return new LaunchBrief(Launch.thrown(speed.value(), height.value()), speed.unit(), height.unit());
    }
    // A speed beside an elastic is refused with the rest: one of them would be ignored.
    field.refuseTheRest();
    Launch launch = pulled(stretched.get(), height.value());
    return new LaunchBrief(launch, Speed.METRE_PER_SECOND, height.unit());
  }

  private static Launch pulled(Field field, Length height) {
    Optional<Field> table = field.optional("measured");
    ElasticLaunch elastic = table.isPresent() ? measured(field, table.get()) : straight(field);
    Optional<Double> efficiency = field.optional("efficiency").map(f -> f.number(Interval.between(0.05, 1.0)));
    if (efficiency.isPresent()) {
      elastic = elastic.withEfficiency(efficiency.get());
    }
    Optional<Mass> mass = field.optional("mass").map(f -> f.quantity(Mass.KIND, "0.1 g", "5 kg"));
    if (mass.isPresent()) {
      elastic = elastic.withElasticMass(mass.get());
    }
    Mass glider = field.required("glider_mass").quantity(Mass.KIND, "1 g", "25 kg");
    field.refuseTheRest();
    Speed speed = elastic.speed(glider);
    if (!(speed.si() >= 1.0 && speed.si() <= 40.0)) {
      throw field.error("must launch at 1 to 40 m/s, this elastic gives " + speed);
    }
    return Launch.by(elastic, glider, height);
  }

  private static ElasticLaunch straight(Field field) {
    return ElasticLaunch.pulling(
        pull(field.required("pull"), "0.1 N"), field.required("stretch").quantity(Length.KIND, "20 mm", "50 m"));
  }

  /** A table beside a pull or a stretch is refused: one of them would be ignored. */
  private static ElasticLaunch measured(Field field, Field table) {
    for (String other : List.of("pull", "stretch")) {
      field.optional(other)
          .ifPresent(
              f -> {
                throw f.error("must be left out beside \"measured\": the table says it");
              });
    }
    List<Length> stretches = new ArrayList<>();
    List<Force> pulls = new ArrayList<>();
    for (Field row : table.items()) {
      List<Field> pair = row.items();
      if (pair.size() != 2) {
        throw row.error("must be a pair of stretch and pull, had " + pair.size());
      }
      stretches.add(pair.get(0).quantity(Length.KIND, "0 m", "50 m"));
      pulls.add(pull(pair.get(1), "0 N"));
    }
    return table.as(t -> ElasticLaunch.measured(stretches, pulls));
  }

  private static Force pull(Field field, String least) {
    return field.quantity(Force.KIND, least, "500 N");
  }
}
