// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.performance.ElasticLaunch;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.QuantityKind;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.examples.brief.Field;
import java.util.Optional;

/**
 * How a brief says that its glider is launched: at a speed, or by an elastic from which the speed follows.
 *
 * @param speed speed at which it leaves hand or elastic, in the unit of the brief
 * @param height height of the hand
 * @param elastic the elastic, if there is one
 */
record LaunchBrief(
    QuantityKind.Written<Speed> speed, QuantityKind.Written<Length> height, Optional<ElasticLaunch> elastic) {

  static LaunchBrief from(Field launch) {
    Optional<Field> stretched = launch.optional("elastic");
    QuantityKind.Written<Length> height = launch.required("height").written(Length.KIND, "0.1 m", "100 m");
    if (stretched.isEmpty()) {
      QuantityKind.Written<Speed> speed = launch.required("speed").written(Speed.KIND, "1 m/s", "40 m/s");
      launch.refuseTheRest();
      return new LaunchBrief(speed, height, Optional.empty());
    }
    // A speed beside an elastic is refused with the rest: one of them would be ignored.
    launch.refuseTheRest();
    Field field = stretched.get();
    ElasticLaunch elastic =
        ElasticLaunch.pulling(
            field.required("pull").quantity(Force.KIND, "0.1 N", "500 N"),
            field.required("stretch").quantity(Length.KIND, "20 mm", "50 m"));
    Optional<Double> efficiency = field.optional("efficiency").map(f -> f.number(Interval.between(0.05, 1.0)));
    if (efficiency.isPresent()) {
      elastic = elastic.withEfficiency(efficiency.get());
    }
    Optional<Mass> mass = field.optional("mass").map(f -> f.quantity(Mass.KIND, "0.1 g", "5 kg"));
    if (mass.isPresent()) {
      elastic = elastic.withElasticMass(mass.get());
    }
    Speed speed = elastic.speed(field.required("glider_mass").quantity(Mass.KIND, "1 g", "25 kg"));
    field.refuseTheRest();
    if (!(speed.si() >= 1.0 && speed.si() <= 40.0)) {
      throw field.error("must launch at 1 to 40 m/s, this elastic gives " + speed);
    }
    return new LaunchBrief(new QuantityKind.Written<>(speed, Speed.METRE_PER_SECOND), height, Optional.of(elastic));
  }
}
