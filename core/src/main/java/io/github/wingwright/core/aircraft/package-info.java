// SPDX-License-Identifier: Apache-2.0

/**
 * Shape and mass together, as one immutable value.
 *
 * <p>Most methods of the library ask for an {@link io.github.wingwright.core.geometry.Airframe} alone; those on trim, flight
 * and inertia ask for an {@link io.github.wingwright.core.aircraft.Aircraft}: an airframe and its
 * {@link io.github.wingwright.core.mass.MassStatement}, in the same axes (x aft from the nose tip, y to starboard, z up). The
 * pair is not checked for sense, because a half-finished design has masses that do not yet fit its shape.
 *
 * <p>Example: a glider of 42 g and 180 cm² has a wing loading of 2.333 kg/m²; with its centre of gravity at 90 mm and a mean
 * aerodynamic chord of 46.67 mm that begins at 73.33 mm it balances at 35.7 % of that chord.
 */
@NullMarked
package io.github.wingwright.core.aircraft;

import org.jspecify.annotations.NullMarked;
