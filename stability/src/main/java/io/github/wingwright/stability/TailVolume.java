// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.Objects;

/**
 * Tail volume coefficients: how much tail at what arm, against the wing.
 *
 * <pre>{@code
 * V_h = S_h·l_h/(S·c̄)        V_v = S_v·l_v/(S·b)
 * }</pre>
 *
 * <p>Arms l_h and l_v run from the quarter point of the wing's mean aerodynamic chord to that of the tail, positive aft.
 * Some texts measure from the centre of gravity; {@link #armFromQuarterChord} converts their arms and
 * {@link #fromCentreOfGravity} their coefficients. The two differ by the wing's own moment arm (h − ¼)·c̄: small for the
 * coefficient, but as large as the whole static margin when the neutral point is worked out, so they are never mixed.
 *
 * <p>Each relation stands in three directions: coefficient from area and arm, area from coefficient and arm, arm from
 * coefficient and area. The reference length is c̄ for a horizontal and b for a vertical tail.
 */
public final class TailVolume {
  private static final Source DEFINITION = Source.DEFINITION;

  /** Horizontal tail volume coefficient from area and arm. */
  public static final Formula HORIZONTAL =
      Formula.named("horizontal tail volume coefficient")
          .gives("V_h")
          .as("S_h·l_h / (S·c̄)")
          .where("S_h", "horizontal tail area", Area.SQUARE_METRE, 1e-5, 200)
          .where("l_h", "horizontal tail arm", Length.METRE, 0.01, 60)
          .where("S", "wing reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .where("c̄", "mean aerodynamic chord", Length.METRE, 0.005, 20)
          .from(DEFINITION)
          .computedBy(TailVolume::coefficient);

  /** Horizontal tail area from coefficient and arm. */
  public static final Formula HORIZONTAL_AREA =
      Formula.named("horizontal tail area")
          .gives("S_h", Area.SQUARE_METRE)
          .as("V_h·S·c̄ / l_h")
          .where("V_h", "horizontal tail volume coefficient", 0.05, 2)
          .where("l_h", "horizontal tail arm", Length.METRE, 0.01, 60)
          .where("S", "wing reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .where("c̄", "mean aerodynamic chord", Length.METRE, 0.005, 20)
          .from(DEFINITION)
          .computedBy(TailVolume::area);

  /** Horizontal tail arm from coefficient and area. */
  public static final Formula HORIZONTAL_ARM =
      Formula.named("horizontal tail arm")
          .gives("l_h", Length.METRE)
          .as("V_h·S·c̄ / S_h")
          .where("V_h", "horizontal tail volume coefficient", 0.05, 2)
          .where("S_h", "horizontal tail area", Area.SQUARE_METRE, 1e-5, 200)
          .where("S", "wing reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .where("c̄", "mean aerodynamic chord", Length.METRE, 0.005, 20)
          .from(DEFINITION)
          .computedBy(TailVolume::arm);

  /** Vertical tail volume coefficient from area and arm. */
  public static final Formula VERTICAL =
      Formula.named("vertical tail volume coefficient")
          .gives("V_v")
          .as("S_v·l_v / (S·b)")
          .where("S_v", "vertical tail area", Area.SQUARE_METRE, 1e-5, 200)
          .where("l_v", "vertical tail arm", Length.METRE, 0.01, 60)
          .where("S", "wing reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .where("b", "wing span", Length.METRE, 0.05, 100)
          .from(DEFINITION)
          .computedBy(TailVolume::coefficient);

  /** Vertical tail area from coefficient and arm. */
  public static final Formula VERTICAL_AREA =
      Formula.named("vertical tail area")
          .gives("S_v", Area.SQUARE_METRE)
          .as("V_v·S·b / l_v")
          .where("V_v", "vertical tail volume coefficient", 0.005, 0.3)
          .where("l_v", "vertical tail arm", Length.METRE, 0.01, 60)
          .where("S", "wing reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .where("b", "wing span", Length.METRE, 0.05, 100)
          .from(DEFINITION)
          .computedBy(TailVolume::area);

  /** Vertical tail arm from coefficient and area. */
  public static final Formula VERTICAL_ARM =
      Formula.named("vertical tail arm")
          .gives("l_v", Length.METRE)
          .as("V_v·S·b / S_v")
          .where("V_v", "vertical tail volume coefficient", 0.005, 0.3)
          .where("S_v", "vertical tail area", Area.SQUARE_METRE, 1e-5, 200)
          .where("S", "wing reference area", Area.SQUARE_METRE, 1e-4, 1000)
          .where("b", "wing span", Length.METRE, 0.05, 100)
          .from(DEFINITION)
          .computedBy(TailVolume::arm);

  private TailVolume() {}

  /**
   * Tail volume coefficient.
   *
   * <p>Example: a light twin with S_h = 30.7307 ft², l_h = 15 ft, S = 134 ft², c̄ = 4.3 ft has V_h = 0.8.
   *
   * @param area tail area S_h or S_v [m²]
   * @param arm tail arm l_h or l_v [m], from quarter chord to quarter chord
   * @param wingArea wing reference area S [m²], positive
   * @param referenceLength c̄ for a horizontal, b for a vertical tail [m], positive
   * @return V_h or V_v
   */
  public static double coefficient(double area, double arm, double wingArea, double referenceLength) {
    return area * arm / (wingArea * referenceLength);
  }

  /**
   * Tail area from the coefficient.
   *
   * <p>Example: V_v = 0.065 at l_v = 17 ft with S = 134 ft² and b = 33 ft takes S_v = 16.9076 ft².
   *
   * @param coefficient V_h or V_v
   * @param arm tail arm [m], positive
   * @param wingArea wing reference area S [m²]
   * @param referenceLength c̄ or b [m]
   * @return S_h or S_v [m²]
   */
  public static double area(double coefficient, double arm, double wingArea, double referenceLength) {
    return coefficient * wingArea * referenceLength / arm;
  }

  /**
   * Tail arm from the coefficient.
   *
   * @param coefficient V_h or V_v
   * @param area tail area [m²], positive
   * @param wingArea wing reference area S [m²]
   * @param referenceLength c̄ or b [m]
   * @return l_h or l_v [m]
   */
  public static double arm(double coefficient, double area, double wingArea, double referenceLength) {
    return coefficient * wingArea * referenceLength / area;
  }

  /**
   * Tail arm from the wing's quarter chord, for a source that measures from the centre of gravity.
   *
   * <pre>{@code l = l_cg + (x_cg − x_c/4)}</pre>
   *
   * @param armFromCentreOfGravity distance l_cg from the centre of gravity to the tail's quarter chord [m]
   * @param centreOfGravityBehindQuarterChord x_cg − x_c/4 [m], positive if the centre of gravity lies aft
   * @return l [m]
   */
  public static double armFromQuarterChord(double armFromCentreOfGravity, double centreOfGravityBehindQuarterChord) {
    return armFromCentreOfGravity + centreOfGravityBehindQuarterChord;
  }

  /**
   * Tail volume coefficient on the arm from the wing's quarter chord, for a source that measures from the centre of
   * gravity.
   *
   * <pre>{@code V_h = V_cg + (S_h/S)·(h − ¼)}</pre>
   *
   * @param coefficient V_cg, on the arm from the centre of gravity
   * @param areaRatio tail area over wing area S_h/S
   * @param centreOfGravity place h of the centre of gravity, fraction of c̄ behind its leading edge
   * @return V_h
   */
  public static double fromCentreOfGravity(double coefficient, double areaRatio, double centreOfGravity) {
    return coefficient + areaRatio * (centreOfGravity - 0.25);
  }

  /**
   * The coefficient of a tail on an aircraft.
   *
   * @param tail the tail
   * @param wing the wing
   * @return V_h or V_v, by the role of the tail; negative for a surface ahead of the wing
   */
  public static double of(Tail tail, Wing wing) {
    Objects.requireNonNull(tail, "tail");
    Objects.requireNonNull(wing, "wing");
    return coefficient(
        tail.planform().area().si(), tail.armFrom(wing).si(), wing.planform().area().si(), reference(tail.role(), wing));
  }

  /**
   * The tail area that a coefficient asks for.
   *
   * @param role horizontal or vertical tail
   * @param coefficient V_h or V_v, positive
   * @param arm tail arm, positive
   * @param wing the wing
   * @return S_h or S_v
   */
  public static Area area(Tail.Role role, double coefficient, Length arm, Wing wing) {
    Objects.requireNonNull(wing, "wing");
    Objects.requireNonNull(role, "role");
    Door.positive(coefficient, "tail volume coefficient");
    Door.positive(arm, "tail arm");
    return Area.squareMetres(area(coefficient, arm.si(), wing.planform().area().si(), reference(role, wing)));
  }

  /**
   * The tail arm that a coefficient asks for.
   *
   * @param role horizontal or vertical tail
   * @param coefficient V_h or V_v, positive
   * @param area tail area, positive
   * @param wing the wing
   * @return l_h or l_v
   */
  public static Length arm(Tail.Role role, double coefficient, Area area, Wing wing) {
    Objects.requireNonNull(wing, "wing");
    Objects.requireNonNull(role, "role");
    Door.positive(coefficient, "tail volume coefficient");
    Door.positive(area, "tail area");
    return Length.metres(arm(coefficient, area.si(), wing.planform().area().si(), reference(role, wing)));
  }

  /**
   * Horizontal tail volume coefficient of an airframe, of a V-tail by projection.
   *
   * @param airframe the airframe
   * @return V_h, zero without a tail that works in pitch; negative for a foreplane
   */
  public static double horizontalOf(Airframe airframe) {
    Objects.requireNonNull(airframe, "airframe");
    Wing wing = airframe.wing();
    return airframe
        .pitchTail()
        .map(t -> share(t, true) * t.armFrom(wing).si() / reference(Tail.Role.HORIZONTAL, wing) / wing.planform().area().si())
        .orElse(0.0);
  }

  /**
   * Vertical tail volume coefficient of an airframe: all fins, and a V-tail by projection.
   *
   * @param airframe the airframe
   * @return V_v, zero without a tail that works in yaw
   */
  public static double verticalOf(Airframe airframe) {
    Objects.requireNonNull(airframe, "airframe");
    Wing wing = airframe.wing();
    double sum = 0.0;
    for (Tail t : airframe.yawTails()) {
      sum += share(t, false) * t.armFrom(wing).si();
    }
    return sum / (wing.planform().area().si() * reference(Tail.Role.VERTICAL, wing));
  }

  /** Area that works one way: of a V-tail S_V·cos²Γ in pitch and S_V·sin²Γ in yaw. */
  private static double share(Tail tail, boolean inPitch) {
    if (tail.role() != Tail.Role.V) {
      return tail.planform().area().si();
    }
    double angle = tail.planform().equivalentDihedral().si();
    double part = inPitch ? Math.cos(angle) : Math.sin(angle);
    return tail.areaInOwnPlane().si() * part * part;
  }

  /** A V-tail has two volume coefficients, so that a question for one of them must say which. */
  static void refuseV(Tail.Role role) {
    if (role == Tail.Role.V) {
      throw new IllegalArgumentException(
          "role must be horizontal or vertical tail for a volume coefficient, was V-tail: it has one of each,"
              + " TailVolume.horizontalOf(airframe) and verticalOf(airframe)");
    }
  }

  private static double reference(Tail.Role role, Wing wing) {
    refuseV(role);
    return role == Tail.Role.HORIZONTAL
        ? wing.planform().meanAerodynamicChord().si()
        : wing.planform().span().si();
  }
}
