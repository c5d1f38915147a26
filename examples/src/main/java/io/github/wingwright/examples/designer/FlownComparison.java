// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.performance.GlideGoal;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.stability.comparison.Judgement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What two gliders fly when they are launched as their briefs say: what the change was made for. */
final class FlownComparison {
  /** Below this part a best angle is noise. */
  private static final double NOISE = FlownFigure.RESOLUTION;

  private final FlownThrow before;
  private final FlownThrow after;
  private final GlideGoal goal;
  private final BriefUnits units;

  FlownComparison(FlownThrow before, FlownThrow after, GlideGoal goal, BriefUnits units) {
    this.before = before;
    this.after = after;
    this.goal = goal;
    this.units = units;
  }

  /**
   * One line.
   *
   * @param label how it is launched
   * @param before what the first flies
   * @param after what the second flies
   * @param percent by what part it changed, empty if one does not fly
   * @param judgement better or worse
   */
  record Row(String label, String before, String after, String percent, Judgement judgement) {}

  /** A line for the level launch, and one for the best angle where both have one; none for what stayed the same. */
  List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    row("launched level", false).ifPresent(rows::add);
    if (flies(before) && flies(after)) {
      row("launched at its best angle", true).ifPresent(rows::add);
    }
    return rows;
  }

  private static boolean flies(FlownThrow flown) {
    return flown.flies() && !flown.lasts();
  }

  private Optional<Row> row(String label, boolean bestAngle) {
    double was = before.flies() ? before.value(goal, bestAngle) : 0.0;
    double is = after.flies() ? after.value(goal, bestAngle) : 0.0;
    if (is == was) {
      return Optional.empty();
    }
    double part = is / was - 1.0;
    Judgement judgement = Math.abs(is - was) <= NOISE * was ? Judgement.NEITHER : is > was ? Judgement.BETTER : Judgement.WORSE;
    String percent = Double.isFinite(part) && is > 0.0 ? (part > 0.0 ? "+" : "") + NamedUnit.NUMBER.format(100.0 * part, 2) + " %" : "";
    return Optional.of(new Row(label, shown(was), shown(is), percent, judgement));
  }

  private String shown(double value) {
    return value > 0.0 ? units.flown(goal, value) : "does not fly";
  }
}
