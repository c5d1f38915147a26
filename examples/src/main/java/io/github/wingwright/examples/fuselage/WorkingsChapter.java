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
  private final List<Block> blocks = new ArrayList<>();
  private final List<Step> told = new ArrayList<>();

  WorkingsChapter(BodyStudy study) {
    this.study = study;
  }

  Chapter chapter() {
    paragraph(
        "Each line has a number; the number in brackets behind an input is that of the line it comes from. Printed are as"
            + " many digits as a pocket calculator needs to find the printed result again. All is in units of the SI.");
    paragraph(
        "1. The size. Two numbers are negotiated, length and diameter; the family of the body gives all others. Their ratio,"
            + " the fineness, says how slender the body is; the skin that the air washes is what friction acts on.");
    tell(size());
    paragraph(
        "2. The drag. A flat plate of the same skin gives the friction, at the Reynolds number of the body's length; the form"
            + " factor says by how much a body of this slenderness exceeds the plate; what ends blunt or is swept up adds its"
            + " own.");
    tell(List.of(study.dragArea()));
    int part = 3;
    if (study.placing().isPresent()) {
      paragraph(
          part
              + ". The balance of the contents. Each thing turns the body about the nose with its mass times its distance; the"
              + " centre of gravity is where all of them together would turn it alike.");
      tell(List.of(gravity(study.placing().get())));
      part++;
    }
    paragraph(
        part
            + ". What it is for. Drag and mass of the body become the figure that the brief is judged by; this is the currency"
            + " in which guidelines are priced.");
    tell(List.of(study.figure()));
    part++;
    paragraph(
        part
            + ". Who has a say. For each consideration what is given, the formulas, what the body comes to, and last its margin"
            + " m, which is kept where it is not negative.");
    blocks.addAll(
        ConsiderationWorkings.of(
            study.region().considerations(),
            study.size().length(),
            study.size().diameter(),
            study.origins(),
            told,
            study.brief().units().all()));
    return new Chapter("Workings", blocks);
  }

  private void paragraph(String text) {
    blocks.add(new Block.Paragraph(text));
  }

  /** Steps that do not stand above, each once. */
  private void tell(List<Step> results) {
    Workings fresh = Workings.of(results.stream().map(study.origins()::trace).toList()).beyond(told);
    told.addAll(fresh.steps());
    blocks.add(new Block.Steps(fresh));
  }

  /** Size and stiffness, without the drag that has its own part. */
  private List<Step> size() {
    BodySteps body = study.size();
    List<Step> steps = new ArrayList<>(List.of(body.fineness(), body.frontalArea(), body.volume(), body.wettedArea()));
    study.sized().workings().steps().stream().filter(s -> s.symbol().equals("EI")).findFirst().ifPresent(steps::add);
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
