// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.Objects;

/**
 * Things that stand in the flow, with their drag coefficients on the frontal area.
 *
 * <p>A thing that is lower than the layer it stands in feels less than the free stream: see {@link #shelterTurbulent} and
 * {@link #shelterLaminar}, the mean dynamic pressure over its height as a part of the free stream's.
 */
public enum Protuberance {
  /** A flat plate across the flow. */
  FLAT_PLATE(1.28, 1.28),
  /** A sphere with a laminar layer, Re below some 3·10⁵. */
  SPHERE(0.3, 0.5),
  /** A sphere whose layer is turbulent, Re above some 3·10⁵. */
  TURBULENT_SPHERE(0.1, 0.1),
  /** A round-nosed body with a blunt back. */
  BULLET(0.3, 0.3),
  /** A faired windshield. */
  FAIRED_WINDSHIELD(0.07, 0.07),
  /** A windshield with sharp edges. */
  SHARP_WINDSHIELD(0.15, 0.15),
  /** An open cockpit, on the area of its windscreen. */
  OPEN_COCKPIT(0.5, 0.5),
  /** A wheel with its tyre. */
  WHEEL(0.25, 0.25),
  /** The rear one of two wheels in tandem. */
  SECOND_WHEEL(0.15, 0.15),
  /** A streamlined wheel with its tyre. */
  STREAMLINED_WHEEL(0.18, 0.18),
  /** A wheel in a fairing. */
  FAIRED_WHEEL(0.13, 0.13),
  /** A streamlined strut, 1/6 to 1/3 as thick as it is deep. */
  STREAMLINED_STRUT(0.05, 0.05),
  /** A round wire or strut, Re below 3·10⁵ on its diameter: every wire of a model. */
  ROUND_WIRE(1.17, 1.17),
  /** A round strut whose layer is turbulent, Re above 3·10⁵. */
  TURBULENT_STRUT(0.3, 0.3),
  /** A leg of flat spring. */
  SPRING_LEG(1.4, 1.4),
  /** A fork or an irregular fitting. */
  FITTING(1.0, 1.4);

  /** Shelter in a turbulent layer. */
  public static final Formula SHELTER_TURBULENT =
      Formula.named("mean dynamic pressure in a turbulent layer over that outside")
          .gives("q_m/q")
          .as("7/9·(h/δ)^(2/7)")
          .where("h", "height of the thing, at most δ", Length.METRE, 1e-5, 0.01)
          .where("δ", "thickness of the layer", Length.METRE, 0.01, 0.1)
          .from(Source.library("mean of (y/δ)^(2/7) over the height, from the seventh-root profile"))
          .computedBy(Protuberance::shelterTurbulent);

  /** Thickness of a turbulent layer. */
  public static final Formula THICKNESS_TURBULENT =
      Formula.named("thickness of a turbulent layer")
          .gives("δ", Length.METRE)
          .as("0.37·x / Re^0.2")
          .where("x", "distance run", Length.METRE, 1e-3, 100)
          .where("Re", "Reynolds number on the distance", 1e5, 1e7)
          .from(Sources.FIFTH_ROOT)
          .computedBy(Protuberance::turbulentThickness);

  /** Thickness of a laminar layer. */
  public static final Formula THICKNESS_LAMINAR =
      Formula.named("thickness of a laminar layer")
          .gives("δ", Length.METRE)
          .as("5.2·x / √(Re)")
          .where("x", "distance run", Length.METRE, 1e-4, 10)
          .where("Re", "Reynolds number on the distance", 1e3, 3e6)
          .from(Sources.BLASIUS)
          .computedBy(Protuberance::laminarThickness);

  /** Below it, on the width, viscosity rules (from memory). */
  private static final double CREEPING = 1000.0;

  /** Above it, on the diameter, the layer of a round thing turns turbulent. */
  private static final double TURNS_TURBULENT = 3e5;

  private final double least;
  private final double greatest;

  Protuberance(double least, double greatest) {
    this.least = least;
    this.greatest = greatest;
  }

  /**
   * The drag coefficient on the frontal area, with its range.
   *
   * @return C_D
   */
  public Band band() {
    return new Band(least, coefficient(), greatest);
  }

  /**
   * The likely drag coefficient on the frontal area.
   *
   * @return the middle of the range
   */
  public double coefficient() {
    return 0.5 * (least + greatest);
  }

  /**
   * Where it comes from.
   *
   * @return the source
   */
  public Source source() {
    return Sources.raymer("table 12.6");
  }

  /**
   * Reynolds numbers, on its width across the flow, at which the coefficient holds. Round things drag less where their own
   * layer turns turbulent, and more in creeping flow; things with edges hardly care.
   *
   * @return 1,000 to 300,000 for a sphere and a round wire, from there up for those with a turbulent layer, else from 1,000 up
   */
  public Interval reynoldsNumbers() {
    return switch (this) {
      case SPHERE, ROUND_WIRE -> Interval.between(CREEPING, TURNS_TURBULENT);
      case TURBULENT_SPHERE, TURBULENT_STRUT -> Interval.atLeast(TURNS_TURBULENT);
      default -> Interval.atLeast(CREEPING);
    };
  }

  /**
   * The thing as a component.
   *
   * @param name what it is
   * @param frontalArea its frontal area
   * @return the component; its width across the flow is taken as that of a circle of the area
   */
  public ItemDrag of(String name, Area frontalArea) {
    Objects.requireNonNull(name, "name");
    Door.notNegative(frontalArea, "frontal area of " + name);
    return of(name, frontalArea, Length.metres(Math.sqrt(4.0 * frontalArea.si() / Math.PI)));
  }

  /**
   * The thing as a component whose width is known, so that its Reynolds number is.
   *
   * @param name what it is
   * @param frontalArea its frontal area
   * @param width its width across the flow, such as the diameter of a wire
   * @return the component
   */
  public ItemDrag of(String name, Area frontalArea, Length width) {
    Objects.requireNonNull(name, "name");
    Door.notNegative(frontalArea, "frontal area of " + name);
    Door.notNegative(width, "width of " + name);
    return ItemDrag.protuberance(name, coefficient(), frontalArea, source(), width, reynoldsNumbers());
  }

  /**
   * The thing as a component, standing in a turbulent layer.
   *
   * @param name what it is
   * @param frontalArea its frontal area
   * @param height its height, positive
   * @param layer thickness of the layer there, positive
   * @return the component
   */
  public ItemDrag sheltered(String name, Area frontalArea, Length height, Length layer) {
    Objects.requireNonNull(name, "name");
    Door.notNegative(frontalArea, "frontal area of " + name);
    Door.positive(height, "height of " + name);
    Door.positive(layer, "thickness of the layer at " + name);
    double shelter = height.si() < layer.si() ? shelterTurbulent(height.si(), layer.si()) : 1.0;
    return ItemDrag.protuberance(name, shelter * coefficient(), frontalArea, source(), height, reynoldsNumbers());
  }

  /**
   * Mean dynamic pressure over the height of a thing in a turbulent layer, as a part of that outside.
   *
   * <pre>{@code u/V = (y/δ)^(1/7)        q_m/q = (7/9)·(h/δ)^(2/7)        h ≤ δ}</pre>
   *
   * <p>Example: h = δ gives 0.777778; h = δ/10 gives 0.402848.
   *
   * @param height h [m], positive, at most δ
   * @param thickness δ [m], positive
   * @return q_m/q
   */
  public static double shelterTurbulent(double height, double thickness) {
    return 7.0 / 9.0 * Math.pow(height / thickness, 2.0 / 7.0);
  }

  /**
   * Mean dynamic pressure over the height of a thing close to the wall in a laminar layer, whose profile is straight there.
   *
   * <pre>{@code u/V = 0.33206·(y/x)·√Re_x        q_m/q = (1/3)·(u_h/V)²        u_h ≤ V/2}</pre>
   *
   * <p>Example: h = 0.1 mm at x = 10 mm, Re_x = 4000 gives 0.0147.
   *
   * @param height h [m], positive
   * @param distance x [m], positive
   * @param reynolds Reynolds number on the distance
   * @return q_m/q
   */
  public static double shelterLaminar(double height, double distance, double reynolds) {
    double top = 0.332057 * height / distance * Math.sqrt(reynolds);
    return top * top / 3.0;
  }

  /**
   * Thickness of a turbulent layer on a plate.
   *
   * <pre>{@code δ = 0.37·x/Re^0.2}</pre>
   *
   * <p>Example: x = 0.05 m, Re = 410844 gives 1.39456 mm.
   *
   * @param distance x [m], positive
   * @param reynolds Reynolds number on the distance
   * @return δ [m]
   */
  public static double turbulentThickness(double distance, double reynolds) {
    return 0.37 * distance / Math.pow(reynolds, 0.2);
  }

  /**
   * Thickness of a laminar layer on a plate.
   *
   * <pre>{@code δ = 5.2·x/√Re}</pre>
   *
   * <p>Example: x = 0.05 m, Re = 410844 gives 0.405634 mm.
   *
   * @param distance x [m], positive
   * @param reynolds Reynolds number on the distance
   * @return δ [m]
   */
  public static double laminarThickness(double distance, double reynolds) {
    return 5.2 * distance / Math.sqrt(reynolds);
  }
}
