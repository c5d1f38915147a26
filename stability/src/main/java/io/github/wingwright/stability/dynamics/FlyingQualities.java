// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.dynamics;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Time;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * What is expected of the natural motions, as guidelines: ranges for full-size light aeroplanes, and small-model practice
 * for what is thrown by hand and flies by itself.
 *
 * <p>The two differ because the motions of a small aircraft are quick. At the same shape and density times go with the
 * root of the size (Froude), and nobody's hand has to keep up: a free-flight glider may swing in phugoid with little
 * damping, and its spiral need only be slow against the flight. The full-size ranges would scold a good glider, so they
 * are not applied to it.
 */
public final class FlyingQualities {
  private static final Source MILITARY = Source.fromMemory("MIL-F-8785C, Flying qualities of piloted airplanes, 1980",
      "level 1, class I, category B");
  private static final double NO_LIMIT = Double.POSITIVE_INFINITY;

  private final String appliesTo;
  private final List<Rule> rules;

  /** A guideline, the motion it is about, and what of the motion is held against it. */
  private record Rule(ModeKind kind, Measure measure, Guideline guideline) {}

  private enum Measure { DAMPING, TIME_CONSTANT, TIME_TO_DOUBLE, FREQUENCY, DAMPING_TIMES_FREQUENCY }

  private FlyingQualities(String appliesTo, List<Rule> rules) {
    this.appliesTo = appliesTo;
    this.rules = rules;
  }

  /** Piloted light aeroplanes in cruise. */
  public static FlyingQualities lightAeroplane() {
    String who = "piloted light aeroplanes";
    return new FlyingQualities(who, List.of(
        number(ModeKind.SHORT_PERIOD, Measure.DAMPING, "damping ratio of the short period", 0.30, 2.0, who,
            "Enlarge the tailplane or lengthen its arm for more damping.", MILITARY),
        number(ModeKind.PHUGOID, Measure.DAMPING, "damping ratio of the phugoid", 0.04, 1, who,
            "A clean aircraft has little, and the pilot can stop it: enlarge the tailplane only if hands-off flight matters.", MILITARY),
        time(ModeKind.ROLL, Measure.TIME_CONSTANT, "time constant of the roll", 0, 1.4, who,
            "Reduce the roll inertia or enlarge the wing's span.", MILITARY),
        time(ModeKind.SPIRAL, Measure.TIME_TO_DOUBLE, "time to double of the spiral", 20, NO_LIMIT, who,
            "Add dihedral or reduce the fin.", MILITARY),
        number(ModeKind.DUTCH_ROLL, Measure.DAMPING, "damping ratio of the Dutch roll", 0.08, 1, who,
            "Enlarge the fin, lengthen its arm, or reduce dihedral.", MILITARY),
        number(ModeKind.DUTCH_ROLL, Measure.DAMPING_TIMES_FREQUENCY,
            "damping times natural frequency of the Dutch roll", 0.15, NO_LIMIT, who,
            "Enlarge the fin, lengthen its arm, or reduce dihedral.", MILITARY),
        number(ModeKind.DUTCH_ROLL, Measure.FREQUENCY, "natural frequency of the Dutch roll", 0.4, NO_LIMIT, who,
            "Enlarge the fin.", MILITARY)));
  }

  /** Hand-launched and free-flight models, without a pilot in the loop. */
  public static FlyingQualities freeFlightModel() {
    String who = "hand-launched models";
    return new FlyingQualities(who, List.of(
        number(ModeKind.SHORT_PERIOD, Measure.DAMPING, "damping ratio of the short period", 0.3, 2, who,
            "Enlarge the tailplane or lengthen its arm.", Source.COMMON_PRACTICE),
        number(ModeKind.PHUGOID, Measure.DAMPING, "damping ratio of the phugoid", 0, 1, who,
            "Move the battery or ballast forward a little, or enlarge the tailplane.",
            Source.COMMON_PRACTICE),
        time(ModeKind.SPIRAL, Measure.TIME_TO_DOUBLE, "time to double of the spiral", 2, NO_LIMIT, who,
            "Add dihedral or reduce the fin.", Source.COMMON_PRACTICE),
        number(ModeKind.DUTCH_ROLL, Measure.DAMPING, "damping ratio of the Dutch roll", 0.05, 1, who,
            "Enlarge the fin, lengthen its arm, or reduce dihedral.", Source.COMMON_PRACTICE)));
  }

  private static Rule number(ModeKind kind, Measure measure, String name, double lower, double upper, String who,
      String advice, Source source) {
    return new Rule(kind, measure,
        new Guideline(name, range(lower, upper), NamedUnit.NUMBER, who, advice, source));
  }

  private static Rule time(ModeKind kind, Measure measure, String name, double lower, double upper, String who,
      String advice, Source source) {
    return new Rule(kind, measure,
        new Guideline(name, range(lower, upper), Time.SECOND, who, advice, source));
  }

  private static Interval range(double lower, double upper) {
    return upper == Double.POSITIVE_INFINITY ? Interval.atLeast(lower) : Interval.between(lower, upper);
  }

  /** The guidelines. */
  public List<Guideline> guidelines() {
    return rules.stream().map(Rule::guideline).toList();
  }

  /**
   * Holds the motions against the guidelines.
   *
   * @param modes longitudinal or lateral motions
   * @return what a builder should know, heaviest first: guidelines that are left, and motions that run away
   */
  public List<Finding> check(Modes modes) {
    Objects.requireNonNull(modes, "modes");
    List<Finding> findings = new ArrayList<>();
    for (Mode mode : modes.all()) {
      runsAway(mode).ifPresent(findings::add);
      for (Rule rule : rules) {
        if (rule.kind == mode.kind()) {
          Optional<Double> value = measure(rule.measure, mode);
          value.flatMap(rule.guideline::check).ifPresent(findings::add);
        }
      }
    }
    return Finding.inOrderOfWeight(findings);
  }

  private static Optional<Double> measure(Measure measure, Mode mode) {
    return switch (measure) {
      case DAMPING -> mode.isOscillatory() ? Optional.of(mode.dampingRatio()) : Optional.empty();
      case TIME_CONSTANT -> mode.timeConstant().map(Time::seconds);
      case TIME_TO_DOUBLE -> mode.timeToDouble().map(Time::seconds);
      case FREQUENCY -> mode.isOscillatory() ? Optional.of(mode.naturalFrequency().radiansPerSecond())
          : Optional.empty();
      case DAMPING_TIMES_FREQUENCY -> mode.isOscillatory() ? Optional.of(-mode.real()) : Optional.empty();
    };
  }

  private Optional<Finding> runsAway(Mode mode) {
    String advice = switch (mode.kind()) {
      case PITCH_DIVERGENCE -> "Move the centre of gravity forward (battery or ballast), or enlarge the tailplane.";
      case YAW_DIVERGENCE -> "Enlarge the fin or lengthen its arm.";
      case SPEED_DIVERGENCE -> "Fly faster than the speed of least drag, or enlarge the tailplane.";
      case PHUGOID -> "Enlarge the tailplane or lengthen its arm; a little more drag helps as well.";
      case SHORT_PERIOD, THIRD_OSCILLATION -> "Enlarge the tailplane, or move the centre of gravity forward.";
      case DUTCH_ROLL -> "Enlarge the fin, lengthen its arm, or reduce dihedral.";
      case ROLL_SPIRAL_OSCILLATION -> "Reduce dihedral, or enlarge the fin.";
      case ROLL -> "The wing does not damp roll: fly faster, away from the stall, or lengthen the span.";
      case SPIRAL, SHORT_PERIOD_SUBSIDENCE, PHUGOID_SUBSIDENCE, YAW_SUBSIDENCE -> "";
    };
    if (advice.isEmpty() || mode.isStable()) {
      return Optional.empty();
    }
    String how = mode.timeToDouble()
        .map(t -> String.format(Locale.ROOT, "doubles every %.3g s", t.seconds())).orElse("is neutral");
    return Optional.of(Finding.of(Severity.SERIOUS, mode.kind().words(),
        "The " + mode.kind().words() + " " + how + ". " + advice, Source.DEFINITION));
  }

  @Override
  public String toString() {
    return "flying qualities of " + appliesTo + ", " + rules.size() + " guidelines";
  }
}
