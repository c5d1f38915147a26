// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import io.github.wingwright.core.report.ConsiderationWorkings;
import io.github.wingwright.core.sizing.BodySteps;
import io.github.wingwright.core.sizing.Contents;
import io.github.wingwright.core.sizing.MarginFormulas;
import java.util.ArrayList;
import java.util.List;

/** The workings, set as a handout: what each group of lines is about, then the lines. */
final class WorkingsChapter {
  private final BodyStudy study;

  WorkingsChapter(BodyStudy study) {
    this.study = study;
  }

  Chapter chapter() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Paragraph(
            "1. The size. Two numbers are negotiated, length and diameter; the family of the body"
                + " gives all others. Their ratio, the fineness, says how slender the body is; the"
                + " skin that the air washes is what friction acts on."));
    blocks.add(new Block.Steps(Workings.of(size())));
    blocks.add(
        new Block.Paragraph(
            "2. The drag. A flat plate of the same skin gives the friction, at the Reynolds number"
                + " of the body's length; the form factor says by how much a body of this"
                + " slenderness exceeds the plate; what ends blunt or is swept up adds its own."));
    blocks.add(new Block.Steps(Workings.of(List.of(study.dragArea()))));
    study
        .placing()
        .ifPresent(
            p -> {
              blocks.add(
                  new Block.Paragraph(
                      "3. The balance of the contents. Each thing turns the body about the nose"
                          + " with its mass times its distance; the centre of gravity is where all"
                          + " of them together would turn it alike."));
              blocks.add(new Block.Steps(Workings.of(List.of(gravity(p)))));
            });
    blocks.add(
        new Block.Paragraph(
            "4. What it is for. Drag and mass of the body become the figure that the brief is"
                + " judged by; this is the currency in which guidelines are priced."));
    blocks.add(new Block.Steps(Workings.of(List.of(study.figure()))));
    blocks.add(
        new Block.Paragraph(
            "5. Who has a say. For each consideration what is given, the formulas, what the body"
                + " comes to, and last its margin m, which is kept where it is not negative."));
    BodySteps body = BodySteps.of(study.body(), Source.library("the body shown"));
    blocks.addAll(
        ConsiderationWorkings.of(
            study.region().considerations(), body.length(), body.diameter(), study.brief().units().all()));
    return new Chapter("Workings", blocks);
  }

  /** Size, stiffness and what else was sized, without the drag that has its own part. */
  private List<Step> size() {
    List<Step> steps = new ArrayList<>();
    for (Step step : study.sized().workings().steps()) {
      boolean result =
          List.of("f", "S_f", "V", "S_wet", "EI").contains(step.symbol())
              && !(step instanceof Step.Given);
      if (result && steps.stream().noneMatch(s -> s.symbol().equals(step.symbol()))) {
        steps.add(step);
      }
    }
    return steps;
  }

  private static Step gravity(Contents.Placing placing) {
    List<Step> moments = new ArrayList<>();
    List<Step> masses = new ArrayList<>();
    int i = 0;
    for (Contents.Place place : placing.places()) {
      i++;
      String name = place.thing().name();
      Step mass = Step.given("mass of " + name, "m_" + i, place.thing().mass(), Source.BRIEF);
      Step at =
          Step.given(
              "middle of " + name,
              "x_" + i,
              place.front().plus(place.thing().length().times(0.5)),
              Source.library("placed as far forward as it fits"));
      masses.add(mass);
      moments.add(Step.of("moment of " + name, "M_" + i, MarginFormulas.MASS_MOMENT, mass, at));
    }
    Step all = Step.sum("mass of the contents", "m_c", masses);
    Step moment = Step.sum("moment of the contents about the nose", "M_c", moments);
    return Step.of(MarginFormulas.CENTRE_OF_GRAVITY, moment, all);
  }
}
