// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.basis.FeasibleRange;
import io.github.wingwright.core.basis.MarginWords;
import io.github.wingwright.core.basis.Origins;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.drawing.RangePicture;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import io.github.wingwright.core.sizing.WingConsideration;
import io.github.wingwright.core.sizing.WingFormulas;
import io.github.wingwright.core.sizing.WingFrame;
import io.github.wingwright.stability.design.Design;
import java.util.ArrayList;
import java.util.List;

/** What speaks for and against the wing's chord, and how each consideration comes to its margin. */
final class WingChapter {
  private final Design design;
  private final BriefUnits units;

  WingChapter(Design design, BriefUnits units) {
    this.design = design;
    this.units = units;
  }

  Chapter chapter() {
    Wing wing = design.aircraft().airframe().wing();
    Length chord = wing.planform().meanGeometricChord();
    FeasibleRange range = design.sizedWing().range();
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Picture(
            RangePicture.draw(range, chord.si(), "mean chord: " + chord.format(units.length(), 3)).element(),
            "What leaves the mean chord how much room at the given span."));
    blocks.add(
        new Block.Paragraph(
            "The workings of each consideration, for the wing as it is made; last stands the margin m, which is kept where it"
                + " is not negative:"));
    workings(blocks, wing);
    return new Chapter("The wing's chord, negotiated", blocks);
  }

  private void workings(List<Block> blocks, Wing wing) {
    Planform planform = wing.planform();
    Mass mass = design.aircraft().mass();
    Origins origins = new Origins(origins());
    Step made = origins.add(Step.of(WingFormulas.MEAN_CHORD, line("wing.area_m2"), line("wing.span_m")));
    Step chord = Step.given(made.name(), made.symbol(), Length.metres(made.value()), Source.taken("the wing as it is made"));
    WingFrame frame = new WingFrame(planform.span().si(), planform.taperRatio(), wing.section());
    List<Step> told = new ArrayList<>(design.workings().steps());
    for (WingConsideration one : design.brief().wing().apply(mass).mass(mass).considerations()) {
      one.workings(frame, chord)
          .ifPresent(
              margin -> {
                Workings fresh = Workings.of(List.of(origins.trace(margin))).beyond(told);
                told.addAll(fresh.steps());
                String name = one.nameIn(units.length(), units.mass(), units.speed());
                blocks.add(new Block.Paragraph(name + ": " + MarginWords.ofBound(margin.value()) + "."));
                blocks.add(new Block.Steps(fresh));
              });
    }
  }

  private List<Step> origins() {
    List<Step> known = new ArrayList<>();
    known.add(line("wing.span_m"));
    known.add(line("wing.taper_ratio"));
    known.add(line("air.density_kg_per_m3"));
    known.add(line("air.kinematic_viscosity_m2_per_s"));
    known.add(line("mass_kg"));
    Source lift = Source.library("what a small wing can use");
    known.add(Step.given("usable lift coefficient", "C_L", GliderBrief.USABLE_LIFT, lift));
    Source ratio = Source.library("a launch that is not to end in a stall");
    known.add(Step.given("launch speed over stall speed", "n", GliderBrief.SPEED_RATIO, ratio));
    return known;
  }

  private Step line(String key) {
    return design.number(key);
  }
}
