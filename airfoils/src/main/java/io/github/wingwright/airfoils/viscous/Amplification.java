// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

public final class Amplification {
    private Amplification() {}
    static double criticalLog(double h) { double q = 1 / (h - 1);
        return (1.415 * q - 0.489) * Math.tanh(20 * q - 12.9) + 3.295 * q + 0.44; }
    static double rate(double h, double theta, double reTheta) {
        double lr = Math.log10(reTheta) - criticalLog(h);
        double ramp = lr < -0.08 ? 0 : lr > 0.08 ? 1 : (lr + 0.08) / 0.16; ramp = ramp * ramp * (3 - 2 * ramp);
        if (ramp == 0) return 0;
        double b = 2.4 * h - 3.7 + 2.5 * Math.tanh(1.5 * h - 4.65);
        double dn = 0.01 * Math.sqrt(b * b + 0.25);
        double l = (6.54 * h - 14.07) / (h * h);
        double ml = 0.058 * (h - 4) * (h - 4) / (h - 1) - 0.068;
        return Math.max(0, ramp * dn * (ml + l) / 2 / theta);
    }
}
