// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

public final class Entrainment {
    private Entrainment() {}
    public static double h1(double h) { double t = h - 1; if (t < 0.15) return 3.15 + 1.72 / 0.15 * (2 - t / 0.15); return 3.15 + 1.72 / t - 0.01 * t * t; }
    public static double cf0(double reTheta) { return 0.01013 / (Math.log10(Math.max(reTheta, 50)) - 1.02) - 0.00075; }
    public static double h0(double cf0) { return 1 / (1 - 6.55 * Math.sqrt(cf0 / 2)); }
    public static double cf(double h, double reTheta) {
        double c0 = cf0(reTheta);
        double ratio = Math.max(h / h0(c0), 0.7);
        return c0 * (0.9 / (ratio - 0.4) - 0.5);
    }
    /** equilibrium pressure gradient θ/ue due/dx */
    static double eqGradient(double h, double cf) { double g = (h - 1) / (6.432 * h); return 1.25 / h * (cf / 2 - g * g); }
    static double ctau(double ce, double cf0) { return 0.024 * ce + 1.2 * ce * ce + 0.32 * cf0; }
    public static double equilibrium(double h, double cf) { return h1(h) * (cf / 2 - (h + 1) * eqGradient(h, cf)); }
    /** θ dCE/dx */
    static double lag(double ce, double h, double reTheta, double gradient, double lambda) {
        double c0 = cf0(reTheta);
        double cf = cf(h, reTheta);
        double ceEq = equilibrium(h, cf);
        double ctauEq = Math.max(ctau(ceEq, c0), 1e-6);
        double c = Math.max(ctauEq - 0.32 * c0, -0.00011);
        double ceEq2 = Math.sqrt(c / 1.2 + 0.0001) - 0.01;
        double gradEq = (cf / 2 - ceEq2 / h1(h)) / (h + 1);
        double f = (0.02 * ce + ce * ce + 0.8 * c0 / 3) / (0.01 + ce);
        double root = Math.sqrt(Math.max(ctau(ce, c0), 1e-6));
        return f * (2.8 / (h + h1(h)) * (Math.sqrt(ctauEq) - lambda * root) + gradEq - gradient);
    }
    static double lagWake(double ce, double h, double gradient, double lambda) {
        double ceEq = equilibrium(h, 0);
        double ctauEq = Math.max(ctau(ceEq, 0), 1e-9);
        double ceEq2 = Math.sqrt(ctauEq / 1.2 + 0.0001) - 0.01;
        double gradEq = -ceEq2 / h1(h) / (h + 1);
        double f = (0.02 * ce + ce * ce) / (0.01 + ce);
        double root = Math.sqrt(Math.max(ctau(ce, 0), 1e-9));
        return f * (2.8 / (h + h1(h)) * (Math.sqrt(ctauEq) - lambda * root) + gradEq - gradient);
    }
}
