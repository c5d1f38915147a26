// SPDX-License-Identifier: Apache-2.0

/**
 * Forces on a shape: friction, form, lift, the drag build-up, section and drag polars.
 *
 * <h2>The drag of small things</h2>
 *
 * <p>A body in air is dragged by friction on its skin and by the pressure that is missing behind it. For a large, slender,
 * fast body friction is nearly all, and the handbooks say so with a plate and a factor: the friction of a flat plate of the
 * same area, times a form factor a little above one. The plate's friction depends on one number,
 *
 * <pre>{@code Re = V·L/ν}</pre>
 *
 * <p>and on whether the layer of slow air next to the skin is laminar (smooth, C_f = 1.328/√Re) or turbulent (mixed, slower
 * to fall: 0.455/log₁₀(Re)^2.58). Large aircraft have Re of millions and are turbulent nearly everywhere.
 *
 * <p>A glider of thirty grams has a chord of 50 mm and flies at 6 m/s: Re = 20 000. Three things change.
 *
 * <ol>
 *   <li><b>Everything is laminar.</b> The turbulent laws, and with them the cut-off of roughness, do not apply. The grain of
 *       a printed surface has a Reynolds number of 40 where 600 would trip the layer.
 *   <li><b>A laminar layer gives up early.</b> Against the rising pressure behind the thickest point it separates, and below
 *       about Re = 50 000 it does not come back. The pressure drag is then as large as the friction, and friction times form
 *       factor gives half of what two tunnels measured. A thin curved plate, which has little to separate from, beats every
 *       thick section.
 *   <li><b>The camber is not all felt.</b> The separated air fills up the curved rear, and the section acts as if it had
 *       less camber: the zero-lift angle of a section of 6 % camber was measured at 0.43 of its theoretical value at 60 000.
 * </ol>
 *
 * <p>So at these speeds a number without its range is a guess in a confident tone, and section data come as bands, through
 * {@link io.github.wingwright.core.aerodynamics.SectionPolar}, from an estimate, a curved plate, or measurements of your own.
 *
 * <h2>Map</h2>
 *
 * <table>
 *   <caption>The types, with an example each</caption>
 *   <tr><th>type</th><th>is</th><th>example</th></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.SkinFriction}</td><td>friction laws of the plate</td>
 *       <td>{@code laminar(1e6)} is 0.001328</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.TurbulentFriction}</td><td>the turbulent law, by name</td>
 *       <td>{@code PRANDTL_SCHLICHTING}: 0.0030037 at 10⁷</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.FrictionModel}</td><td>laminar, turbulent, mixed; smooth, rough</td>
 *       <td>{@code FrictionModel.mixed(5e5, PRANDTL_SCHLICHTING)}</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.Roughness}</td><td>cut-off, and when a grain trips</td>
 *       <td>{@code grainReynolds(6, 1e-4, 1.5e-5)} is 40</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.BodyFormFactor}</td><td>form factors of bodies, by source</td>
 *       <td>{@code HOERNER}: 1.0800 at f = 8; {@code TORENBEEK}: 1.1046</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.SurfaceFormFactor}</td><td>form factors of wings and tails</td>
 *       <td>{@code TORENBEEK}: 1.3447 at t = 0.12</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.AfterbodyDrag}</td><td>upsweep and base</td>
 *       <td>10° of upsweep: D/q = 0.0487 of the section</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.DragBuildUp}</td><td>the sum over components</td>
 *       <td>C_D0 = 0.0093: fuselage 43 %, tail 57 %</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.DragComponent}</td><td>a part with a drag area: {@code BodyDrag},
 *       {@code SurfaceDrag}, {@code ItemDrag}</td><td>fuselage, tail, a wire</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.DragBreakdown}</td><td>a build-up at one speed</td>
 *       <td>a line for each component, with its share</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.Interference}</td><td>what a part drags more next to another</td>
 *       <td>{@code CONVENTIONAL_TAIL}: 1.045</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.Protuberance}</td><td>things in the flow, and the layer's shelter</td>
 *       <td>{@code ROUND_WIRE}: 1.17 on its frontal area</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.IdlePropeller}</td><td>a propeller that does not drive</td>
 *       <td>two blades of 250 mm, stopped: 31.4 cm²</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.AttainableLaminar}</td><td>laminar parts of full-size skins</td>
 *       <td>{@code MOULDED_SAILPLANE}: body 0.35, wing 0.70</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.BodyDragCurve}</td><td>the price of a body against its fineness</td>
 *       <td>fixed volume, Hoerner: f = 5.2, flat from 4.4 to 6.3</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.MethodComparison}</td><td>the build-up by every method</td>
 *       <td>C_D0 = 0.0140, by all methods 0.0134 to 0.0163</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.LiftSlope}</td><td>lift slope of a wing from its section's</td>
 *       <td>{@code helmbold(2π, 4)} is 3.883</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.InducedDrag}</td><td>drag that comes with lift</td>
 *       <td>C_L = 0.8, A = 8, δ = 0.0172: 0.0259</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.GroundEffect}</td><td>what the ground leaves of it</td>
 *       <td>half a span above the floor: 0.92</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.LiftingLine}</td><td>lift along the span of an unswept wing</td>
 *       <td>A = 8, λ = 0.5: δ = 0.0172</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.LiftingLineSolution}</td><td>its loadings with and without twist, its
 *       stall, and {@code LiftingLineKernel} behind it</td><td>where a section reaches its limit first</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.EstimatedPolar}</td><td>a section without measured data</td>
 *       <td>c_d 0.011 to 0.042, likely 0.029, at 6·10⁴</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.CurvedPlatePolar}</td><td>a plate of one or two printed walls</td>
 *       <td>5 % camber: usable lift 0.8 to 1.2</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.MeasuredPolar}</td><td>your own table</td>
 *       <td>straight between points, a finding beyond them</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.DragPolar}</td><td>C_D against C_L, with an end</td>
 *       <td>0.03 + 0.06·(C_L − 0.2)² to 0.9</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.ParabolicPolar}</td><td>the parabola with its least drag at a lift</td>
 *       <td>{@code 0.03 + 0.06·(C_L − 0.2)²}: least at C_L 0.2</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.TabulatedPolar}</td><td>points along a glide, each at its own Reynolds
 *       number</td><td>straight between its points</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.DragLaw}</td><td>likely drag on plain numbers, for kernels</td>
 *       <td>an {@code AircraftDrag} is one</td></tr>
 *   <tr><td>{@link io.github.wingwright.core.aerodynamics.AircraftDrag}</td><td>the whole aircraft at any lift and speed</td>
 *       <td>section + induced + build-up</td></tr>
 * </table>
 *
 * <h2>Policies</h2>
 *
 * <ul>
 *   <li>The choice of a method is the caller's and has a name; nothing is chosen silently.
 *   <li>Outside its domain a method answers with a finding. Polynomials alone are refused there: one of them would give 75
 *       for a form factor at f = 30.
 *   <li>What is displayed is what was computed: the quick paths and the workings call the same kernels, equal to the bit.
 *   <li>Methods on {@code double} check nothing and allocate nothing; they are in SI.
 * </ul>
 *
 * <h2>Notation</h2>
 *
 * <p>Re Reynolds number, C_f mean skin friction of one side, FF form factor, Q interference factor, S_wet wetted area, F = D/q
 * drag area, S reference area (the wing's), f fineness ratio, t thickness ratio, m camber over chord, c_l c_d c_m of the
 * section, C_L C_D of the wing, α₀ zero-lift angle, a₀ and a lift slope of section and wing, A aspect ratio, Λ sweep, δ and τ
 * losses against elliptic loading, K factor of drag due to lift, M Mach number.
 *
 * <h2>Sources</h2>
 *
 * <p>Hoerner, Fluid-Dynamic Drag, 1965 (from memory); Raymer, Aircraft Design, 6th ed., 2018, and Gudmundsson, General
 * Aviation Aircraft Design (both as restated in study notes); Leifsson, AAE 451 course book, Purdue; Schlichting,
 * Boundary-Layer Theory (from memory); Glauert, The Elements of Aerofoil and Airscrew Theory, 1947; Laitone, Experiments in
 * Fluids 23 (1997); Carmichael, NASA CR-165803 (from memory); low-speed tunnel tests of Princeton and the University of
 * Illinois.
 */
@NullMarked
package io.github.wingwright.core.aerodynamics;

import org.jspecify.annotations.NullMarked;
