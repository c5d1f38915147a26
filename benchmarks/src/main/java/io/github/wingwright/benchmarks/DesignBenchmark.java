// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.benchmarks;

import static io.github.wingwright.core.quantity.Length.metres;
import static io.github.wingwright.core.quantity.Length.millimetres;

import io.github.wingwright.airfoils.ComposedSection;
import io.github.wingwright.airfoils.Naca4;
import io.github.wingwright.core.aerodynamics.EstimatedPolar;
import io.github.wingwright.core.aerodynamics.LiftingLine;
import io.github.wingwright.core.atmosphere.Atmosphere;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.AirfoilSection;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.mass.Materials;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.sizing.Considerations;
import io.github.wingwright.core.sizing.FuselageSizing;
import io.github.wingwright.core.sizing.WingSizing;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.DesignBrief;
import io.github.wingwright.stability.design.GliderFamily;
import io.github.wingwright.stability.design.QuickDesign;
import io.github.wingwright.stability.design.QuickEvaluation;
import io.github.wingwright.stability.design.SizingLoop;
import io.github.wingwright.stability.design.TailBrief;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A complete quick evaluation of a glider against the same arithmetic written by hand, and the full design beside them.
 *
 * <p>The setup holds the two against each other: they must give the same numbers to 1e-9. Each call evaluates another
 * glider, so that nothing can be kept from one to the next.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 8, time = 1)
@Fork(3)
@SuppressWarnings("NullAway.Init") // JMH calls setUp before anything else
public class DesignBenchmark {
  private static final int GLIDERS = 64;

  /** Mass in the nose [g]: with the lighter one the glider needs ballast, and the search for its station is longer. */
  @Param({"12", "0.5"})
  double nose;

  private final double[] span = new double[GLIDERS];
  private int next;
  private SizingLoop loop = SizingLoop.of(DesignBrief.named("none"));
  private GliderFamily family;
  private QuickDesign objects;
  private HandWrittenGlider hand;

  @Setup
  public void setUp() {
    AirfoilSection section = Naca4.parse("4406");
    AirfoilSection plate = ComposedSection.plate(0.02, 0.0);
    TailBrief horizontal = new TailBrief(0.5, 3.5, 0.8);
    TailBrief vertical = new TailBrief(0.035, 1.5, 0.7);
    DesignBrief brief =
        DesignBrief.named("benchmark")
            .air(Atmosphere.standard().at(metres(100)))
            .thrown(Speed.metresPerSecond(7), metres(1.6))
            .wing(
                WingSizing.forSpan(millimetres(410))
                    .aspectRatio(5.5)
                    .taperRatio(0.7)
                    .section(section)
                    .dihedral(Angle.degrees(8)))
            .wingPolar(EstimatedPolar.of(section))
            .fuselage(
                wing ->
                    FuselageSizing.of(BodyShape.capsule())
                        .considering(Considerations.finenessWithin(5, 20, Source.COMMON_PRACTICE))
                        .length(millimetres(300))
                        .diameter(millimetres(22)))
            .tails(plate, EstimatedPolar.of(plate), horizontal, vertical)
            .material(Materials.FOAMING_PLA)
            .carrying(
                MassItem.of("nose cap", Mass.grams(nose), Placement.at(millimetres(5), Length.ZERO)));
    loop = SizingLoop.of(brief);
    Design design = loop.solve();
    family = GliderFamily.of(design);
    objects = new QuickDesign(brief, design.sizedWing().value(), design.sizedFuselage().value());
    hand = byHand(brief, section, plate, horizontal, vertical);
    for (int i = 0; i < GLIDERS; i++) {
      span[i] = 0.38 + 0.001 * i;
      compare(span[i]);
    }
  }

  private HandWrittenGlider byHand(
      DesignBrief brief, AirfoilSection section, AirfoilSection plate, TailBrief h, TailBrief v) {
    HandWrittenGlider g = new HandWrittenGlider();
    g.rho = brief.air().density().kilogramsPerCubicMetre();
    g.nu = brief.air().kinematicViscosity().si();
    g.taper = 0.7;
    g.k = section.area();
    strips(g, section);
    g.thickness = section.maximumThickness();
    g.camber = section.maximumCamber();
    g.designLift = designLift(section);
    g.material = brief.material().density().kilogramsPerCubicMetre();
    g.wingWall = brief.wingShell().wallThickness().metres();
    g.bodyWall = brief.bodyShell().wallThickness().metres();
    g.line = brief.lineWidth().metres();
    g.slotWidth = brief.tailThickness().metres() + 0.2e-3;
    g.plate = g.material * brief.tailThickness().metres();
    g.carriedMass = 1e-3 * nose;
    g.carriedMoment = 1e-3 * nose * 5e-3;
    g.margin = brief.staticMargin();
    g.vh = h.volumeCoefficient();
    g.ah = h.aspectRatio();
    g.lh = h.taperRatio();
    g.vv = v.volumeCoefficient();
    g.av = v.aspectRatio();
    g.lv = v.taperRatio();
    g.tailOutline = plate.perimeter();
    double t = plate.maximumThickness();
    g.tailForm = 1 + 2 * t + 60 * t * t * t * t;
    g.series = series(g.taper);
    return g;
  }

  /** The section in 64 strips: what a wall takes of the height of each. */
  private static void strips(HandWrittenGlider g, AirfoilSection section) {
    int n = 64;
    g.edgeThickness = section.trailingEdgeThickness();
    g.lean = Math.tan(Math.toRadians(8));
    g.place = new double[n];
    g.width = new double[n];
    g.height = new double[n];
    g.skin = new double[n];
    for (int i = 0; i < n; i++) {
      double from = 1 - Math.cos(0.5 * Math.PI * i / n);
      double to = 1 - Math.cos(0.5 * Math.PI * (i + 1) / n);
      double x = 0.5 * (from + to);
      g.place[i] = x;
      g.width[i] = to - from;
      g.height[i] = (section.thickness(from) + 4 * section.thickness(x) + section.thickness(to)) / 6;
      double half = 0.5 * (section.thickness(to) - section.thickness(from)) / (to - from);
      double camber = section.camberSlope(x);
      double square = 1 + g.lean * g.lean;
      g.skin[i] = Math.sqrt(square + Math.pow(camber + half, 2)) + Math.sqrt(square + Math.pow(camber - half, 2));
    }
    double[] x = new double[401];
    double[] y = new double[401];
    section.outline(x, y);
    for (double low : y) {
      g.lowest = Math.min(g.lowest, low);
    }
  }

  /** π times the first cosine coefficient of the slope of the mean line. */
  private static double designLift(AirfoilSection section) {
    int n = 200_000;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      double cosine = Math.cos(Math.PI * (i + 0.5) / n);
      sum += section.camberSlope(0.5 * (1 - cosine)) * cosine;
    }
    return 2 * Math.PI * sum / n;
  }

  /** The loss of the lifting line as a Chebyshev series over the logarithm of the aspect ratio, 1 to 60. */
  private static double[] series(double taper) {
    int n = 32;
    double[] coefficient = new double[n];
    for (int i = 0; i < n; i++) {
      double angle = Math.PI * (i + 0.5) / n;
      double aspectRatio = Math.exp(0.5 * Math.log(60.0) * (1 + Math.cos(angle)));
      double value = LiftingLine.tapered(1.0, aspectRatio, taper).solve().inducedDragFactor();
      for (int j = 0; j < n; j++) {
        coefficient[j] += (j == 0 ? 1.0 : 2.0) / n * value * Math.cos(j * angle);
      }
    }
    return coefficient;
  }

  private void compare(double b) {
    QuickEvaluation quick = family.evaluate(b, 5.5, 0.3, 0.022);
    hand.evaluate(b, 5.5, 0.3, 0.022);
    same("mass", quick.mass(), hand.mass);
    same("ballast", quick.ballast(), hand.ballast);
    same("station", quick.station(), hand.station);
    same("centre of gravity", quick.centreOfGravity(), hand.xcg);
    same("neutral point", quick.neutralPoint(), hand.xnp);
    same("stall speed", quick.stallSpeed(), hand.stall);
    same("lift to drag", quick.bestLiftToDrag(), hand.bestLiftToDrag);
    same("best speed", quick.bestGlideSpeed(), hand.bestSpeed);
    same("sink rate", quick.leastSinkRate(), hand.sinkRate);
  }

  private static void same(String name, double library, double byHand) {
    if (!(Math.abs(library - byHand) <= 1e-9 * Math.abs(library))) {
      throw new IllegalStateException(name + " differs: library " + library + ", by hand " + byHand);
    }
  }

  private double nextSpan() {
    next = (next + 1) % GLIDERS;
    return span[next];
  }

  /** The complete quick evaluation of a study's inner loop. */
  @Benchmark
  public QuickEvaluation library() {
    return family.evaluate(nextSpan(), 5.5, 0.3, 0.022);
  }

  /** The same arithmetic without the library. */
  @Benchmark
  public double byHand() {
    hand.evaluate(nextSpan(), 5.5, 0.3, 0.022);
    return hand.sinkRate;
  }

  /** The complete quick evaluation of one wing and fuselage, lifting line solved. */
  @Benchmark
  public QuickEvaluation ofObjects() {
    return objects.evaluate();
  }

  /** The full design with all its workings and findings. */
  @Benchmark
  public Design fullDesign() {
    return loop.solve();
  }
}
