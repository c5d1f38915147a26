// SPDX-License-Identifier: Apache-2.0

/**
 * From a design to what lies on the table: the list of what is printed, and whether it survives the throw and the wall.
 *
 * <table>
 *   <caption>The types, with an example each</caption>
 *   <tr><th>type</th><th>is</th><th>example</th></tr>
 *   <tr><td>{@link io.github.wingwright.stability.production.PrintPlan}</td><td>the print list of a design on a machine</td>
 *       <td>2 half wings, fuselage, tailplane, fin in 5 pieces</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.production.LaunchLoads}</td>
 *       <td>what throw and impact do to roots, joints and boom</td><td>wing root 0.03 N·m, carries 0.5 N·m</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.production.SpanLoading}</td><td>bending along a half wing</td>
 *       <td>mean of ellipse and chord</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.production.Cautions}</td><td>what can hurt, in numbers</td>
 *       <td>1.07 J at the launch</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.production.GliderParts}</td><td>meshes and templates of all parts</td>
 *       <td>half wing 61.72 cm³, 16.4 g the pair</td></tr>
 * </table>
 *
 * <p>Hollow parts are printed standing on end, because a thin skin over an empty inside cannot be printed lying; plates lie
 * flat. A wing with dihedral is made in two halves that meet in the middle.
 */
@NullMarked
package io.github.wingwright.stability.production;

import org.jspecify.annotations.NullMarked;
