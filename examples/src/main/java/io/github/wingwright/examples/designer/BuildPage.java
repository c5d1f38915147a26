// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.manufacture.Joint;
import io.github.wingwright.core.manufacture.PrintItem;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.performance.GlidePoint;
import io.github.wingwright.core.performance.ThrowCheck;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Time;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import io.github.wingwright.core.report.Report;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.flighttest.Behaviour;
import io.github.wingwright.stability.flighttest.TrimAdvice;
import io.github.wingwright.stability.production.Cautions;
import io.github.wingwright.stability.production.GliderParts;
import io.github.wingwright.stability.production.PrintPlan;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;

/** How to print, glue, balance, trim and fly a glider: for somebody who has built none before. */
final class BuildPage {
  private final Design design;
  private final GliderBrief brief;
  private final PrintPlan plan;
  private final BriefUnits units;
  private final Optional<GliderParts> parts;
  private final Optional<PartsInHand> inHand;

  BuildPage(Design design, GliderBrief brief, PrintPlan plan) {
    this.design = design;
    this.brief = brief;
    this.plan = plan;
    this.units = brief.units();
    this.parts = parts(design);
    this.inHand = parts.map(p -> new PartsInHand(design, p, plan.list(), units.length()));
  }

  /** The page as Markdown. */
  String markdown() {
    return new Report(
            brief.title(),
            "how to print, glue, balance, trim and fly it",
            List.of(before(), print(), glue(), balance(), fly(), trim(), after()))
        .toMarkdown();
  }

  private String length(Length length) {
    return length.format(units.length(), 3);
  }

  /** The parts as they are written to the folder; nothing where they cannot be made. */
  private static Optional<GliderParts> parts(Design design) {
    try {
      return Optional.of(GliderParts.of(design, PartFiles.TOLERANCE));
    } catch (IllegalStateException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** What the parts as made lack in the nose; nothing where the ballast cannot be weighed to it, or they cannot be made. */
  private Optional<Mass> missing() {
    return parts.map(GliderParts::missingNoseMass).filter(m -> m.grams() >= 0.3);
  }

  private static Chapter points(String title, List<String> points) {
    return Chapter.of(title, new Block.Points(points));
  }

  private Chapter before() {
    return points("Before you begin", Cautions.of(design).lines());
  }

  private Chapter print() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Paragraph(
            "Print these parts on a machine of "
                + plan.list().machine()
                + ", in "
                + design.brief().material().name()
                + ". The list is also in print-list.csv, there with the shims, the number of pieces, the file and the bed of each."));
    blocks.add(PrintChapter.table(plan.list()));
    inHand.flatMap(PartsInHand::bedTable).ifPresent(blocks::add);
    List<String> points = new ArrayList<>();
    for (PrintItem item : plan.list().items()) {
      points.add(
          "The "
              + item.name()
              + ": "
              + (item.pieces().part().wall().isPositive()
                  ? item.lying() + ", with a brim; " + item.making() + ", " + closed(item)
                  : item.lying() + "; all layers solid."));
    }
    inHand.ifPresent(hand -> points.addAll(hand.files()));
    points.add("Weigh every part and write the mass down: the sheet says what each should weigh, and 10 % more is common.");
    points.add("Leave seams and first layers as they are unless they stick out; sand only the leading edges, with a mask.");
    blocks.add(new Block.Points(points));
    blocks.add(new Block.Findings(plan.findings()));
    return new Chapter("1. Print", blocks);
  }

  /** As the masses have it, by formula and by mesh: closed at its own ends, open where it is cut for the machine. */
  private static String closed(PrintItem item) {
    return "its two ends closed by layers that are together as thick as the wall; more of them add weight"
        + (item.pieces().joints().isEmpty() ? "." : ", and so do any at the seams between its segments: none there.");
  }

  private Chapter glue() {
    Airframe airframe = design.aircraft().airframe();
    Wing wing = airframe.wing();
    Fuselage body = airframe.fuselage();
    Angle dihedral = wing.planform().equivalentDihedral();
    Length tip = Length.metres(0.5 * wing.planform().span().si() * Math.tan(dihedral.si()));
    Length prop = Length.metres(wing.planform().span().si() * Math.sin(dihedral.si()));
    Joint middle = plan.rootJoint();
    List<String> points = new ArrayList<>();
    for (PrintItem item : plan.list().items()) {
      if (!item.pieces().joints().isEmpty()) {
        points.add("Join the segments of the " + item.name() + " first: " + item.jointWords() + ".");
      }
    }
    points.add(
        "Mark a line across the body "
            + length(wing.placement().x())
            + " behind the tip of the nose: there the leading edge of the wing's root will sit. Mark another "
            + length(design.aircraft().centreOfGravity().x())
            + " behind the tip: the centre of gravity.");
    points.add(
        "Glue the halves of the wing together over a brace in their thickest part: a "
            + middle.kind().words()
            + " of "
            + length(middle.size())
            + " or a steel wire as thick, "
            + length(middle.overlap())
            + " deep in each half, made to the angle (bend the wire; carbon does not bend). Each tip rises by "
            + length(tip)
            + " above the middle ("
            + dihedral.format(Angle.DEGREE, 3)
            + "): lay one half flat, prop the other tip "
            + length(prop)
            + " high, and let it set.");
    inHand.ifPresent(hand -> points.addAll(hand.seats()));
    airframe.horizontalTail()
        .ifPresent(
            t ->
                points.add(
                    "The tailplane goes across the body, its root leading edge "
                        + length(t.placement().x())
                        + " behind the tip of the nose; the rear end is that of the body."));
    airframe.verticalTail()
        .ifPresent(
            t ->
                points.add(
                    "The fin stands on it, upright and in line with the body, its leading edge "
                        + length(t.placement().x())
                        + " behind the tip. Look along it from behind: a fin that is off by 1° makes a turn."));
    points.add(
        "Set the wing on the body with a rubber band or a dab of glue that can be cut again: it is the first tool of balance. "
            + decalage());
    points.add(
        "Look from the front: wing and tailplane level with each other, both halves of the wing alike, no warp. Body "
            + length(body.length())
            + " long, "
            + length(body.diameter())
            + " thick.");
    return points("2. Glue", points);
  }

  private String decalage() {
    double chord =
        design.aircraft().airframe().horizontalTail().map(t -> t.planform().rootChord().si()).orElse(0.0);
    double wing = design.aircraft().airframe().wing().planform().rootChord().si();
    double likely = design.trim().decalage().si();
    return "The tailplane must meet the air at less than the wing by "
        + Angle.DEGREE.format(likely, 2)
        + " (this is known only from "
        + design.trim().decalageBand().format(Angle.DEGREE, 2)
        + "): raise the wing's leading edge by "
        + Length.metres(Math.tan(likely) * wing).format(units.length(), 2)
        + " over its root chord, or the tailplane's trailing edge by "
        + Length.metres(Math.tan(likely) * chord).format(units.length(), 2)
        + " over its own, with shims that can be taken out.";
  }

  private Chapter balance() {
    double chord = design.aircraft().airframe().wing().planform().meanAerodynamicChord().si();
    double np = design.neutralPoint().x().si();
    double at = design.aircraft().centreOfGravity().x().si();
    List<String> points = new ArrayList<>();
    double ballast = design.aircraft().masses().item("ballast").map(i -> i.mass().si()).orElse(0.0);
    if (ballast > 0.0) {
      MassItem item = design.aircraft().masses().item("ballast").orElseThrow();
      points.add(
          "Put "
              + Mass.kilograms(ballast).format(units.mass(), 3)
              + " into the nose, its middle "
              + length(item.centreOfGravity().x())
              + " behind the tip: steel nuts or modelling clay, wrapped and glued so that it cannot fly out."
              + room(Mass.kilograms(ballast), item.centreOfGravity().x()));
      points.add(
          "The printed body is closed all around: cut an opening into one side of the nose, behind its rounded tip and a third of its"
              + " thickness high, fill the nose through it from the tip on, and close it with tape once it balances.");
    }
    missing()
        .ifPresent(
            more ->
                points.add(
                    "Have "
                        + more.format(units.mass(), 2)
                        + " more at hand, "
                        + Mass.kilograms(ballast + more.si()).format(units.mass(), 3)
                        + " in all: by the walls inside their meshes the parts balance behind the mark."));
    points.add(
        "Hold it under the wing at the mark, "
            + length(Length.metres(at))
            + " behind the tip of the nose. It must hang level. If the tail sinks, add to the nose or move the wing forward; if the nose sinks, the other way round.");
    double gram = (at - 0.25 * design.aircraft().airframe().fuselage().diameter().si()) * 1e-3 / design.aircraft().mass().si();
    points.add(
        "One gram in the nose moves the balance by about "
            + Length.metres(gram).format(units.length(), 2)
            + ". Within "
            + Length.metres(0.02 * chord).format(units.length(), 2)
            + " is good enough for the first flight; rather ahead of the mark than behind it, and never behind "
            + length(Length.metres(np - 0.05 * chord))
            + ".");
    points.add(
        "Ready to fly it should weigh "
            + design.aircraft().mass().format(units.mass(), 3)
            + (ballast > 0.0 ? ", and by so much more as ballast weighs more that lies further aft." : "."));
    return points("3. Balance", points);
  }

  /** What lies loose does not all find room at the place of the design: how much it takes, and how far it comes. */
  private String room(Mass ballast, Length place) {
    StringJoiner fillings = new StringJoiner(", or ");
    for (NoseFilling.Ware ware : NoseFilling.Ware.values()) {
      NoseFilling.of(design, ballast, place, ware)
          .filter(filling -> filling.mass().compareTo(ballast) > 0)
          .ifPresent(
              filling ->
                  fillings.add(
                      filling.mass().format(units.mass(), 3)
                          + " of "
                          + ware.words()
                          + ", up to "
                          + filling.reach().format(units.length(), 2)));
    }
    return fillings.length() == 0
        ? ""
        : " What finds no room there lies further aft and must weigh more: about " + fillings
            + " behind the tip (with their densities as they lie, from memory).";
  }

  private Chapter fly() {
    GlidePoint best = design.glide().bestGlide();
    Length height = design.brief().launch().height();
    LaunchWords launch = new LaunchWords(design, units);
    List<String> points = new ArrayList<>(launch.steps());
    points.add(
        design.throwCheck().verdict() == ThrowCheck.Verdict.DOES_NOT_FLY
            ? launch.launched("Thrown", "Launched") + " at the " + design.throwCheck().throwSpeed().format(units.speed(), 3) + " of the brief it "
                + launch.verdict(design.throwCheck())
                + launch.launched(
                    ": it drops from the hand, so no distance is told. Throw it faster, or make it lighter or larger.",
                    ": it drops from the elastic, so no distance is told. Take a stronger elastic, or make it lighter or larger.")
            : "Well trimmed it flies at "
                    + best.speed().format(units.speed(), 2)
                    + " and goes some "
                    + design.glide().distanceFrom(height).format(units.distance(), 2)
                    + " from "
                    + height.format(units.distance(), 3)
                    + ", in about "
                    + design.glide().durationFrom(height).format(Time.SECOND, 2)
                    + ". For the verdict on the " + launch.launched("throw", "launch") + " of the brief: "
                    + launch.verdict(design.throwCheck())
                    + ".");
    points.add("Change one thing at a time, and fly three times before you judge it.");
    return points("4. Fly", points);
  }

  private Chapter trim() {
    List<List<String>> rows = new ArrayList<>();
    for (Behaviour behaviour : Arrays.asList(Behaviour.values())) {
      String words = TrimAdvice.of(design, behaviour).words();
      int colon = words.indexOf(": ");
      int half = words.indexOf(" with a radius");
      String head = half > 0 && half < colon ? words.substring(0, half) : words.substring(0, colon);
      String rest = half > 0 && half < colon ? words.substring(half + 1) : words.substring(colon + 2);
      rows.add(List.of(head, Character.toUpperCase(rest.charAt(0)) + rest.substring(1)));
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Paragraph("What you see, and what to do. The amounts are those of this design; half of one is a good first step."));
    blocks.add(new Block.Table(List.of("it does this", "do this"), rows));
    inHand.ifPresent(hand -> blocks.add(new Block.Paragraph(hand.turningTheWing())));
    return new Chapter("5. Trim", blocks);
  }

  private Chapter after() {
    return points(
        "6. Write it down",
        List.of(
            "Weigh the parts, pace out the distance, stop the time from the "
                + new LaunchWords(design, units).launched("hand", "elastic")
                + " to the floor, note what it did.",
            "Put it into a file beside the brief, of the same name but ending in .flights.json, as examples/briefs/hall-glider.flights.json is one (its flights are invented). Run the program again: the report then says what glider you have, how to trim it, and how the next one would be sized.",
            "Change one thing in a copy of the brief and run the program with both briefs: it prints what became better and worse, and why."));
  }
}
