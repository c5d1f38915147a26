// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.comparison;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.StepChange;
import io.github.wingwright.stability.design.Design;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;

/**
 * Two designs compared: change one thing, and see what becomes of it.
 *
 * <pre>{@code
 * DesignComparison changed = DesignComparison.of(before, after);
 * changed.numbers();       // mass 50.7 g to 46.2 g, better …
 * changed.roots();         // span 480 mm to 440 mm
 * changed.cameFindings();
 * changed.table();         // all of it, line by line
 * }</pre>
 */
public final class DesignComparison {
  private final Design before;
  private final Design after;
  private final List<ChangedNumber> numbers = new ArrayList<>();
  private final List<StepChange> roots = new ArrayList<>();
  private int unchanged;

  private DesignComparison(Design before, Design after) {
    this.before = before;
    this.after = after;
    StepChange.Walk walk = new StepChange.Walk();
    Map<String, StepChange> causes = new LinkedHashMap<>();
    for (Map.Entry<String, Step> number : after.numbers().entrySet()) {
      Step was = before.numbers().get(number.getKey());
      if (was == null) {
        continue;
      }
      StepChange change = walk.of(was, number.getValue());
      if (!change.isChanged()) {
        unchanged++;
        continue;
      }
      numbers.add(new ChangedNumber(number.getKey(), change, Judgement.of(number.getKey(), change.difference())));
      for (StepChange root : change.roots()) {
        causes.putIfAbsent(root.after().symbol() + " " + root.after().name(), root);
      }
    }
    roots.addAll(causes.values());
  }

  /**
   * Compares two designs.
   *
   * @param before the first
   * @param after the second
   * @return what changed from the first to the second
   */
  public static DesignComparison of(Design before, Design after) {
    Objects.requireNonNull(before, "before");
    Objects.requireNonNull(after, "after");
    return new DesignComparison(before, after);
  }

  /**
   * The first design.
   *
   * @return the design
   */
  public Design before() {
    return before;
  }

  /**
   * The second design.
   *
   * @return the design
   */
  public Design after() {
    return after;
  }

  /**
   * The numbers that changed, in the order of the design.
   *
   * @return numbers of both designs whose values differ by more than rounding
   */
  public List<ChangedNumber> numbers() {
    return List.copyOf(numbers);
  }

  /**
   * How many numbers stayed.
   *
   * @return the count
   */
  public int unchanged() {
    return unchanged;
  }

  /**
   * What changed by itself: given values, numbers found anew or otherwise.
   *
   * @return each once, in the order in which the numbers meet them
   */
  public List<StepChange> roots() {
    return List.copyOf(roots);
  }

  /**
   * The given values among what changed by itself: what somebody decided, or took from a catalogue. What the library read from
   * the shape is none of them.
   *
   * @return the given values
   */
  public List<StepChange> decisions() {
    return roots.stream()
        .filter(r -> r.before() instanceof Step.Given && r.after() instanceof Step.Given given && given.source().standing() != Source.Standing.LIBRARY)
        .toList();
  }

  /**
   * Findings of the second design that the first does not have.
   *
   * @return the findings, heaviest first
   */
  public List<Finding> cameFindings() {
    return only(after, before);
  }

  /**
   * Findings of the first design that the second does not have.
   *
   * @return the findings, heaviest first
   */
  public List<Finding> wentFindings() {
    return only(before, after);
  }

  /** A finding that stays may say other figures: its subject and the first words of its message tell it. */
  private static List<Finding> only(Design one, Design other) {
    Predicate<Finding> missing =
        f -> other.findings().stream().noneMatch(o -> o.subject().equals(f.subject()) && start(o).equals(start(f)));
    return one.findings().stream().filter(missing).toList();
  }

  /** The message up to its first figure, the sign of that one left out. */
  private static String start(Finding finding) {
    String message = finding.message();
    int i = 0;
    while (i < message.length() && !Character.isDigit(message.charAt(i))) {
      i++;
    }
    boolean signed = i > 0 && i < message.length() && "+-−".indexOf(message.charAt(i - 1)) >= 0;
    return message.substring(0, signed ? i - 1 : i);
  }

  /**
   * How many numbers are better or worse.
   *
   * @param judgement which
   * @return the count
   */
  public long count(Judgement judgement) {
    Objects.requireNonNull(judgement, "judgement");
    return numbers.stream().filter(n -> n.judgement() == judgement).count();
  }

  /**
   * The comparison to look at in a shell, line by line.
   *
   * @return the table
   */
  public ComparisonTable table() {
    return new ComparisonTable(this);
  }

  @Override
  public String toString() {
    return numbers.size()
        + " numbers changed, "
        + unchanged
        + " stayed, "
        + count(Judgement.BETTER)
        + " better, "
        + count(Judgement.WORSE)
        + " worse";
  }
}
