// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.derivatives;

import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The dihedral of a wing with bends, as the one angle of a plain wing that rolls as much in sideslip.
 *
 * <pre>{@code
 * Γ_eq = Σ Γᵢ·Mᵢ / Σ Mᵢ        Mᵢ = ∫c·y dy over panel i
 * }</pre>
 * Each panel's own angle to the horizontal counts with its area and its distance from the middle, so that a short steep
 * tip does as much as a long flat panel inside.
 *
 * <p>Source: strip integral of the rolling moment; common among model builders.
 */
public final class EquivalentDihedral {
    /** One panel of a half wing. */
    private record Panel(double inner, double outer, double innerChord, double outerChord, double angle) {
        /** ∫c·y dy. */
        double moment() {
            double w = outer - inner;
            return w * (innerChord * (2 * inner + outer) + outerChord * (inner + 2 * outer)) / 6;
        }
    }

    private final List<Panel> panels;

    private EquivalentDihedral(List<Panel> panels) {
        this.panels = panels;
    }

    /** A wing without panels yet. */
    public static EquivalentDihedral ofPanels() {
        return new EquivalentDihedral(List.of());
    }

    /**
     * With another panel, from the root outward.
     *
     * @param width width of the panel along the span, on one half
     * @param innerChord chord at its inner end
     * @param outerChord chord at its outer end
     * @param angle its own angle to the horizontal, tip up positive
     */
    public EquivalentDihedral panel(Length width, Length innerChord, Length outerChord, Angle angle) {
        if (!(width.metres() > 0)) {
            throw new IllegalArgumentException("width of a panel must be positive, was " + width);
        }
        if (!(innerChord.metres() >= 0 && outerChord.metres() >= 0 && innerChord.metres() + outerChord.metres() > 0)) {
            throw new IllegalArgumentException(
                    "chords of a panel must be positive, were " + innerChord + " and " + outerChord);
        }
        double inner = panels.isEmpty() ? 0 : panels.get(panels.size() - 1).outer;
        List<Panel> more = new ArrayList<>(panels);
        more.add(new Panel(inner, inner + width.metres(), innerChord.metres(), outerChord.metres(), angle.radians()));
        return new EquivalentDihedral(List.copyOf(more));
    }

    /**
     * The equivalent dihedral.
     *
     * @throws IllegalStateException if there is no panel
     */
    public Angle angle() {
        if (panels.isEmpty()) {
            throw new IllegalStateException("an equivalent dihedral needs at least 1 panel, had none");
        }
        double sum = 0;
        double weight = 0;
        for (Panel p : panels) {
            sum += p.angle * p.moment();
            weight += p.moment();
        }
        return Angle.radians(sum / weight);
    }

    @Override
    public String toString() {
        return panels.isEmpty() ? "equivalent dihedral of no panels"
                : String.format(Locale.ROOT, "equivalent dihedral of %d panels: %.2f°", panels.size(),
                        angle().degrees());
    }
}
