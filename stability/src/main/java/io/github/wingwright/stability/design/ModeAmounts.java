// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.ConvergenceException;
import io.github.wingwright.core.aircraft.Aircraft;
import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Panel;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.mass.MassStatement;
import io.github.wingwright.core.performance.GlidePerformance;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.stability.PitchModel;
import io.github.wingwright.stability.TailScale;
import io.github.wingwright.stability.dynamics.ModeKind;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleFunction;

/**
 * By how much one change alone takes away what is found about a motion.
 *
 * <p>The equations are solved again with fin, dihedral, tailplane or nose ballast changed, further and further, until the
 * finding is gone and no other has come; the first such place is closed in on and rounded away from the present value. Where
 * another comes whatever is changed, the nearest place is told with what comes. Masses stay, but for the ballast: what a larger
 * tail weighs is balanced out again, as it is on the table. The lift coefficient of the glide stays too, the tail being set anew.
 */
final class ModeAmounts {
  /** Tails from a quarter of their area to four times as much: beyond that it is another aircraft. */
  private static final double AREA_FACTOR = 4.0;

  private static final double DIHEDRAL = Math.toRadians(15);

  /** Ballast up to this part of the mass. */
  private static final double BALLAST_SHARE = 0.4;

  private static final int STEPS = 16;
  private static final int HALVINGS = 12;

  /** So many digits are shown. */
  private static final MathContext OUTWARD = new MathContext(3, RoundingMode.UP);

  private static final MathContext INWARD = new MathContext(3, RoundingMode.DOWN);

  private final PitchModel model;
  private final Aircraft aircraft;
  private final GlidePerformance glide;
  private final double lift;
  private final Set<String> known;

  /** An aircraft with the model of its balance. */
  private record Variant(PitchModel model, Aircraft aircraft) {}

  /** One thing to change: what it is now, how far it may go, and the aircraft with another value. */
  private record Lever(String name, double now, double limit, NamedUnit<?> unit, DoubleFunction<Variant> change) {
    String words(double to) {
      return name + " from " + unit.format(now, 3) + " to " + unit.format(to, 3);
    }
  }

  /** Of an aircraft in a glide, about which so much was found. */
  ModeAmounts(PitchModel model, Aircraft aircraft, GlidePerformance glide, double lift, List<Finding> found) {
    this.model = model;
    this.aircraft = aircraft;
    this.glide = glide;
    this.lift = lift;
    known = subjects(found, new Variant(model, aircraft));
  }

  /** A finding about a motion with the amounts of all that would do alone, or why there is none. */
  Finding withAmounts(Finding finding) {
    ModeKind kind = kind(finding);
    List<Lever> levers = levers(kind);
    String words;
    if (levers.isEmpty()) {
      words = " No amount: " + why(kind);
    } else {
      List<String> amounts = amounts(levers, finding.subject(), true);
      if (amounts.isEmpty()) {
        amounts = amounts(levers, finding.subject(), false);
      }
      words =
          amounts.isEmpty()
              ? " No amount: no change of one thing alone (" + names(levers) + ") does it within reach."
              : (amounts.size() == 1 ? " This alone does it: " : " One of these alone does it: ") + String.join("; ", amounts) + ".";
    }
    return reworded(finding, finding.message() + words);
  }

  private List<String> amounts(List<Lever> levers, String subject, boolean free) {
    List<String> amounts = new ArrayList<>();
    for (Lever lever : levers) {
      amount(lever, subject, free).ifPresent(to -> amounts.add(lever.words(to) + price(lever, to)));
    }
    return amounts;
  }

  private static String names(List<Lever> levers) {
    return String.join(", ", levers.stream().map(Lever::name).distinct().toList());
  }

  /** The same finding in other words. */
  static Finding reworded(Finding f, String message) {
    return f.range().isPresent()
        ? Finding.of(f.severity(), f.subject(), message, f.value().orElse(0.0), f.range().get(), f.unit(), f.source())
        : Finding.of(f.severity(), f.subject(), message, f.source());
  }

  /** The motion that a finding names; the longest name wins, since that of the roll is in that of the Dutch roll. */
  private static ModeKind kind(Finding finding) {
    ModeKind named = ModeKind.ROLL;
    for (ModeKind kind : ModeKind.values()) {
      if (finding.subject().contains(kind.words())
          && (!finding.subject().contains(named.words()) || kind.words().length() > named.words().length())) {
        named = kind;
      }
    }
    return named;
  }

  private static String why(ModeKind kind) {
    return kind == ModeKind.ROLL
        ? "span, inertia and speed change all else as well; size it again with another span."
        : "there is no tail or ballast of the usual kind whose size could be told.";
  }

  private List<Lever> levers(ModeKind kind) {
    List<Lever> levers = new ArrayList<>();
    switch (kind) {
      case SHORT_PERIOD, SHORT_PERIOD_SUBSIDENCE, PITCH_DIVERGENCE, PHUGOID, PHUGOID_SUBSIDENCE, SPEED_DIVERGENCE, THIRD_OSCILLATION -> {
        tails(levers, Tail.Role.HORIZONTAL);
        nose(levers);
      }
      case DUTCH_ROLL, YAW_DIVERGENCE, YAW_SUBSIDENCE, SPIRAL, ROLL_SPIRAL_OSCILLATION -> {
        tails(levers, Tail.Role.VERTICAL);
        dihedral(levers);
      }
      case ROLL -> {}
    }
    return levers;
  }

  /** All tails of a role, together; the arm stays. */
  private void tails(List<Lever> levers, Tail.Role role) {
    Airframe frame = aircraft.airframe();
    double area = frame.tails().stream().filter(t -> t.role() == role).mapToDouble(t -> t.planform().area().si()).sum();
    if (area == 0.0) {
      return;
    }
    DoubleFunction<Variant> change =
        to ->
            shaped(
                new Airframe(
                    frame.fuselage(),
                    frame.wing(),
                    frame.tails().stream()
                        .map(t -> t.role() == role ? TailScale.toArea(t, t.planform().area().si() * to / area) : t)
                        .toList()));
    for (double limit : new double[] {area * AREA_FACTOR, area / AREA_FACTOR}) {
      levers.add(new Lever(role.words() + " at its arm", area, limit, Area.SQUARE_CENTIMETRE, change));
    }
  }

  private void dihedral(List<Lever> levers) {
    Wing wing = aircraft.airframe().wing();
    Angle now = wing.planform().panels().get(0).dihedral();
    if (wing.planform().panels().stream().map(Panel::dihedral).distinct().count() > 1) {
      return;
    }
    DoubleFunction<Variant> change =
        to ->
            shaped(
                new Airframe(
                    aircraft.airframe().fuselage(),
                    new Wing(
                        wing.planform().withDihedral(Angle.radians(to)), wing.section(), wing.placement(), wing.incidence()),
                    aircraft.airframe().tails()));
    levers.add(new Lever("dihedral", now.si(), now.si() + DIHEDRAL, Angle.DEGREE, change));
    levers.add(new Lever("dihedral", now.si(), Math.max(0.0, now.si() - DIHEDRAL), Angle.DEGREE, change));
  }

  private Variant shaped(Airframe other) {
    return new Variant(model.withAirframe(other), aircraft.withAirframe(other));
  }

  private void nose(List<Lever> levers) {
    double now = ballast(aircraft.masses());
    DoubleFunction<Variant> change = to -> new Variant(model, aircraft.withMasses(ballasted(aircraft, to)));
    levers.add(new Lever("ballast in the nose", now, now + BALLAST_SHARE * aircraft.mass().si(), Mass.GRAM, change));
    if (now > 0.0) {
      levers.add(new Lever("ballast in the nose", now, 0.0, Mass.GRAM, change));
    }
  }

  static double ballast(MassStatement masses) {
    return masses.item("ballast").map(i -> i.mass().si()).orElse(0.0);
  }

  /** The masses with other ballast, a quarter of the diameter behind the tip of the nose. */
  static MassStatement ballasted(Aircraft aircraft, double ballast) {
    Length place = PartGeometry.ballastPlace(aircraft.airframe().fuselage());
    return aircraft.masses().with(MassItem.of("ballast", Mass.kilograms(ballast), Placement.at(place, Length.ZERO)));
  }

  /** What is found then that was not found before. */
  private String price(Lever lever, double to) {
    Set<String> come = new TreeSet<>(after(lever, to).orElse(Set.of()));
    come.removeAll(known);
    return come.isEmpty() ? "" : " (then look at: " + String.join(", ", come) + ")";
  }

  /** The nearest value that does it, without or with another finding in its place, rounded away from the present one. */
  private Optional<Double> amount(Lever lever, String subject, boolean free) {
    double bad = lever.now;
    for (int i = 1; i <= STEPS; i++) {
      double good = lever.now + (lever.limit - lever.now) * i / STEPS;
      if (mends(lever, good, subject, free)) {
        for (int k = 0; k < HALVINGS; k++) {
          double middle = 0.5 * (bad + good);
          if (mends(lever, middle, subject, free)) {
            good = middle;
          } else {
            bad = middle;
          }
        }
        double rounded = outward(lever, good);
        return mends(lever, rounded, subject, free) ? Optional.of(rounded) : Optional.empty();
      }
      bad = good;
    }
    return Optional.empty();
  }

  private static double outward(Lever lever, double value) {
    MathContext digits = lever.limit > lever.now ? OUTWARD : INWARD;
    BigDecimal shown = new BigDecimal(lever.unit.fromSi(value)).round(digits);
    // Nearly good as it is: still another number than the one that is shown for it.
    while (lever.unit.format(lever.now, 3).equals(lever.unit.format(lever.unit.toSi(shown.doubleValue()), 3))) {
      shown = lever.limit > lever.now ? shown.add(shown.ulp()) : shown.subtract(shown.ulp());
    }
    return lever.unit.toSi(shown.doubleValue());
  }

  private boolean mends(Lever lever, double to, String subject, boolean free) {
    return after(lever, to).filter(left -> !left.contains(subject) && (!free || known.containsAll(left))).isPresent();
  }

  /** What is found after a change; empty if it cannot be trimmed or is no aircraft, and then it is no remedy either. */
  private Optional<Set<String>> after(Lever lever, double to) {
    try {
      Variant variant = lever.change.apply(to);
      return Optional.of(
          subjects(FlightModes.of(variant.model, variant.aircraft, glide, lift).plainFindings(), variant));
    } catch (IllegalStateException | IllegalArgumentException | ConvergenceException e) {
      return Optional.empty();
    }
  }

  /** What is found of motions, static derivatives and margin: a remedy of one may not leave the range of another. */
  private static Set<String> subjects(List<Finding> findings, Variant variant) {
    Set<String> subjects = new HashSet<>();
    findings.forEach(f -> subjects.add(f.subject()));
    variant.model.staticMargin(variant.aircraft.centreOfGravity().x()).findings().forEach(f -> subjects.add(f.subject()));
    return subjects;
  }
}
