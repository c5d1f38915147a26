// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.drawing.RootPicture;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.MomentOfInertia;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Time;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import io.github.wingwright.stability.PrincipalAxes;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.FlightModes;
import io.github.wingwright.stability.dynamics.BodyInertia;
import io.github.wingwright.stability.dynamics.FlyingQualities;
import io.github.wingwright.stability.dynamics.LateralForces;
import io.github.wingwright.stability.dynamics.LongitudinalDerivatives;
import io.github.wingwright.stability.dynamics.LongitudinalForces;
import io.github.wingwright.stability.dynamics.Mode;
import io.github.wingwright.stability.dynamics.ModeKind;
import io.github.wingwright.stability.dynamics.SteadyFlight;
import io.github.wingwright.stability.dynamics.WingApparentMass;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The natural motions: named, mapped, and held against the short formulas and against what such models do. */
final class ModesChapter {
  private static final Set<ModeKind> ACROSS =
      Set.of(
          ModeKind.ROLL,
          ModeKind.SPIRAL,
          ModeKind.DUTCH_ROLL,
          ModeKind.YAW_SUBSIDENCE,
          ModeKind.YAW_DIVERGENCE,
          ModeKind.ROLL_SPIRAL_OSCILLATION);

  private final Design design;
  private final BriefUnits units;
  private final FlightModes modes;

  ModesChapter(Design design, BriefUnits units) {
    this.design = design;
    this.units = units;
    this.modes = design.modes();
  }

  Chapter chapter() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Block.Paragraph(
            "Disturbed a little in its glide at "
                + modes.glide().speed().format(units.speed(), 3)
                + ", the glider moves in these ways, each dying out or growing by itself. ω_n is the undamped natural frequency, ζ the"
                + " damping ratio."));
    blocks.add(
        new Block.Table(
            List.of("motion", "root, 1/s", "ω_n, rad/s", "ζ", "period", "half or double"), rows()));
    blocks.add(
        new Block.Picture(
            map("In the plane of symmetry", false),
            "Left of the axis a motion dies out. Full: the roots of the equations. Hollow: the classical approximations, short period at"
                + " constant speed and phugoid at constant angle of attack."));
    blocks.add(
        new Block.Picture(
            map("Across the plane of symmetry", true),
            "Hollow: roll alone, Dutch roll without roll, and the spiral from the last two terms of the polynomial."));
    blocks.add(
        new Block.Paragraph(
            "Beside each other: the equations, the approximations, the glider without the air that its wing carries along, and the derivatives of the lattice instead of the handbook's:"));
    blocks.add(
        new Block.Table(
            List.of("motion", "equations", "approximation", "without apparent mass", "by lattice"),
            beside()));
    blocks.addAll(explained());
    blocks.add(
        new Block.Paragraph("Inertia about the centre of gravity, in axes along the flight path:"));
    blocks.add(
        new Block.Table(List.of("about", "of the parts", "of the air carried along"), inertia()));
    blocks.add(new Block.Paragraph("What such models keep to:"));
    blocks.add(new Block.Table(List.of("measure", "range", "source"), guidelines()));
    blocks.add(new Block.Findings(modes.findings()));
    blocks.add(new Block.Steps(modes.workings().computedBeyond(design.workings())));
    return new Chapter("Natural motions", blocks);
  }

  private List<List<String>> rows() {
    List<List<String>> rows = new ArrayList<>();
    for (FlightModes.Row row : modes.rows()) {
      Mode m = row.mode();
      rows.add(
          List.of(
              m.kind().words(),
              root(m),
              number(m.naturalFrequency().radiansPerSecond(), 3),
              number(m.dampingRatio(), 2),
              m.period().map(ModesChapter::seconds).orElse("–"),
              change(m)));
    }
    return rows;
  }

  private static String root(Mode m) {
    String real = number(m.real(), 3);
    return m.isOscillatory() ? real + " ± " + number(m.imaginary(), 3) + " i" : real;
  }

  private static String change(Mode m) {
    return m.timeToHalf()
        .map(t -> "halves in " + seconds(t))
        .or(() -> m.timeToDouble().map(t -> "doubles in " + seconds(t)))
        .orElse("stays");
  }

  private static String seconds(Time time) {
    return time.format(Time.SECOND, 2);
  }

  private List<List<String>> beside() {
    List<Mode> lattice = modes.by(design.lattice());
    List<List<String>> rows = new ArrayList<>();
    for (FlightModes.Row row : modes.rows()) {
      ModeKind kind = row.mode().kind();
      rows.add(
          List.of(
              kind.words(),
              brief(Optional.of(row.mode())),
              brief(row.approximation()),
              brief(row.withoutApparentMass()),
              brief(lattice.stream().filter(m -> m.kind() == kind).findFirst())));
    }
    return rows;
  }

  /** A motion in a few words: period and damping of one that swings, time to half or double of one that creeps. */
  private static String brief(Optional<Mode> mode) {
    if (mode.isEmpty()) {
      return "–";
    }
    Mode m = mode.get();
    return m.period()
        .map(t -> seconds(t) + ", ζ " + number(m.dampingRatio(), 2))
        .orElseGet(() -> change(m));
  }

  private String map(String title, boolean across) {
    List<RootPicture.Root> roots = new ArrayList<>();
    for (FlightModes.Row row : modes.rows()) {
      Mode m = row.mode();
      if (ACROSS.contains(m.kind()) == across) {
        roots.add(new RootPicture.Root(m.kind().words(), m.real(), m.imaginary(), false));
        row.approximation()
            .ifPresent(a -> roots.add(new RootPicture.Root("", a.real(), a.imaginary(), true)));
      }
    }
    return new RootPicture(title, roots).draw().element();
  }

  private List<Block> explained() {
    WingApparentMass air = modes.apparentMass();
    BodyInertia body = modes.body();
    List<String> points = new ArrayList<>();
    points.add(
        String.format(
            Locale.ROOT,
            "When it heaves, the wing moves %s of air along, %.1f %% of the glider's mass; in roll that air has %.0f %% of its inertia.",
            Mass.kilograms(air.heave()).format(units.mass(), 2),
            100.0 * air.heave() / body.mass(),
            100.0 * air.rollInertia() / body.roll()));
    double flight = design.number("glide.time_s").value();
    modes
        .find(ModeKind.PHUGOID)
        .flatMap(Mode::period)
        .ifPresent(
            t ->
                points.add(
                    String.format(
                        Locale.ROOT,
                        "A glide from the launch height lasts %.2g s, the phugoid swings once in %.2g s: %s",
                        flight,
                        t.seconds(),
                        flight < t.seconds()
                            ? "the flight is over before it has swung once. Its damping matters less than how the glider is launched: level, and at its own speed."
                            : "it swings during the flight, and its damping can be seen.")));
    Optional<Mode> spiral = modes.find(ModeKind.SPIRAL);
    Optional<Mode> level = level().filter(m -> spiral.isPresent());
    level.ifPresent(
        m ->
            points.add(
                String.format(
                    Locale.ROOT,
                    "The short formula of the spiral (%s) is that of level flight, where the equations give \"%s\". On a path %.1f° down a"
                        + " turn takes bank off by itself (the term r·tan θ₀ of the equations): \"%s\". Gliding steadies a spiral,"
                        + " climbing unsettles it. It is a small difference of large products either way: do not believe it to the second.",
                    formula(ModeKind.SPIRAL),
                    change(m),
                    modes.glide().angle().degrees(),
                    spiral.map(ModesChapter::change).orElse(""))));
    double damped = modes.longitudinal().entry(1, 1) * modes.longitudinal().entry(2, 2);
    double stiff = -modes.flight().speed() * modes.longitudinal().entry(2, 1);
    if (damped > 0.0 && stiff > 0.0) {
      points.add(
          String.format(
              Locale.ROOT,
              "The phugoid swings more slowly than Lanchester's %.2g s: pitch damping and heave damping together, Z_w·M_q, are %.0f %%"
                  + " of the stiffness of the short period, and by that part the angle of attack does not stay constant.",
              Math.sqrt(2.0) * Math.PI * modes.flight().speed() / modes.flight().gravity(),
              100.0 * damped / (damped + stiff)));
    }
    modes
        .find(ModeKind.PHUGOID)
        .flatMap(m -> constantDrag())
        .ifPresent(
            m ->
                points.add(
                    String.format(
                        Locale.ROOT,
                        "The drag coefficient of a small model falls with speed, as the Reynolds number grows. That takes damping from the"
                            + " phugoid, which the formula ζ = 1/(√2·L/D) does not know: with a constant coefficient ζ would be %.2g.",
                        m.dampingRatio())));
    return List.of(new Block.Points(points));
  }

  private String formula(ModeKind kind) {
    return modes.rows().stream()
        .filter(row -> row.mode().kind() == kind)
        .findFirst()
        .flatMap(FlightModes.Row::approximation)
        .map(ModesChapter::change)
        .orElse("none");
  }

  /** The spiral of the same aircraft at the same speed in level flight. */
  private Optional<Mode> level() {
    SteadyFlight f = modes.flight();
    SteadyFlight flat =
        new SteadyFlight(f.speed(), f.density(), 0.0, f.area(), f.chord(), f.span(), f.gravity());
    return LateralForces.of(flat, modes.lateralDerivatives())
        .stateMatrix(flat, modes.apparentMass().addedTo(modes.body()))
        .modes()
        .find(ModeKind.SPIRAL);
  }

  /** The phugoid if the drag coefficient did not change with speed. */
  private Optional<Mode> constantDrag() {
    LongitudinalDerivatives d = modes.longitudinalDerivatives();
    LongitudinalDerivatives constant =
        new LongitudinalDerivatives(
            0.0,
            d.zSpeed(),
            d.mSpeed(),
            d.xAngle(),
            d.zAngle(),
            d.mAngle(),
            d.zPitchRate(),
            d.mPitchRate(),
            d.zAngleRate(),
            d.mAngleRate());
    return LongitudinalForces.of(modes.flight(), modes.body().mass(), constant)
        .with(modes.apparentMass())
        .stateMatrix(modes.flight(), modes.apparentMass().addedTo(modes.body()))
        .modes()
        .find(ModeKind.PHUGOID);
  }

  private List<List<String>> inertia() {
    BodyInertia body = modes.body();
    WingApparentMass air = modes.apparentMass();
    double lean = PrincipalAxes.of(design.aircraft().inertia()).inclination().degrees();
    return List.of(
        List.of("roll axis", inertia(body.roll()), inertia(air.rollInertia())),
        List.of("pitch axis", inertia(body.pitch()), inertia(air.pitchInertia())),
        List.of("yaw axis", inertia(body.yaw()), "–"),
        List.of("product of roll and yaw", inertia(body.product()), "–"),
        List.of("principal roll axis against the body's", number(lean, 2) + "°", "–"));
  }

  private static String inertia(double si) {
    return MomentOfInertia.GRAM_SQUARE_CENTIMETRE.format(si, 3);
  }

  private List<List<String>> guidelines() {
    FlyingQualities qualities =
        design.brief().aircraftClass().isModel()
            ? FlyingQualities.freeFlightModel()
            : FlyingQualities.lightAeroplane();
    List<List<String>> rows = new ArrayList<>();
    for (Guideline one : qualities.guidelines()) {
      rows.add(List.of(one.name(), one.range().format(one.unit()), one.source().cite()));
    }
    return rows;
  }

  private static String number(double value, int digits) {
    return NamedUnit.NUMBER.format(value, digits);
  }
}
