// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.aerodynamics;

import java.io.Serializable;

/** A curve through a few points, straight against the logarithm of the Reynolds number, level beyond its ends. */
final class LogTable implements Serializable {
  private static final long serialVersionUID = 1L;

  private final double[] logarithm;
  private final double[] value;

  private LogTable(double[] logarithm, double[] value) {
    this.logarithm = logarithm;
    this.value = value;
  }

  /** A table of rising Reynolds numbers. */
  static LogTable of(double[] reynolds, double[] value) {
    double[] logarithm = new double[reynolds.length];
    for (int i = 0; i < logarithm.length; i++) {
      logarithm[i] = Math.log(reynolds[i]);
    }
    return new LogTable(logarithm, value.clone());
  }

  double at(double reynolds) {
    double x = Math.log(reynolds);
    int last = value.length - 1;
    if (x <= logarithm[0]) {
      return value[0];
    }
    if (x >= logarithm[last]) {
      return value[last];
    }
    int i = 1;
    while (logarithm[i] < x) {
      i++;
    }
    double t = (x - logarithm[i - 1]) / (logarithm[i] - logarithm[i - 1]);
    return value[i - 1] + t * (value[i] - value[i - 1]);
  }
}
