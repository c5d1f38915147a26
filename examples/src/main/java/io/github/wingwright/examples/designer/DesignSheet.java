// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.ConvergenceException;
import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.performance.ThrowCheck;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.MinusSign;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Time;
import io.github.wingwright.core.report.Entry;
import io.github.wingwright.stability.TrimmedPolar;
import io.github.wingwright.stability.design.Design;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The numbers of a design in the units of its brief, in groups. */
final class DesignSheet {
  private static final int LABEL = 34;

  private final Design design;
  private final BriefUnits units;
  private final LaunchWords launch;

  DesignSheet(Design design, BriefUnits units) {
    this.design = design;
    this.units = units;
    this.launch = new LaunchWords(design, units);
  }

  Map<String, List<Entry>> groups() {
    Map<String, List<Entry>> groups = new LinkedHashMap<>();
    NamedUnit<Length> l = units.length();
    groups.put(
        "Wing",
        List.of(
            entry("span", "wing.span_m", l),
            entry("area", "wing.area_m2", units.area()),
            entry("aspect ratio", "wing.aspect_ratio", NamedUnit.NUMBER, 3),
            entry("root chord", "wing.root_chord_m", l),
            entry("tip chord", "wing.tip_chord_m", l),
            entry("mean aerodynamic chord", "wing.mean_aerodynamic_chord_m", l, 3),
            entry("greatest thickness", "wing.maximum_thickness_m", l, 2),
            entry("dihedral", "wing.dihedral_rad", units.angle(), 3),
            entry("root leading edge behind the nose", "wing.leading_edge_x_m", l)));
    groups.put(
        "Fuselage",
        List.of(
            entry("length", "fuselage.length_m", l),
            entry("diameter", "fuselage.diameter_m", l),
            entry("fineness ratio", "fuselage.fineness_ratio", NamedUnit.NUMBER, 3),
            entry("volume", "fuselage.volume_m3", units.volume(), 3)));
    groups.put("Horizontal tail", tail("horizontal_tail", "span"));
    groups.put("Vertical tail", tail("vertical_tail", "height"));
    groups.put(
        "Balance",
        List.of(
            entry("mass", "mass_kg", units.mass(), 3),
            entry("ballast in the nose", "ballast_kg", units.mass(), 3),
            entry("wing loading", "wing.loading_kg_per_m2", units.loading(), 3),
            entry("centre of gravity behind the nose", "centre_of_gravity.x_m", l, 3),
            entry("neutral point behind the nose", "neutral_point.x_m", l, 3),
            entry("static margin", "static_margin", NamedUnit.NUMBER, 2),
            entry("decalage, likely", "decalage_rad", units.angle(), 2)));
    groups.put(
        "Flight",
        List.of(
            entry("best lift to drag, likely", "glide.best_lift_to_drag", NamedUnit.NUMBER, 2),
            entry("best glide speed", "glide.best_glide_speed_m_per_s", units.speed(), 2),
            entry("least sink rate", "glide.minimum_sink_rate_m_per_s", units.speed(), 2),
            entry("stall speed", "stall_speed_m_per_s", units.speed(), 2),
            entry(launch.speedLabel(), "launch_speed_m_per_s", units.speed(), 3)));
    if (flies()) {
      List<Entry> flight = new ArrayList<>(groups.get("Flight"));
      flight.add(entry("distance of the steady glide", "glide.distance_m", units.distance(), 2));
      flight.add(entry("time of the steady glide", "glide.time_s", Time.SECOND, 2));
      groups.put("Flight", List.copyOf(flight));
    }
    return groups;
  }

  /** A glider that drops from the hand goes no distance that could be told. */
  private boolean flies() {
    return design.throwCheck().verdict() != ThrowCheck.Verdict.DOES_NOT_FLY;
  }

  private List<Entry> tail(String key, String span) {
    NamedUnit<Length> l = units.length();
    return List.of(
        entry(span, key + ".span_m", l),
        entry("root chord", key + ".root_chord_m", l),
        entry("tip chord", key + ".tip_chord_m", l),
        entry("arm", key + ".arm_m", l),
        entry("volume coefficient", key + ".volume_coefficient", NamedUnit.NUMBER, 3));
  }

  private Entry entry(String label, String name, NamedUnit<?> unit) {
    return entry(label, name, unit, 4);
  }

  private Entry entry(String label, String name, NamedUnit<?> unit, int digits) {
    return new Entry(label, design.number(name), unit, digits);
  }

  /** Ranges that belong beside the likely values. */
  List<String> ranges() {
    Band glide = design.glide().greatestLiftToDrag();
    return List.of(
        "best lift to drag " + NamedUnit.NUMBER.format(glide.low(), 2) + " to " + NamedUnit.NUMBER.format(glide.high(), 2),
        "decalage " + design.trim().decalageBand().format(units.angle(), 2),
        "stall speed " + design.glide().stallSpeedBand().format(units.speed(), 2));
  }

  /** The sheet for a terminal: short, two columns of groups would not fit everywhere. */
  List<String> lines() {
    return lines(List.of());
  }

  /** The same with what the glider does when it is thrown. */
  List<String> lines(List<String> flown) {
    List<String> lines = new ArrayList<>();
    for (Map.Entry<String, List<Entry>> group : groups().entrySet()) {
      String head = group.getKey();
      for (Entry entry : group.getValue()) {
        lines.add(pad(head, 17) + pad(entry.label(), LABEL) + MinusSign.in(entry.text()));
        head = "";
      }
    }
    lines.add(pad("Ranges", 17) + String.join("; ", ranges()));
    lines.add(pad("In trim", 17) + MinusSign.in(inTrim()));
    lines.add(pad(launch.head(), 17) + launch.verdict(design.throwCheck()));
    for (int i = 0; i < flown.size(); i++) {
      lines.add(pad(i == 0 ? "Flown" : "", 17) + MinusSign.in(flown.get(i)));
    }
    lines.add(pad("Plate as wing", 17) + alternative());
    lines.add(pad("Findings", 17) + counts());
    return lines;
  }

  /** What is left of the glide when the tail holds the trim: the ratio above leaves the lift of the tail out. */
  String inTrim() {
    try {
      TrimmedPolar.Point best = design.trimmedPolar().bestGlide();
      return "best lift to drag "
          + NamedUnit.NUMBER.format(best.liftToDrag(), 2)
          + " at "
          + best.speed().format(units.speed(), 2)
          + steadyInTrim(best)
          + ", with the tail's lift and drag";
    } catch (IllegalStateException | ConvergenceException e) {
      return "cannot be trimmed: " + e.getMessage();
    }
  }

  private String steadyInTrim(TrimmedPolar.Point best) {
    double height = design.brief().launch().height().si();
    return flies()
        ? ", a steady glide of " + units.distance().format(height * best.liftToDrag(), 2) + " in "
            + Time.SECOND.format(height / best.sinkRate().si(), 2)
        : "";
  }

  /** What a curved plate of the wing's walls would do instead. */
  String alternative() {
    return "lift to drag "
        + NamedUnit.NUMBER.format(design.alternative().bestGlide().liftToDrag(), 2)
        + ", stall "
        + design.alternative().stallSpeed().format(units.speed(), 2)
        + ", "
        + design.alternative().mass().format(units.mass(), 3)
        + ", "
        + launch.verdict(design.alternative().thrownAt(launch.speed(design.alternative().mass())));
  }

  private String counts() {
    long serious = design.findings().stream().filter(f -> f.severity() == Severity.SERIOUS).count();
    long caution = design.findings().stream().filter(f -> f.severity() == Severity.CAUTION).count();
    long note = design.findings().size() - serious - caution;
    return serious
        + " serious, "
        + caution
        + (caution == 1 ? " caution, " : " cautions, ")
        + note
        + (note == 1 ? " note" : " notes")
        + ": see the report";
  }

  private static String pad(String text, int width) {
    return text.length() >= width ? text + " " : text + " ".repeat(width - text.length());
  }
}
