// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Panel;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Invented airframes for pictures. */
final class SampleAirframes {
  private SampleAirframes() {}

  static Length mm(double value) {
    return Length.millimetres(value);
  }

  /** A glider of 460 mm span on a body of 250 × 28 mm. */
  static Airframe glider() {
    Planform wing = Planform.tapered(mm(460), mm(80), mm(52)).withDihedral(Angle.degrees(8.5));
    return airframe(wing, mm(61), mm(9), new Fuselage(BodyShape.capsule(), mm(250), mm(28)), mm(150), true);
  }

  private static Airframe airframe(Planform planform, Length station, Length height, Fuselage body, Length arm, boolean tails) {
    AirfoilSection section = new SampleSection(0.06, 0.04, 0.004);
    Wing wing = new Wing(planform, section, Placement.at(station, height), Angle.degrees(2));
    List<Tail> surfaces = new ArrayList<>();
    if (tails) {
      double size = planform.span().si();
      Planform flat = Planform.tapered(metres(0.33 * size), metres(0.11 * size), metres(0.08 * size));
      Length x = wing.quarterChordX().plus(arm).minus(flat.quarterMeanAerodynamicChordX());
      Panel panel = new Panel(metres(0.14 * size), metres(0.07 * size), Angle.degrees(20), Angle.ZERO, Angle.ZERO);
      Planform fin = Planform.fin(metres(0.105 * size), List.of(panel));
      AirfoilSection thin = new SampleSection(0.04, 0.0, 0.0);
      surfaces.add(new Tail(Tail.Role.HORIZONTAL, flat, thin, Placement.at(x, Length.ZERO), Angle.ZERO));
      surfaces.add(new Tail(Tail.Role.VERTICAL, fin, thin, Placement.at(x, Length.ZERO), Angle.ZERO));
    }
    return new Airframe(body, wing, surfaces);
  }

  private static Length metres(double value) {
    return Length.metres(value);
  }

  /** Airframes from 0.1 to 30 m span, slender and stout, with and without tails, one to four panels. */
  static Airframe random(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double span = 0.1 * Math.pow(300.0, random.nextDouble());
    Planform planform = planform(random, span);
    double length = span * random.nextDouble(0.35, 0.9);
    double diameter = length / random.nextDouble(4.0, 30.0);
    BodyShape[] shapes = {BodyShape.capsule(), BodyShape.prolateSpheroid(), BodyShape.noseCylinderCone(1.2, 1.8)};
    Fuselage body = new Fuselage(shapes[random.nextInt(3)], metres(length), metres(diameter));
    Length station = metres(length * random.nextDouble(0.0, 0.4));
    Length height = metres(diameter * random.nextDouble(-1.5, 1.5));
    return airframe(planform, station, height, body, metres(span * random.nextDouble(0.2, 0.5)), random.nextInt(5) > 0);
  }

  private static Planform planform(SplittableRandom random, double span) {
    int panels = random.nextInt(1, 5);
    double chord = span / random.nextDouble(4.0, 15.0);
    List<Panel> list = new ArrayList<>();
    double tip = chord;
    for (int i = 0; i < panels; i++) {
      tip *= random.nextDouble(0.5, 1.0);
      Angle dihedral = Angle.degrees(random.nextInt(4) == 0 ? 0.0 : random.nextDouble(-3.0, 15.0));
      Angle sweep = Angle.degrees(random.nextDouble(-10.0, 25.0));
      list.add(new Panel(metres(0.5 * span / panels), metres(tip), sweep, dihedral, Angle.ZERO));
    }
    return Planform.symmetric(metres(chord), list);
  }
}
