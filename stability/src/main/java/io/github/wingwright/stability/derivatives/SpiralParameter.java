// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.derivatives;

import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Guideline;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.NamedUnit;

/**
 * The spiral parameter of models: dihedral and tail arm against lift.
 *
 * <pre>{@code
 * B = (l_v/b)·(Γ_degrees/C_L)
 * }</pre>
 * Above 5 the spiral is stable, near 5 neutral, below 5 it tightens. Γ is the equivalent dihedral in degrees, C_L the lift
 * coefficient of the turn. The rule comes from radio-controlled models that are flown with rudder and elevator.
 *
 * <p>Source: M. Drela, contribution on dihedral to a soaring mailing list: Γ = 5·C_L·b/l_v.
 */
public final class SpiralParameter {
    private static final Source RULE =
            Source.published("M. Drela, contribution on equivalent dihedral to a soaring mailing list", "");

    /** The parameter. */
    public static final Formula PARAMETER = Formula.named("spiral parameter")
            .gives("B", NamedUnit.NUMBER)
            .as("l_b·(Γ·180/π)/C_L")
            .where("l_b", "fin arm over span", 0.1, 1)
            .where("Γ", "equivalent dihedral", Angle.RADIAN, 0, 0.5)
            .where("C_L", "lift coefficient of the turn", 0.1, 1.5)
            .from(RULE)
            .computedBy(SpiralParameter::of);

    /** Range for models. */
    public static final Guideline GUIDELINE = new Guideline("spiral parameter", Interval.atLeast(5), NamedUnit.NUMBER,
            "models steered by rudder or not at all", "Add dihedral, or move the fin aft.", RULE);

    private SpiralParameter() {}

    /**
     * Spiral parameter.
     *
     * @param armOverSpan fin arm over span l_v/b [-]
     * @param dihedral equivalent dihedral Γ [rad]
     * @param lift lift coefficient of the turn C_L [-], positive
     * @return B [-]: 6.17 for 30 in arm, 78.4 in span, 12.1° and C_L 0.75
     */
    public static double of(double armOverSpan, double dihedral, double lift) {
        return armOverSpan * (dihedral * 180 / Math.PI) / lift;
    }

    /**
     * Least equivalent dihedral for a neutral spiral.
     *
     * @param armOverSpan fin arm over span l_v/b [-], positive
     * @param lift lift coefficient of the turn C_L [-]
     * @return Γ [rad]: 9.8° for 30 in arm, 78.4 in span and C_L 0.75
     */
    public static double leastDihedral(double armOverSpan, double lift) {
        return Math.toRadians(5 * lift / armOverSpan);
    }
}
