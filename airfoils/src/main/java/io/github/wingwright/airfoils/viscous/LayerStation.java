// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

/**
 * The boundary layer at one station of a surface; lengths in chords, speeds in stream speeds.
 *
 * @param x chord station [chords]
 * @param speed speed at the edge of the layer [stream speeds]
 * @param momentumThickness θ [chords]
 * @param displacementThickness δ* [chords]
 * @param frictionCoefficient cf on the local speed [1]; negative in reversed flow
 * @param turbulent whether the layer is turbulent
 */
public record LayerStation(
    double x,
    double speed,
    double momentumThickness,
    double displacementThickness,
    double frictionCoefficient,
    boolean turbulent) {
  /** Shape factor H = δ* / θ [1]. */
  public double shapeFactor() {
    return displacementThickness / momentumThickness;
  }
}
