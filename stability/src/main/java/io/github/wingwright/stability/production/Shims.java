// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.production;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.QuantityBand;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.manufacture.ShimSolid;
import io.github.wingwright.core.manufacture.TriangleMesh;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.stability.design.Design;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Wedges under the wing that set the decalage: below the leading edge, or below the trailing edge where less is asked. */
final class Shims {
  private static final Source TRIM = Source.library("decalage of the trim against what is built");

  private final Design design;
  private final Set<Double> angles;

  private Shims(Design design, Set<Double> angles) {
    this.design = design;
    this.angles = angles;
  }

  static Shims of(Design design) {
    Airframe airframe = design.aircraft().airframe();
    double tail = airframe.horizontalTail().map(t -> t.incidence().degrees()).orElse(0.0);
    return new Shims(design, angles(design.trim().decalageBand(), airframe.wing().incidence().degrees() - tail));
  }

  /** By how much a decalage and the ends of its band pass what is built [°], in steps of half a degree. */
  static Set<Double> angles(QuantityBand<Angle> band, double built) {
    Set<Double> angles = new TreeSet<>();
    for (Angle wanted : List.of(band.low(), band.likely(), band.high())) {
      angles.add(Math.rint(2.0 * (wanted.degrees() - built)) / 2.0 + 0.0);
    }
    angles.remove(0.0);
    return angles;
  }

  private static boolean isShim(double angle) {
    return Math.abs(angle) <= ShimSolid.STEEPEST.degrees();
  }

  /** The wedges by their names. */
  Map<String, TriangleMesh> meshes(Length tolerance) {
    Wing wing = design.aircraft().airframe().wing();
    Map<String, TriangleMesh> meshes = new LinkedHashMap<>();
    for (double angle : angles) {
      if (!isShim(angle)) {
        continue;
      }
      ShimSolid shim =
          ShimSolid.of(
              wing.planform().rootChord(),
              design.aircraft().airframe().fuselage().diameter().times(0.5),
              design.brief().lineWidth(),
              Angle.degrees(angle),
              wing.planform().panels().get(0).dihedral());
      String under = angle > 0.0 ? "" : " under the trailing edge";
      meshes.put("shim of " + Angle.degrees(Math.abs(angle)) + under, shim.mesh(tolerance));
    }
    return meshes;
  }

  /** No wedge is steeper than can be held under a wing: what a trim asks beyond that is built into the seat. */
  Optional<Finding> steepTrim() {
    return steepTrim(angles);
  }

  static Optional<Finding> steepTrim(Set<Double> angles) {
    return angles.stream().filter(angle -> !isShim(angle)).max(Comparator.comparingDouble(Math::abs)).map(
        angle -> Finding.of(
            Severity.CAUTION,
            "shims",
            "The trim may ask for " + Angle.degrees(Math.abs(angle)) + (angle > 0.0 ? " more" : " less")
                + " between wing and tailplane than is built, "
                + Angle.degrees(Math.abs(angle) - ShimSolid.STEEPEST.degrees())
                + " beyond the steepest shim: build the wing or the tailplane at another incidence.",
            Math.toRadians(angle),
            Interval.between(-ShimSolid.STEEPEST.si(), ShimSolid.STEEPEST.si()),
            Angle.DEGREE,
            TRIM));
  }
}
