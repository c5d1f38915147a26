// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.atmosphere.AirState;
import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.mass.Material;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Volume;
import io.github.wingwright.core.sizing.BodyShell;
import io.github.wingwright.core.sizing.Considerations;
import io.github.wingwright.core.sizing.DragArea;
import io.github.wingwright.core.sizing.FuselageSizing;
import io.github.wingwright.core.sizing.ShapeConsideration;
import io.github.wingwright.examples.brief.Field;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What the fuselage of a glider's brief is negotiated between, and how it is then chosen.
 *
 * @param sizing the considerations, once the wing is known
 * @param choice how length and diameter are chosen
 * @param walls lines side by side in its wall
 */
record GliderBodyBrief(
    Function<Wing, FuselageSizing> sizing, Function<FuselageSizing, Sized<Fuselage>> choice, int walls) {

  /** What fuselages a brief may ask for. */
  private enum Shape {
    CAPSULE,
    SPHEROID,
    NOSE_CYLINDER_CONE
  }

  /** How the diameter is chosen if the brief does not give it. */
  private enum Choice {
    NEAREST_TO_TARGETS,
    LEAST_DRAG
  }

  private static final Source WALLS = Source.taken("walls of the brief at the line width of its machine");

  /** Load at the tail in flight at the stall: this part of the weight (common practice, no source). */
  static final double TAIL_LOAD_AT_STALL = 0.1;

  /** Half of the body lies between wing and tail, half ahead and behind, until both are placed. */
  static final double FREE_SHARE = 0.5;

  /**
   * Reads it.
   *
   * @param field the brief's fuselage
   */
  static GliderBodyBrief from(
      AirState air, Field field, PrinterBrief machine, Material material, Length leastArm, Speed launch, BriefUnits units) {
    BodyShape shape = shape(field);
    int walls = field.optional("walls").map(f -> f.whole(1, 20)).orElse(2);
    Optional<Interval> fineness = field.optional("fineness_range").map(GliderBodyBrief::fineness);
    double multiple = field.required("diameter_over_wing_thickness").number(Interval.between(0.5, 30.0));
    Optional<Contents> contents = field.optional("contents").map(Contents::from);
    double movement = field.required("largest_tail_movement").number(Interval.between(0.001, 0.1));
    Optional<Length> diameter = field.optional("diameter").map(f -> f.quantity(Length.KIND, "2 mm", "2 m"));
    Optional<Length> length = field.optional("length").map(f -> f.quantity(Length.KIND, "20 mm", "20 m"));
    Choice choice = field.optional("choose").map(f -> f.choice(Choice.class)).orElse(Choice.NEAREST_TO_TARGETS);
    field.refuseTheRest();
    BodyShell shell =
        material.elasticModulus().map(known -> BodyShell.of(material, machine.lineWidth().times(walls)).withWallFrom(WALLS))
            .orElseThrow(() -> field.error("needs a material whose elastic modulus is known, \"" + material.name() + "\" has none"));
    DragArea drag = BodyDragArea.at(launch, air);
    Function<Wing, FuselageSizing> sizing =
        wing -> {
          FuselageSizing sized =
              FuselageSizing.of(shape)
                  .showing(units.length())
                  .madeOf(shell)
                  .draggingAs(drag)
                  .considering(Considerations.lengthAtMost(machine.longest()));
          if (fineness.isPresent()) {
            Interval range = fineness.get();
            sized = sized.considering(Considerations.finenessWithin(range.lower(), range.upper(), Source.COMMON_PRACTICE));
          }
          sized =
              sized.considering(
                  Considerations.diameterNear(multiple, wing.maximumThickness()),
                  Considerations.tailArmAtLeast(leastArm, 1.0 - FREE_SHARE),
                  tailMovement(wing, movement, shell, launch, air.density()));
          if (contents.isPresent()) {
            sized = contents.get().on(sized);
          }
          return length.isPresent() ? sized.length(length.get()) : sized;
        };
    Function<FuselageSizing, Sized<Fuselage>> close =
        asked ->
            diameter.isPresent()
                ? asked.diameter(diameter.get())
                : choice == Choice.LEAST_DRAG ? asked.leastDrag(drag) : asked.nearestToTargets();
    return new GliderBodyBrief(sizing, close, walls);
  }

  /** Least and greatest fineness; a brief without them lets the other considerations decide. */
  private static Interval fineness(Field field) {
    List<Field> range = field.items();
    if (range.size() != 2) {
      throw field.error("must be a list of two numbers, least and greatest, had " + range.size());
    }
    double least = range.get(0).number(Interval.between(1.0, 40.0));
    return Interval.between(least, range.get(1).number(Interval.between(least, 60.0)));
  }

  /** The tail load of the throw: a tenth of the weight at the stall, times (V/V_s)² with the usual ratio squared. */
  private static Consideration tailMovement(
      Wing wing, double movement, BodyShell shell, Speed launch, Density air) {
    double lift = 0.5 * air.si() * launch.si() * launch.si() * GliderBrief.USABLE_LIFT * wing.planform().area().si();
    Force load = Force.newtons(lift * TAIL_LOAD_AT_STALL);
    return Considerations.tailDeflectionAtMost(load, FREE_SHARE, movement, shell);
  }

  private static BodyShape shape(Field field) {
    return switch (field.required("shape").choice(Shape.class)) {
      case CAPSULE -> BodyShape.capsule();
      case SPHEROID -> BodyShape.prolateSpheroid();
      case NOSE_CYLINDER_CONE -> BodyShape.noseCylinderCone(1.0, 3.0);
    };
  }

  /** What the fuselage carries, and whether that counts. */
  private record Contents(Volume volume, double packing, Optional<String> aside, Optional<String> until) {
    static Contents from(Field field) {
      Volume volume = field.required("volume").quantity(Volume.KIND, "0.1 cm³", "1 m³");
      double packing = field.required("packing_fraction").number(Interval.between(0.05, 1.0));
      Optional<String> aside = field.optional("set_aside_because").map(Field::text);
      Optional<String> until = field.optional("provisional_until").map(Field::text);
      if (aside.isPresent() && until.isPresent()) {
        throw field.error("can be set aside or provisional, not both");
      }
      field.refuseTheRest();
      return new Contents(volume, packing, aside, until);
    }

    FuselageSizing on(FuselageSizing sizing) {
      ShapeConsideration enclosing = Considerations.enclosing(volume, Considerations.packingFraction(packing));
      if (aside.isPresent()) {
        return sizing.settingAside(enclosing, aside.get());
      }
      return until.isPresent() ? sizing.provisionally(enclosing, until.get()) : sizing.considering(enclosing);
    }
  }
}
