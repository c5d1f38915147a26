// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.basis;

import io.github.wingwright.core.ConvergenceException;
import io.github.wingwright.core.quantity.NamedUnit;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import java.util.function.DoubleSupplier;
import java.util.function.UnaryOperator;

/**
 * One number before and after: whether it changed, and which of its inputs passed the change on.
 *
 * <p>Both steps are walked together. Steps of the same formula are compared input by input; the share of each input is what
 * the formula or the method gives with that input alone as it is after, less what it gave before; in a sum it is the
 * difference of the term. A solution has a share of its own besides: what its method gives after, less what the method of
 * before gives from the inputs of after. It stands for what the method knows and no step says, such as a polar or the
 * wishes of a brief. Where that share is the largest the solution is a cause by itself, and so is a number that was found by
 * another formula or from other inputs.
 */
public final class StepChange {
  /** Two ways to one number differ by rounding in their last places. */
  private static final double ROUNDING = 1e-12;

  /** Methods come to rest within a tolerance: a share of the change below this is theirs. */
  private static final double METHOD = 1e-6;

  private final Step before;
  private final Step after;
  private final List<Cause> causes;

  /** What of the difference came from no input. */
  private final double ownShare;

  private StepChange(Step before, Step after, List<Cause> causes, double ownShare) {
    this.before = before;
    this.after = after;
    this.causes = causes;
    this.ownShare = ownShare;
  }

  /**
   * An input that changed.
   *
   * @param change the input before and after
   * @param share what it contributes to the change of the number [SI]; NaN if the method refuses that input alone
   */
  public record Cause(StepChange change, double share) {
    /** Refuses null. */
    public Cause {
      Objects.requireNonNull(change, "change");
    }

    @Override
    public String toString() {
      return NamedUnit.NUMBER.format(100.0 * share, 3) + " % by " + change;
    }
  }

  /** Compares steps, each pair once. */
  public static final class Walk {
    private final IdentityHashMap<Step, IdentityHashMap<Step, StepChange>> known = new IdentityHashMap<>();

    /** Begins a comparison of two graphs. */
    public Walk() {}

    /**
     * Compares two steps.
     *
     * @param before the step of the first graph
     * @param after the step of the second
     * @return the change, which may be none
     */
    public StepChange of(Step before, Step after) {
      Objects.requireNonNull(before, "before");
      Objects.requireNonNull(after, "after");
      IdentityHashMap<Step, StepChange> row = known.computeIfAbsent(before, b -> new IdentityHashMap<>());
      StepChange done = row.get(after);
      if (done == null) {
        List<Cause> causes = causes(before, after);
        done = new StepChange(before, after, causes, own(before, after, causes));
        row.put(after, done);
      }
      return done;
    }

    private List<Cause> causes(Step before, Step after) {
      if (same(before.value(), after.value()) || !alike(before, after)) {
        return List.of();
      }
      List<Cause> causes = new ArrayList<>();
      for (int i = 0; i < before.inputs().size(); i++) {
        StepChange input = of(before.inputs().get(i), after.inputs().get(i));
        if (input.isChanged()) {
          causes.add(new Cause(input, share(before, after, i)));
        }
      }
      causes.sort((a, b) -> Double.compare(weight(b), weight(a)));
      return List.copyOf(causes);
    }

    /** Of a number without causes everything; of a solution what its method changed; of a formula nothing. */
    private static double own(Step before, Step after, List<Cause> causes) {
      double all = after.value() - before.value();
      if (causes.isEmpty()) {
        return all;
      }
      if (before instanceof Step.Solution solution) {
        double same = attempt(() -> solution.solvedWith(Line.values(after.inputs())));
        double own = after.value() - same;
        // What is left by the tolerance of a method is no cause.
        return Double.isNaN(own) || Math.abs(own) <= METHOD * Math.abs(all) ? 0.0 : own;
      }
      return 0.0;
    }

    /** A method may refuse inputs that never went together. */
    private static double attempt(DoubleSupplier value) {
      try {
        double result = value.getAsDouble();
        return Double.isFinite(result) ? result : Double.NaN;
      } catch (IllegalArgumentException | IllegalStateException | ConvergenceException refused) {
        return Double.NaN;
      }
    }

    private static double weight(Cause cause) {
      return Double.isNaN(cause.share()) ? Math.abs(cause.change().relative()) : Math.abs(cause.share());
    }

    private static double share(Step before, Step after, int i) {
      if (before instanceof Step.Sum) {
        return after.inputs().get(i).value() - before.inputs().get(i).value();
      }
      double[] values = Line.values(before.inputs());
      values[i] = after.inputs().get(i).value();
      if (before instanceof Step.Evaluated evaluated) {
        return attempt(() -> evaluated.formula().evaluate(values)) - before.value();
      }
      if (before instanceof Step.Solution solution) {
        return attempt(() -> solution.solvedWith(values)) - before.value();
      }
      return Double.NaN;
    }
  }

  /**
   * Compares two steps.
   *
   * @param before the step of the first graph
   * @param after the step of the second
   * @return the change, which may be none
   */
  public static StepChange between(Step before, Step after) {
    Objects.requireNonNull(before, "before");
    Objects.requireNonNull(after, "after");
    return new Walk().of(before, after);
  }

  private static boolean same(double before, double after) {
    return Math.abs(after - before) <= ROUNDING * Math.max(Math.abs(before), Math.abs(after));
  }

  /** Whether both were found in the same way, so that their inputs answer each other. */
  private static boolean alike(Step before, Step after) {
    if (before.inputs().size() != after.inputs().size() || before.inputs().isEmpty()) {
      return false;
    }
    if (before instanceof Step.Evaluated one && after instanceof Step.Evaluated other) {
      return one.formula().text().equals(other.formula().text());
    }
    if (before instanceof Step.Solution one && after instanceof Step.Solution other) {
      return one.closingEquation().equals(other.closingEquation()) && named(before, after);
    }
    return before instanceof Step.Sum && after instanceof Step.Sum && named(before, after);
  }

  private static boolean named(Step before, Step after) {
    for (int i = 0; i < before.inputs().size(); i++) {
      if (!before.inputs().get(i).name().equals(after.inputs().get(i).name())) {
        return false;
      }
    }
    return true;
  }

  /**
   * The number before.
   *
   * @return the step
   */
  public Step before() {
    return before;
  }

  /**
   * The number after.
   *
   * @return the step
   */
  public Step after() {
    return after;
  }

  /**
   * Whether it changed by more than rounding.
   *
   * @return true if it did
   */
  public boolean isChanged() {
    return !same(before.value(), after.value());
  }

  /**
   * By how much.
   *
   * @return after less before [SI]
   */
  public double difference() {
    return after.value() - before.value();
  }

  /**
   * By how much for its size.
   *
   * @return difference over the value before; infinite if that was zero
   */
  public double relative() {
    return difference() == 0.0 ? 0.0 : difference() / Math.abs(before.value());
  }

  /**
   * The inputs that passed the change on, the one that counts most first.
   *
   * @return none if it did not change or is a cause by itself
   */
  public List<Cause> causes() {
    return causes;
  }

  /**
   * The way of the change: this number, the input that passed most of it on, the input of that, down to what changed by
   * itself.
   *
   * @return at least this change
   */
  public List<StepChange> path() {
    List<StepChange> path = new ArrayList<>();
    StepChange here = this;
    path.add(here);
    while (!here.beginsHere()) {
      here = here.causes.get(0).change();
      path.add(here);
    }
    return path;
  }

  /** Whether more of the change comes from no input than from any of them. */
  private boolean beginsHere() {
    return causes.isEmpty() || Math.abs(ownShare) > Math.abs(causes.get(0).share());
  }

  /**
   * Everything that changed by itself and reaches this number.
   *
   * @return given values, solutions found from other data, numbers found otherwise
   */
  public Set<StepChange> roots() {
    Set<StepChange> roots = new LinkedHashSet<>();
    if (isChanged()) {
      collect(this, roots, new LinkedHashSet<>());
    }
    return roots;
  }

  private static void collect(StepChange change, Set<StepChange> roots, Set<StepChange> seen) {
    if (!seen.add(change)) {
      return;
    }
    if (change.ownShare != 0.0) {
      roots.add(change);
    }
    change.causes.forEach(c -> collect(c.change(), roots, seen));
  }

  /**
   * In what way it changed by itself.
   *
   * @return the words, empty if it did not change or its inputs passed the change on
   */
  public Optional<String> ownReason() {
    if (!isChanged() || ownShare == 0.0) {
      return Optional.empty();
    }
    if (before instanceof Step.Given && after instanceof Step.Given) {
      return Optional.of("given otherwise");
    }
    if (before instanceof Step.Solution && after instanceof Step.Solution) {
      return Optional.of("found from other data");
    }
    return Optional.of("reckoned another way");
  }

  /**
   * The way of the change in words, from the number back to what changed by itself, in SI units.
   *
   * @return for example {@code "mass, from mass of the wing, from line width (given otherwise): 0.00042 m to 0.00084 m"}
   */
  public String words() {
    return words(unit -> unit);
  }

  /**
   * The way of the change in words, from the number back to what changed by itself.
   *
   * @param shown from the SI unit of a step to the unit to show it in
   * @return for example {@code "mass, from mass of the wing, from line width (given otherwise): 0.42 mm to 0.84 mm"}
   */
  public String words(UnaryOperator<NamedUnit<?>> shown) {
    Objects.requireNonNull(shown, "shown");
    List<StepChange> path = path();
    StepChange root = path.get(path.size() - 1);
    StringJoiner words = new StringJoiner(", from ");
    for (int i = 0; i < path.size() - 1; i++) {
      // What is rounded to what can be made carries the name of what was rounded: one of the two is enough.
      if (!path.get(i).after.name().startsWith(path.get(i + 1).after.name())) {
        words.add(path.get(i).after.name());
      }
    }
    return words.add(root.byItself(shown)).toString();
  }

  /**
   * The way of the change, short: the input that passed most of it on, and what changed by itself.
   *
   * @param shown from the SI unit of a step to the unit to show it in
   * @return for example {@code "mass of the wing, in the end line width (given otherwise): 0.42 mm to 0.84 mm"}
   */
  public String briefly(UnaryOperator<NamedUnit<?>> shown) {
    Objects.requireNonNull(shown, "shown");
    List<StepChange> path = path();
    StepChange root = path.get(path.size() - 1);
    for (int i = 1; i < path.size() - 1; i++) {
      String name = path.get(i).after.name();
      boolean rounding = path.get(i - 1).after.name().startsWith(name) || name.startsWith(path.get(i + 1).after.name());
      if (!rounding) {
        return name + ", in the end " + root.byItself(shown);
      }
    }
    return root.byItself(shown);
  }

  private String byItself(UnaryOperator<NamedUnit<?>> shown) {
    return after.name() + ownReason().map(r -> " (" + r + ")").orElse("") + ": " + values(shown);
  }

  /**
   * Both values in SI units.
   *
   * @return for example {@code "0.00042 m to 0.00084 m"}
   */
  public String values() {
    return values(unit -> unit);
  }

  /**
   * Both values.
   *
   * @param shown from the SI unit of the number to the unit to show it in
   * @return for example {@code "0.42 mm to 0.84 mm"}
   */
  public String values(UnaryOperator<NamedUnit<?>> shown) {
    Objects.requireNonNull(shown, "shown");
    NamedUnit<?> unit = shown.apply(after.unit());
    int digits = 4;
    while (digits < 9 && isChanged() && unit.format(before.value(), digits).equals(unit.format(after.value(), digits))) {
      digits++;
    }
    return unit.format(before.value(), digits) + " to " + unit.format(after.value(), digits);
  }

  @Override
  public String toString() {
    return isChanged() ? after.name() + ": " + values() : after.name() + " unchanged";
  }
}
