// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.performance.ElasticLaunch;
import io.github.wingwright.core.performance.GlidePoint;
import io.github.wingwright.core.performance.ThrowCheck;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.Launch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is said of the launch, from the hand or by an elastic, on the sheet, in the report and on the page for builders. */
final class LaunchWords {
  /** The glider passes over the post of the elastic by so much, its path down included (common practice, no source). */
  private static final Length POST_BELOW = Length.millimetres(300);

  private final Design design;
  private final BriefUnits units;
  private final Launch launch;
  private final Optional<ElasticLaunch> elastic;

  LaunchWords(Design design, BriefUnits units) {
    this.design = design;
    this.units = units;
    launch = design.brief().launch();
    elastic = launch.elastic();
  }

  /** The row of the brief. */
  String asked() {
    String speed = speed(design.launch().speed(), 3) + " from " + launch.height().format(units.distance(), 3);
    return elastic
        .map(e -> "by an elastic, drawn back " + drawn(e.stretch()) + " to " + pull(e.greatestPull()) + ": " + speed)
        .orElse(speed);
  }

  /** The label of the speed on the sheet. */
  String speedLabel() {
    return elastic.isPresent() ? "launch speed off the elastic" : "launch speed";
  }

  /** The label of the verdict on the sheet. */
  String head() {
    return elastic.isPresent() ? "Elastic launch" : "Throw";
  }

  /** Whether it flies, for who or what launches it. */
  String verdict(ThrowCheck check) {
    return check.verdict().words(elastic.isPresent() ? "this elastic" : "this thrower");
  }

  /** Speed at which a glider of a mass leaves hand or elastic. */
  Speed speed(Mass glider) {
    return launch.speed(glider);
  }

  /** A throw, or a launch. */
  String launched(String thrown, String otherwise) {
    return elastic.isPresent() ? otherwise : thrown;
  }

  /** How to launch it, for somebody who never did. */
  List<String> steps() {
    GlidePoint trimmed = design.glide().at(design.trim().liftCoefficient());
    String down = Angle.DEGREE.format(Math.atan(1.0 / trimmed.liftToDrag()), 1);
    return elastic.map(e -> pulled(e, trimmed, down)).orElseGet(() -> thrown(trimmed, down));
  }

  private List<String> thrown(GlidePoint trimmed, String down) {
    return List.of(
        "Clear the flight path to twice the distance you expect, and have everybody stand behind the thrower.",
        "Hold it under the wing, level in roll. Throw it straight ahead, its nose "
            + down
            + " below the horizon, at "
            + speed(trimmed.speed(), 2)
            + ": a push, as one throws a dart, no swing upward. Below "
            + speed(design.glide().stallSpeed(), 2)
            + " it cannot fly.");
  }

  private List<String> pulled(ElasticLaunch e, GlidePoint trimmed, String down) {
    Mass mass = design.aircraft().mass();
    Speed stall = design.glide().stallSpeed();
    String weights = NamedUnit.NUMBER.format(e.loadFactor(mass), 2) + " times the glider's weight";
    List<String> steps = new ArrayList<>();
    steps.add(
        "Put on eye protection, all who stand near as well. Clear the flight path to twice the distance you expect. Nobody stands"
            + " ahead of the glider, over the elastic or in line behind it: a rubber, a knot or a hook that lets go flies both ways."
            + " Look them over for cracks before each launch.");
    steps.add(
        "Glue a hook of steel wire below the nose, "
            + design.aircraft().airframe().fuselage().diameter().format(units.length(), 3)
            + " behind the tip and in the middle, its foot of at least 10 mm along the inside of the wall. It must open to the rear:"
            + " the loop of the elastic holds while it pulls, and drops off by itself once it is slack. With the glider on a table,"
            + " pull at the hook with a spring balance to "
            + pull(Force.newtons(2.0 * e.greatestPull().si()))
            + ", twice what it must bear, before the first launch.");
    steps.add(
        "Fasten the far end of the elastic to the top of a post that cannot tip and ends "
            + POST_BELOW.format(units.length(), 3)
            + " below the "
            + launch.height().format(units.distance(), 3)
            + " of the launch: the glider flies over it, and nothing of it may stand in its way. Mark where the loop lies when the elastic just begins to pull, and measure from there. The brief draws"
            + " it back "
            + drawn(e.stretch())
            + ": there it pulls with "
            + pull(e.greatestPull())
            + ", "
            + weights
            + ", and the glider leaves it at "
            + speed(e.speed(mass), 3)
            + (e.isUsualEfficiency()
                ? ", if "
                    + NamedUnit.NUMBER.format(100.0 * e.efficiency(), 2)
                    + " % of the energy reaches it (common practice, no source: film a launch, and put what you find into the brief)"
                : "")
            + ". Never draw it further.");
    steps.add(first(e, trimmed, mass));
    steps.add(
        e.stretchFor(stall, mass)
            .map(x -> "Below " + speed(stall, 2) + " it cannot fly: drawn back less than " + drawn(x) + " it drops from the elastic.")
            .orElse("Below " + speed(stall, 2) + " it cannot fly, and this elastic gives less: take a stronger one."));
    steps.add(
        "Hook it on and take the body behind the wing with one hand. Draw it straight back from the post,"
            + " level in roll, its nose "
            + down
            + " below the horizon, say aloud that you launch, and let go: no push, no swing. To stop, walk it back to the post while"
            + " you hold it; never let go of the elastic alone.");
    return steps;
  }

  /** With the pull that gives the speed of the trim, which needs no luck. */
  private String first(ElasticLaunch e, GlidePoint trimmed, Mass mass) {
    return e.stretchFor(trimmed.speed(), mass)
        .map(
            x ->
                "Begin with "
                    + drawn(x)
                    + ", where it pulls with "
                    + pull(e.pullAt(x))
                    + ": so it leaves at "
                    + speed(trimmed.speed(), 2)
                    + ", for which it is trimmed. Draw it back further when that flies straight.")
        .orElse(
            "It is trimmed for "
                + speed(trimmed.speed(), 2)
                + ", more than this elastic gives: let it go with the nose a little lower, or take a stronger elastic.");
  }

  private String speed(Speed speed, int digits) {
    return speed.format(units.speed(), digits);
  }

  private String drawn(Length stretch) {
    return stretch.format(units.length(), 3);
  }

  private static String pull(Force force) {
    return force.format(Force.NEWTON, 2);
  }
}
