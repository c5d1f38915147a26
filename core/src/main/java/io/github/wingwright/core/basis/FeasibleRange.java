// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import io.github.wingwright.core.quantity.NamedUnit;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.StringJoiner;

/**
 * What a set of considerations leaves of one dimension: who binds each end, or who clashes and by how much.
 *
 * <p>Limits and guidelines that apply are intersected; targets pull and do not bind; considerations that were set aside
 * are kept in the list and shown, and take no part.
 */
public final class FeasibleRange implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String variable;
  private final NamedUnit<?> unit;
  private final List<Bound> bounds;
  private final Interval interval;
  private final Interval limits;

  private FeasibleRange(String variable, NamedUnit<?> unit, List<Bound> bounds) {
    this.variable = Objects.requireNonNull(variable, "variable");
    this.unit = Objects.requireNonNull(unit, "unit");
    this.bounds = List.copyOf(bounds);
    Interval all = Interval.ALL;
    Interval hard = Interval.ALL;
    for (Bound bound : bounds) {
      if (bound.binds()) {
        all = all.intersect(bound.interval());
        if (bound.strength() == Strength.LIMIT) {
          hard = hard.intersect(bound.interval());
        }
      }
    }
    this.interval = all;
    this.limits = hard;
  }

  /**
   * The range that some bounds leave.
   *
   * @param variable the dimension, such as {@code "fuselage diameter"}
   * @param unit the unit to show it in
   * @param bounds what each consideration leaves
   * @return the range
   */
  public static FeasibleRange of(String variable, NamedUnit<?> unit, List<Bound> bounds) {
    Objects.requireNonNull(bounds, "bounds");
    return new FeasibleRange(variable, unit, bounds);
  }

  /**
   * The dimension.
   *
   * @return for example {@code "fuselage diameter"}
   */
  public String variable() {
    return variable;
  }

  /**
   * The unit to show it in.
   *
   * @return the unit
   */
  public NamedUnit<?> unit() {
    return unit;
  }

  /**
   * All considerations, set aside or not.
   *
   * @return the bounds in the order they were given
   */
  public List<Bound> bounds() {
    return bounds;
  }

  /**
   * What limits and guidelines leave together.
   *
   * @return the feasible interval [SI], empty if they clash
   */
  public Interval interval() {
    return interval;
  }

  /**
   * What the limits alone leave.
   *
   * @return the interval [SI]
   */
  public Interval limits() {
    return limits;
  }

  /**
   * Whether nothing is left.
   *
   * @return true if limits and guidelines clash
   */
  public boolean isEmpty() {
    return interval.isEmpty();
  }

  /**
   * Who binds the lower end.
   *
   * @return the bound with the greatest lower end, empty if nothing binds it
   */
  public Optional<Bound> lowerBinding() {
    Bound binding = null;
    for (Bound bound : bounds) {
      if (bound.binds()
          && !bound.interval().isEmpty()
          && bound.interval().lower() > Double.NEGATIVE_INFINITY
          && (binding == null || bound.interval().lower() > binding.interval().lower())) {
        binding = bound;
      }
    }
    return Optional.ofNullable(binding);
  }

  /**
   * Who binds the upper end.
   *
   * @return the bound with the least upper end, empty if nothing binds it
   */
  public Optional<Bound> upperBinding() {
    Bound binding = null;
    for (Bound bound : bounds) {
      if (bound.binds()
          && !bound.interval().isEmpty()
          && bound.interval().upper() < Double.POSITIVE_INFINITY
          && (binding == null || bound.interval().upper() < binding.interval().upper())) {
        binding = bound;
      }
    }
    return Optional.ofNullable(binding);
  }

  /**
   * The considerations that leave nothing all by themselves: what was fixed before already breaks them.
   *
   * @return the bounds that bind and whose interval is empty
   */
  public List<Bound> impossible() {
    return bounds.stream().filter(b -> b.binds() && b.interval().isEmpty()).toList();
  }

  /**
   * The considerations that cannot both hold, worst first.
   *
   * @return one entry for each pair whose intervals are apart; empty if the range is not empty, or if only a
   *     consideration that no value satisfies makes it so
   */
  public List<Clash> clashes() {
    List<Clash> clashes = new ArrayList<>();
    for (Bound low : bounds) {
      for (Bound high : bounds) {
        boolean both = low.binds() && high.binds() && !low.interval().isEmpty() && !high.interval().isEmpty();
        if (both && low.interval().lower() > high.interval().upper()) {
          clashes.add(new Clash(low, high));
        }
      }
    }
    clashes.sort((a, b) -> Double.compare(b.gap(), a.gap()));
    return List.copyOf(clashes);
  }

  /**
   * The single changes, each of one consideration, after which the range is not empty.
   *
   * @return the smallest such change of each consideration that can end the clash alone; empty if there is no clash, or
   *     if it takes more than one change
   */
  public List<Relaxation> relaxations() {
    List<Relaxation> changes = new ArrayList<>();
    for (int i = 0; i < bounds.size(); i++) {
      Bound bound = bounds.get(i);
      Interval rest = Interval.ALL;
      for (int j = 0; j < bounds.size(); j++) {
        if (j != i && bounds.get(j).binds()) {
          rest = rest.intersect(bounds.get(j).interval());
        }
      }
      if (bound.binds() && !bound.interval().isEmpty() && !rest.isEmpty()) {
        if (bound.interval().lower() > rest.upper()) {
          changes.add(new Relaxation(bound, bound.interval().lower(), rest.upper()));
        } else if (bound.interval().upper() < rest.lower()) {
          changes.add(new Relaxation(bound, bound.interval().upper(), rest.lower()));
        }
      }
    }
    return List.copyOf(changes);
  }

  /**
   * What giving up one consideration would leave.
   *
   * @param bound one of {@link #bounds()}
   * @return the interval without it [SI]
   */
  public Interval without(Bound bound) {
    Objects.requireNonNull(bound, "bound");
    Interval rest = Interval.ALL;
    for (Bound other : bounds) {
      if (other.binds() && !other.equals(bound)) {
        rest = rest.intersect(other.interval());
      }
    }
    return rest;
  }

  /**
   * What a choice leaves undone.
   *
   * @param value the chosen value [SI]
   * @return a serious finding for each limit broken, a caution for each guideline left
   * @throws IllegalArgumentException if the value is not finite
   */
  public List<Finding> check(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(variable + " must be finite, was " + value);
    }
    List<Finding> findings = new ArrayList<>();
    for (Bound bound : bounds) {
      if (bound.binds() && !bound.interval().contains(value)) {
        boolean limit = bound.strength() == Strength.LIMIT;
        findings.add(
            Finding.of(
                limit ? Severity.SERIOUS : Severity.CAUTION,
                variable,
                (limit ? "The limit \"" : "The guideline \"") + bound.name() + "\" does not hold for this choice.",
                value,
                bound.interval(),
                unit,
                bound.source()));
      }
    }
    return Finding.inOrderOfWeight(findings);
  }

  /**
   * A table: a line for each consideration, then what is left and who binds it.
   *
   * @return several lines of text
   */
  @Override
  public String toString() {
    StringJoiner lines = new StringJoiner("\n");
    lines.add(variable + ":");
    for (Bound bound : bounds) {
      String what =
          bound.strength() == Strength.TARGET && bound.preference().isPresent()
              ? "near " + unit.format(bound.preferred(), 4)
              : bound.interval().format(unit);
      String decision = bound.decision().kind() == Decision.Kind.CHOSEN ? "" : ", " + bound.decision();
      lines.add(
          "  " + bound.strength().name().toLowerCase(Locale.ROOT) + "  " + bound.name() + ": " + what + decision);
    }
    if (isEmpty()) {
      impossible().forEach(bound -> lines.add("  impossible: no value satisfies \"" + bound.name() + "\""));
      List<Clash> clashes = clashes();
      clashes.forEach(clash -> lines.add("  clash: " + clash.describe(unit)));
      if (clashes.size() > 1) {
        List<Relaxation> changes = relaxations();
        changes.forEach(change -> lines.add("  enough alone: " + change.describe(unit)));
        if (changes.isEmpty()) {
          lines.add("  no single change is enough");
        }
      }
    } else {
      lines.add("  feasible: " + interval.format(unit));
      lowerBinding().ifPresent(bound -> lines.add("  lower end bound by " + bound.name()));
      upperBinding().ifPresent(bound -> lines.add("  upper end bound by " + bound.name()));
    }
    return lines.toString();
  }

  /**
   * A change of one end of one consideration.
   *
   * @param bound the consideration
   * @param from the end as it is [SI]
   * @param to the end as it would have to be [SI]
   */
  public record Relaxation(Bound bound, double from, double to) implements Serializable {
    /** Refuses null and what is not a number. */
    public Relaxation {
      Objects.requireNonNull(bound, "bound");
      if (Double.isNaN(from) || Double.isNaN(to)) {
        throw new IllegalArgumentException("ends of a relaxation must be numbers, were " + from + " and " + to);
      }
    }

    /** The same with the values in SI units, for whoever meets it without its range. */
    @Override
    public String toString() {
      return describe(NamedUnit.NUMBER);
    }

    /**
     * The change in words.
     *
     * @param unit the unit to show values in
     * @return one phrase
     */
    public String describe(NamedUnit<?> unit) {
      String enough = to < from ? Advised.down(to, unit, 4) : Advised.up(to, unit, 4);
      return "\"" + bound.name() + "\" at " + enough + " instead of " + unit.format(from, 4);
    }
  }

  /**
   * Two considerations that cannot both hold.
   *
   * @param low the one that asks for more
   * @param high the one that asks for less
   */
  public record Clash(Bound low, Bound high) implements Serializable {
    /** Refuses null. */
    public Clash {
      Objects.requireNonNull(low, "low");
      Objects.requireNonNull(high, "high");
    }

    @Override
    public String toString() {
      return "\"" + low.name() + "\" against \"" + high.name() + "\"";
    }

    /**
     * By how much they miss each other.
     *
     * @return the gap between their intervals [SI], positive
     */
    public double gap() {
      return low.interval().lower() - high.interval().upper();
    }

    /**
     * The clash in words, with the smallest change of each side that would end it.
     *
     * @param unit the unit to show values in
     * @return one sentence
     */
    public String describe(NamedUnit<?> unit) {
      Objects.requireNonNull(unit, "unit");
      return "\""
          + low.name()
          + "\" needs "
          + low.interval().format(unit)
          + ", \""
          + high.name()
          + "\" allows "
          + high.interval().format(unit)
          + ": they miss each other by "
          + unit.format(gap(), 3)
          + ". To agree, the first comes down to "
          + Advised.down(high.interval().upper(), unit, 4)
          + " or the second goes up to "
          + Advised.up(low.interval().lower(), unit, 4)
          + ".";
    }
  }
}
