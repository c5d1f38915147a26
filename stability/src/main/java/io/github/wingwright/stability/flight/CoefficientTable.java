// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.flight;

/**
 * Lift, moment and the two parts of the drag over the angle of attack, so quick that a step of a flight takes them four
 * times: smooth cubics between points that are even in the sine of the angle, once for flow from ahead, once from behind.
 *
 * <p>The drag coefficient is C_D = A + B/√V, which is exact for laminar friction and good within some per cent otherwise.
 */
final class CoefficientTable {
  static final int LIFT = 0;
  static final int MOMENT = 4;
  static final int STEADY_DRAG = 8;
  static final int FRICTION_DRAG = 12;

  /** Cells from −90° to 90°; one cell is 0.29° wide about zero. */
  static final int CELLS = 400;

  private static final int COLUMNS = 4;
  private static final int CELL = 4 * COLUMNS;

  private final double[] cubics = new double[2 * CELLS * CELL];

  /** What is tabulated. */
  interface Coefficients {
    /**
     * Coefficients at an angle.
     *
     * @param angle angle of attack against the axis of the table, −π to π [rad]
     * @param into where C_L, C_m, A and B go
     */
    void at(double angle, double[] into);
  }

  CoefficientTable(Coefficients coefficients) {
    half(coefficients, true);
    half(coefficients, false);
  }

  private void half(Coefficients coefficients, boolean ahead) {
    double[][] values = new double[CELLS + 1][COLUMNS];
    for (int i = 0; i <= CELLS; i++) {
      double forward = Math.asin(Math.max(-1.0, Math.min(1.0, 2.0 * i / CELLS - 1.0)));
      double behind = forward >= 0.0 ? Math.PI - forward : -Math.PI - forward;
      coefficients.at(ahead ? forward : behind, values[i]);
    }
    for (int i = 0; i < CELLS; i++) {
      int base = (ahead ? i : CELLS + i) * CELL;
      for (int k = 0; k < COLUMNS; k++) {
        double y0 = values[i][k];
        double y1 = values[i + 1][k];
        double m0 = i == 0 ? y1 - y0 : 0.5 * (y1 - values[i - 1][k]);
        double m1 = i == CELLS - 1 ? y1 - y0 : 0.5 * (values[i + 2][k] - y0);
        cubics[base + 4 * k] = y0;
        cubics[base + 4 * k + 1] = m0;
        cubics[base + 4 * k + 2] = 3.0 * (y1 - y0) - 2.0 * m0 - m1;
        cubics[base + 4 * k + 3] = 2.0 * (y0 - y1) + m0 + m1;
      }
    }
  }

  /** Place in the table, whole part the cell, for the sine of the angle and whether the flow comes from ahead. */
  static double place(double sine) {
    return Math.max(0.0, Math.min(CELLS, 0.5 * CELLS * (sine + 1.0)));
  }

  static int cell(double place) {
    return Math.min(CELLS - 1, (int) place);
  }

  /** Where the numbers of a cell begin. */
  static int base(int cell, boolean ahead) {
    return (ahead ? cell : CELLS + cell) * CELL;
  }

  /** One of the four, at a part of the cell from 0 to 1. */
  double value(int base, int column, double part) {
    int i = base + column;
    return ((cubics[i + 3] * part + cubics[i + 2]) * part + cubics[i + 1]) * part + cubics[i];
  }

  /** One of the four at the sine of an angle, with flow from ahead. */
  double ahead(double sine, int column) {
    double place = place(sine);
    int cell = cell(place);
    return value(base(cell, true), column, place - cell);
  }
}
