// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

/**
 * One stretch of a layer between two stations: the residuals of momentum and shape, the number carried along, and their
 * derivatives. The inputs of a derivative stand in the order θ1, V1, H1, carried, θ2, V2, H2.
 */
abstract class LayerStep {
  static final int T1 = 0;
  static final int V1 = 1;
  static final int H1 = 2;
  static final int C1 = 3;
  static final int T2 = 4;
  static final int V2 = 5;
  static final int H2 = 6;
  static final int INPUTS = 7;

  final double viscosity;
  double momentum;
  double shape;
  double carried;
  final double[] dMomentum = new double[INPUTS];
  final double[] dShape = new double[INPUTS];
  final double[] dCarried = new double[INPUTS];

  LayerStep(double viscosity) {
    this.viscosity = viscosity;
  }
}
