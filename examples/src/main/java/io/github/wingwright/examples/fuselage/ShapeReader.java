// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.BodyStation;
import io.github.wingwright.core.geometry.CrossSection;
import io.github.wingwright.core.geometry.EndProfile;
import io.github.wingwright.core.geometry.LoftedBody;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.examples.brief.Field;
import java.util.List;
import java.util.Optional;

/** Reads the family of a body. */
final class ShapeReader {

  private enum Family {
    CAPSULE,
    SPHEROID,
    ASSEMBLED,
    LOFTED
  }

  private enum Profile {
    HEMISPHERE,
    HALF_ELLIPSOID,
    TANGENT_OGIVE,
    CONE,
    BOAT_TAIL
  }

  private ShapeReader() {}

  static BodyShape shape(Field field) {
    BodyShape shape =
        switch (field.required("family").choice(Family.class)) {
          case CAPSULE -> BodyShape.capsule();
          case SPHEROID -> BodyShape.prolateSpheroid();
          case ASSEMBLED -> assembled(field);
          case LOFTED -> lofted(field);
        };
    Optional<Field> upsweep = field.optional("upsweep");
    if (upsweep.isPresent()) {
      Field up = upsweep.get();
      shape =
          shape.upswept(
              up.required("afterbody").number(Interval.between(0.1, 50.0)),
              up.required("angle").quantity(Angle.KIND, "0°", "25°"),
              up.required("bend").number(Interval.between(0.01, 1.0)));
      up.refuseTheRest();
    }
    field.refuseTheRest();
    return shape;
  }

  private static EndProfile nose(Field field) {
    Field name = field.required("nose");
    Profile profile = name.choice(Profile.class);
    if (profile == Profile.BOAT_TAIL) {
      throw name.error("must come to a point or a round tip, was \"boat_tail\"");
    }
    return profile(profile, 0.0);
  }

  private static EndProfile tail(Field field) {
    Profile profile = field.required("tail").choice(Profile.class);
    double base =
        profile == Profile.BOAT_TAIL
            ? field.required("base_ratio").number(Interval.between(0.01, 0.95))
            : 0.0;
    return profile(profile, base);
  }

  private static EndProfile profile(Profile profile, double baseRatio) {
    return switch (profile) {
      case HEMISPHERE -> EndProfile.hemisphere();
      case HALF_ELLIPSOID -> EndProfile.halfEllipsoid();
      case TANGENT_OGIVE -> EndProfile.tangentOgive();
      case CONE -> EndProfile.cone();
      case BOAT_TAIL -> EndProfile.boatTail(baseRatio);
    };
  }

  private static BodyShape assembled(Field field) {
    Interval fineness = Interval.between(0.1, 20.0);
    return BodyShape.of(
        nose(field),
        field.required("nose_fineness").number(fineness),
        tail(field),
        field.required("tail_fineness").number(fineness));
  }

  private static BodyShape lofted(Field field) {
    List<BodyStation> stations =
        field.required("stations").items().stream().map(f -> f.as(ShapeReader::station)).toList();
    return LoftedBody.of(
        nose(field),
        stations,
        tail(field),
        field.required("length").quantity(Length.KIND, "10 mm", "100 m"),
        field.required("tail_height").quantity(Length.KIND, "-10 m", "10 m"));
  }

  private static BodyStation station(Field field) {
    BodyStation station =
        new BodyStation(
            field.required("x").quantity(Length.KIND, "1 mm", "100 m"),
            field.required("width").quantity(Length.KIND, "1 mm", "20 m"),
            field.required("height").quantity(Length.KIND, "1 mm", "20 m"),
            field.required("centre").quantity(Length.KIND, "-10 m", "10 m"),
            field
                .optional("exponent")
                .map(f -> CrossSection.superellipse(f.number(Interval.between(2.0, 12.0))))
                .orElse(CrossSection.ellipse()));
    field.refuseTheRest();
    return station;
  }
}
