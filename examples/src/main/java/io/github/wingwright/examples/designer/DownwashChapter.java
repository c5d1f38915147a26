// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import io.github.wingwright.stability.Downwash;
import io.github.wingwright.stability.DownwashMethod;
import io.github.wingwright.stability.design.Design;
import java.util.ArrayList;
import java.util.List;

/** The downwash at the tail by every method, and what each makes of the static margin. */
final class DownwashChapter {
  private final Design design;

  DownwashChapter(Design design) {
    this.design = design;
  }

  Chapter chapter() {
    Downwash downwash = design.pitchModel().downwash();
    double cg = design.aircraft().centreOfGravityOnMeanChord();
    List<List<String>> rows = new ArrayList<>();
    List<Step> steps = new ArrayList<>();
    for (DownwashMethod method : DownwashMethod.values()) {
      double np = design.pitchModel().withDownwash(method).neutralPoint().fraction();
      rows.add(
          List.of(
              method.words() + (method == downwash.method() ? ", reckoned with" : ""),
              number(downwash.gradient(method), 3),
              number(100.0 * np, 3) + " %",
              number(100.0 * (np - cg), 2) + " %",
              downwash.holds(method) ? "holds" : "outside its range",
              method.validity()));
      steps.add(downwash.step(method));
    }
    Band band = downwash.band();
    return Chapter.of(
        "Downwash at the tail",
        new Block.Paragraph(
            "Behind the wing the air goes down, and more so at a larger angle of attack: of each degree the tail feels only 1 − ε_α."
                + " The methods that hold here range from "
                + number(band.low(), 2)
                + " to "
                + number(band.high(), 2)
                + "."),
        new Block.Table(
            List.of("method", "ε_α", "neutral point", "static margin", "here", "stated for"), rows),
        new Block.Paragraph(meaning(band)),
        new Block.Paragraph(lattice()),
        new Block.Findings(downwash.findings()),
        new Block.Steps(Workings.of(steps).computedBeyond(design.workings())));
  }

  /** The lattice knows the downwash without any formula for it. */
  private String lattice() {
    double chord = design.neutralPoint().meanAerodynamicChord().si();
    double np =
        (design.lattice().neutralPoint() - design.neutralPoint().leadingEdge().si()) / chord;
    double cg = design.aircraft().centreOfGravityOnMeanChord();
    double undisturbed = design.pitchModel().withTailEfficiency(1.0).neutralPoint().fraction();
    return "The lattice of wing and tail, which needs no formula for the downwash but has no body and a tail in undisturbed air, puts"
        + " the neutral point at "
        + number(100.0 * np, 3)
        + " % of the chord: a static margin of "
        + number(100.0 * (np - cg), 2)
        + " % where the design reckons with "
        + number(100.0 * design.staticMargin().value(), 2)
        + " %. Of the difference "
        + number(100.0 * (undisturbed - design.neutralPoint().fraction()), 2)
        + " points are the tail efficiency of "
        + number(design.pitchModel().slopes().tailEfficiency().value(), 2)
        + ", the rest is downwash and body. The design stays with the lower number: a margin too many costs a little glide, one too few"
        + " the glider.";
  }

  private static String meaning(Band band) {
    boolean high = band.likely() > 0.5 * (band.low() + band.high());
    return high
        ? "The method that is reckoned with stands in the upper half: it leaves the tail less than most, so that the true margin is"
            + " more likely larger than smaller."
        : "The method that is reckoned with stands in the lower half: others leave the tail less, so keep some margin in hand.";
  }

  private static String number(double value, int digits) {
    return NamedUnit.NUMBER.format(value, digits);
  }
}
