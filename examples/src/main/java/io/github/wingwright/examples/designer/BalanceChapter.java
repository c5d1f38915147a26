// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Bound;
import io.github.wingwright.core.basis.FeasibleRange;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.drawing.BalancePicture;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.mass.MassStatement;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import io.github.wingwright.stability.CentreOfGravityRange;
import io.github.wingwright.stability.ControlSurface;
import io.github.wingwright.stability.LoadingCase;
import io.github.wingwright.stability.NeutralPoint;
import io.github.wingwright.stability.design.Design;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where the centre of gravity lies, where it may lie and who says so, and what moves the neutral point. */
final class BalanceChapter {
  /** Aft of this nobody flies a small glider twice (common practice, no source). */
  private static final double LEAST_MARGIN = 0.05;

  /** Hinge moments of a plain flap with the angle of attack over those with its own deflection (common practice). */
  private static final double HINGE_RATIO = 0.5;

  private final Design design;
  private final BriefUnits units;
  private final CentreOfGravityRange range;
  private final CentreOfGravityRange.Loadings loadings;

  BalanceChapter(Design design, BriefUnits units) {
    this.design = design;
    this.units = units;
    this.range = design.centreOfGravityRange(LEAST_MARGIN);
    this.loadings = range.check(cases(design.aircraft().masses(), design.brief().carried()));
  }

  Chapter chapter() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Picture(
            picture(),
            "Open end of a bar: no limit on that side. The tinted part of the chord is what all limits and the range for first flights"
                + " leave together. The lowest bar is how far the centre of gravity moves when what can be taken out is taken out."));
    blocks.add(new Block.Paragraph(limits()));
    blocks.add(new Block.Paragraph("The aircraft as it may be loaded:"));
    blocks.add(
        new Block.Table(
            List.of("loading", "mass", "centre of gravity", "static margin", "verdict"), loaded()));
    blocks.add(
        new Block.Paragraph(
            "What moves the neutral point, in percent of the mean aerodynamic chord from its leading edge:"));
    blocks.add(
        new Block.Table(List.of("part", "stick fixed", "with a free elevator"), contributions()));
    blocks.add(
        new Block.Paragraph(
            "This glider has no elevator, so \"fixed\" counts. The last column is what a loosely hinged flap of the usual chord would"
                + " take from the tail if it could float: hinge moments with the angle of attack half as large as with deflection"
                + " (common practice, no source)."));
    blocks.add(new Block.Points(List.of(design.lateral().toString())));
    blocks.add(new Block.Steps(range.workings().computedBeyond(design.workings())));
    return new Chapter("Balance, stability, trim", blocks);
  }

  /** As designed, and without each thing that can come out. */
  private static List<LoadingCase> cases(MassStatement masses, List<MassItem> carried) {
    List<LoadingCase> cases = new ArrayList<>(List.of(new LoadingCase("as designed", masses)));
    for (MassItem item : carried) {
      cases.add(new LoadingCase("without the " + item.name(), masses.without(item.name())));
    }
    if (masses.item("ballast").isPresent()) {
      List<LoadingCase> travel = CentreOfGravityRange.travel(masses, "ballast", 5);
      cases.add(new LoadingCase("three quarters of the ballast", travel.get(1).masses()));
      cases.add(new LoadingCase("half of the ballast", travel.get(2).masses()));
      cases.add(new LoadingCase("without ballast", masses.without("ballast")));
    }
    return cases;
  }

  private String picture() {
    Wing wing = design.aircraft().airframe().wing();
    List<BalancePicture.Bar> bars = new ArrayList<>();
    for (Bound bound : range.range().bounds()) {
      boolean limit = bound.strength() == Strength.LIMIT;
      String label = limit ? "limit, " + bound.name() : "first flights, " + bound.name();
      bars.add(
          new BalancePicture.Bar(
              label,
              bound.interval(),
              limit ? BalancePicture.Kind.LIMIT : BalancePicture.Kind.GUIDELINE));
    }
    bars.add(
        new BalancePicture.Bar(
            "neutral point, by all methods of downwash that hold",
            neutralPoints(),
            BalancePicture.Kind.GUIDELINE));
    if (loadings.travel().width() > 0.0) {
      bars.add(
          new BalancePicture.Bar(
              "travel of the centre of gravity with ballast and load",
              loadings.travel(),
              BalancePicture.Kind.TRAVEL));
    }
    return BalancePicture.draw(
            wing.meanAerodynamicChordX(),
            wing.planform().meanAerodynamicChord(),
            Length.metres(design.number("centre_of_gravity.x_m").value()),
            Length.metres(design.number("neutral_point.x_m").value()),
            range.range().interval(),
            bars,
            units.length())
        .element();
  }

  private Interval neutralPoints() {
    NeutralPoint np = design.neutralPoint();
    double start = np.leadingEdge().si();
    double chord = np.meanAerodynamicChord().si();
    Band band = np.band();
    return Interval.between(start + band.low() * chord, start + band.high() * chord);
  }

  private String limits() {
    FeasibleRange all = range.range();
    String forward = all.lowerBinding().map(Bound::name).orElse("nothing");
    String aft = all.upperBinding().map(Bound::name).orElse("nothing");
    String ends =
        forward.equals(aft)
            ? "Both ends of the range are set by \"" + aft + "\". "
            : "Forward it is \""
                + forward
                + "\" that sets the end of the range, aft \""
                + aft
                + "\". ";
    Optional<Bound> trim =
        all.bounds().stream()
            .filter(b -> Double.isFinite(b.interval().lower()) && b.strength() == Strength.LIMIT)
            .findFirst();
    return ends
        + trim.map(
                b ->
                    "The tail could still hold the greatest lift with the centre of gravity at "
                        + units.length().format(b.interval().lower(), 3)
                        + ": this tail is large enough for trim, and its size comes from stability.")
            .orElse("");
  }

  private List<List<String>> loaded() {
    List<List<String>> rows = new ArrayList<>();
    for (CentreOfGravityRange.Loaded one : loadings.cases()) {
      double margin = one.staticMargin().value();
      String verdict =
          margin < 0.0
              ? "does not fly: behind the neutral point"
              : one.findings().isEmpty() ? "flies" : one.findings().get(0).message();
      rows.add(
          List.of(
              one.loading().name(),
              one.loading().masses().mass().format(units.mass(), 3),
              one.centreOfGravity().format(units.length(), 3),
              NamedUnit.NUMBER.format(100.0 * margin, 2) + " %",
              verdict));
    }
    return rows;
  }

  private List<List<String>> contributions() {
    double effectiveness =
        ControlSurface.usual(ControlSurface.Kind.ELEVATOR, design.brief().aircraftClass())
            .effectiveness();
    double factor = NeutralPoint.floatingFactor(effectiveness, -HINGE_RATIO, -1.0);
    NeutralPoint fixed = design.neutralPoint();
    NeutralPoint free = design.pitchModel().withFloatingFactor(factor).neutralPoint();
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < fixed.contributions().size(); i++) {
      Step part = fixed.contributions().get(i);
      rows.add(
          List.of(
              part.name(), percent(part.value()), percent(free.contributions().get(i).value())));
    }
    rows.add(List.of("neutral point", percent(fixed.fraction()), percent(free.fraction())));
    double cg = design.aircraft().centreOfGravityOnMeanChord();
    rows.add(
        List.of(
            "static margin with it",
            percent(fixed.fraction() - cg),
            percent(free.fraction() - cg)));
    return rows;
  }

  private static String percent(double fraction) {
    return NamedUnit.NUMBER.format(100.0 * fraction, 3) + " %";
  }
}
