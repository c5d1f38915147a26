// SPDX-License-Identifier: Apache-2.0

/**
 * Tails, balance, static stability and trim: a short lecture with the types that compute it.
 *
 * <h2>Pitch</h2>
 *
 * <p>An aircraft that is disturbed in pitch returns by itself if a gust that raises its nose makes a moment that lowers it.
 * Wing, fuselage and tail each make one. With every place written as a fraction of the wing's mean aerodynamic chord c̄
 * behind its leading edge, and moments positive nose-up about the centre of gravity at h:
 *
 * <pre>{@code
 * C_m = C_m,ac + C_mα,f·α + C_L,w·(h − h_w) − T·(h_h − h)
 * T   = η_h·(S_h/S)·C_Lh                    the tail's lift on the wing's area, positive up
 * }</pre>
 *
 * <p>The wing lifts ahead of or behind the centre of gravity by C_L,w·(h − h_w): its aerodynamic centre h_w is near ¼. The
 * fuselage always destabilises: {@link io.github.wingwright.stability.FuselageMoment}. The tail lifts far behind, where it
 * saves the day, but it stands in air that the wing has turned down: of a change of angle of attack it sees only
 * (1 − ε_α), {@link io.github.wingwright.stability.Downwash}. Against the angle of attack, and with t the tail's slope on
 * the wing's area:
 *
 * <pre>{@code
 * C_mα = a_w·(h − h_w) + C_mα,f − t·(h_h − h)              t = η_h·(S_h/S)·a_h·(1 − ε_α)
 * h_n  = (a_w·h_w − C_mα,f + t·h_h)/(a_w + t)              the centre of gravity at which C_mα vanishes
 * K_n  = h_n − h = −C_mα/(a_w + t)                         the static margin: positive is stable
 * }</pre>
 *
 * <p>h_n is the neutral point ({@link io.github.wingwright.stability.NeutralPoint}), K_n the static margin
 * ({@link io.github.wingwright.stability.StaticMargin}). Stability says that the aircraft returns; trim says where to. The
 * moment vanishes at the wanted lift if wing and tail are set at the right angle to each other, the decalage
 * δ = i_w − i_h, positive when the tail is set leading edge down against the wing
 * ({@link io.github.wingwright.stability.Trim}):
 *
 * <pre>{@code
 * δ = α_0 − α_h0 + (1 − ε_α)·(C_L − T)/a_w − T/(η_h·(S_h/S)·a_h)
 * }</pre>
 *
 * <p>A stable aircraft needs more decalage to fly slower. At the neutral point no change of decalage changes the trim.
 *
 * <h2>Size of the tails</h2>
 *
 * <p>What a tail does is its area times its arm, against the wing's area times a length: the tail volume coefficients
 * ({@link io.github.wingwright.stability.TailVolume}). They are the first guess; a wanted static margin, trim at the
 * greatest lift and directional stability ask for areas of their own, and the greatest decides
 * ({@link io.github.wingwright.stability.TailSizing}).
 *
 * <pre>{@code
 * V_h = S_h·l_h/(S·c̄)        V_v = S_v·l_v/(S·b)
 * }</pre>
 *
 * <p>The arm of least wetted area is where long body and large tails cost the same
 * ({@link io.github.wingwright.stability.TailArm}).
 *
 * <h2>Layouts</h2>
 *
 * <p>Everything here reads the layout from the airframe; nothing has to be told.
 *
 * <ul>
 *   <li>A V-tail does the work of both tails with one area S_V ({@link io.github.wingwright.stability.VTail}). With the slope
 *       a_N of its panels it has a_h = a_N·cos²Γ in pitch and K·a_N·sin²Γ in sideslip.
 *   <li>A T-tail stands above the downwash and in clean air, and is an end plate for its fin
 *       ({@link io.github.wingwright.stability.TailArrangement}).
 *   <li>Twin fins share the area of one ({@link io.github.wingwright.stability.TwinFins}).
 *   <li>A foreplane stands ahead ({@link io.github.wingwright.stability.Foreplane}). It takes margin away, so it is sized from
 *       above ({@link io.github.wingwright.stability.ForeplaneSizing}), and it must stall before the wing, which is a limit
 *       for the centre of gravity of its own.
 *   <li>Without a tail the wing must hold its own nose up ({@link io.github.wingwright.stability.TaillessTrim}): camber
 *       pitches down, reflex up, and washout on a swept-back wing up.
 * </ul>
 *
 * <h2>Power</h2>
 *
 * <p>A propeller that pulls moves the neutral point by the offset of its thrust line, by the force on its disc across the
 * axis, and by its slipstream on the tail ({@link io.github.wingwright.stability.Propeller}); each is named.
 *
 * <h2>Trim costs drag</h2>
 *
 * <p>Wing and tail each stand in the flow that the other turns, the tail has induced drag of its own, and what it presses
 * down the wing must lift in addition ({@link io.github.wingwright.stability.TrimmedPolar}). An elevator deflected
 * by δ_e works like τ·δ_e of decalage, so its travel is a range of speeds
 * ({@link io.github.wingwright.stability.ElevatorRange}).
 *
 * <h2>Balance</h2>
 *
 * <p>The centre of gravity may lie between the place at which the tail can just trim the greatest lift and the place that
 * leaves the least margin ({@link io.github.wingwright.stability.CentreOfGravityRange}), in every way of loading. It is
 * brought to its place by moving the wing first and by ballast second
 * ({@link io.github.wingwright.stability.WingStation}): the wing takes the neutral point along nearly all the way, the
 * centre of gravity only by its share of the mass.
 *
 * <h2>Roll and yaw</h2>
 *
 * <p>Whether a bank grows into a spiral is the balance of dihedral Γ against fin, at the lift coefficient of the turn
 * ({@link io.github.wingwright.stability.LateralStability}): B = (l_v/b)·(Γ/C_L), stable above 5°.
 *
 * <h2>Motion</h2>
 *
 * <p>What the equations of motion need comes from the same airframe, for any layout
 * ({@link io.github.wingwright.stability.AirframeDerivatives}): the static slopes above, the damping of rates, and the
 * downwash that reaches the tail late. Parts and formulas are in {@link io.github.wingwright.stability.derivatives}, the
 * motions themselves in {@link io.github.wingwright.stability.dynamics}, and an independent witness for all of it in
 * {@link io.github.wingwright.stability.lattice}. How a throw goes on from there to the floor is in
 * {@link io.github.wingwright.stability.flight}; the loop that makes a design of all this is in
 * {@link io.github.wingwright.stability.design}, its parts in {@link io.github.wingwright.stability.production}, what test
 * flights teach in {@link io.github.wingwright.stability.flighttest}, and two designs side by side in
 * {@link io.github.wingwright.stability.comparison}.
 *
 * <h2>Map of the types</h2>
 *
 * <table>
 *   <caption>What computes what, with an example of each</caption>
 *   <tr><th>type</th><th>gives</th><th>example</th></tr>
 *   <tr><td>{@link io.github.wingwright.stability.AircraftClass}</td><td>ranges of a class</td>
 *       <td>V_h of hand-launched gliders 0.5 to 0.8</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.TailVolume}</td><td>coefficient, area or arm</td>
 *       <td>0.8 for 30.73 ft² at 15 ft behind 134 ft² with c̄ 4.3 ft</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.TailSizing}</td><td>a tail in its place</td>
 *       <td>45 cm², 125 mm span, at 285 mm</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.Downwash}</td><td>ε_α by seven methods</td>
 *       <td>0.38 to 0.54 for A = 6, l_h = 0.45·b</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.ApparentMass}</td><td>k₁, k₂, k′ of an ellipsoid</td>
 *       <td>0.0452, 0.9171, 0.7623 for fineness 6</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.FuselageMoment}</td><td>C_mα,f by three methods</td>
 *       <td>1.178 per radian for the light twin of the tests</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.PitchModel}</td><td>the numbers of an airframe</td>
 *       <td>from it neutral point, margin and trim</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.NeutralPoint}</td><td>h_n with each part's share</td>
 *       <td>0.399 = 0.25 + tail 0.361 − fuselage 0.211</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.Trim}</td><td>decalage as a range</td>
 *       <td>1.5° (−3.0° to 4.4°) with a section known as badly as usual</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.WingStation}</td><td>wing's place, then ballast</td>
 *       <td>wing at 78 mm, no ballast, margin 15 %</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.CentreOfGravityRange}</td><td>forward and aft limit, loading cases</td>
 *       <td>71 to 106 mm; "move battery forward by 6 mm"</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.TrimmedPolar}</td><td>drag and best glide in trim</td>
 *       <td>L/D 15.8 at C_L 0.63</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.ElevatorRange}</td><td>speeds that the elevator holds</td>
 *       <td>6.0 to 17 m/s for ±2°</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.VTail}</td><td>area and dihedral of a V-tail</td>
 *       <td>60 cm² at 30° for 45 and 15 cm²</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.ForeplaneSizing}</td><td>area of a foreplane between trim and margin</td>
 *       <td>23 to 40 cm²</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.TaillessTrim}</td><td>moment that the wing needs and has</td>
 *       <td>needs C_m +0.043, has −0.060: reflex</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.Propeller}</td><td>what power does to the neutral point</td>
 *       <td>thrust line 15 mm high: +9 % of c̄ at C_T 0.1</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.AirframeDerivatives}</td><td>derivatives of any layout</td>
 *       <td>tail's C_mq −18.7, C_mα̇ −5.9, C_nβ +0.06</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.PrincipalAxes}</td><td>principal moments of inertia</td>
 *       <td>a dumb-bell that rises 30° aft: axis at 30°</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.QuickPitch}</td><td>neutral point and trim for studies</td>
 *       <td>0.14 µs, without allocation</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.TailRequirement}</td><td>what a tail must do, and the least area for it</td>
 *       <td>a static margin, trim, rotation</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.ControlSurface}</td><td>a hinged part with usual proportions</td>
 *       <td>elevator, rudder, aileron</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.LoadingCase}</td><td>one way of loading</td>
 *       <td>"battery empty"</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.PitchParts}</td><td>lift and moment part by part, for a flight</td>
 *       <td>tail's lift at its own angle</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.SweptTwist}</td><td>moment of twist on a swept wing</td>
 *       <td>washout on a swept-back wing: nose up</td></tr>
 *   <tr><td>{@link io.github.wingwright.stability.LateralStability}</td><td>spiral parameter</td>
 *       <td>6.2° for 12.1° of dihedral at C_L 0.75</td></tr>
 * </table>
 *
 * <h2>Notation and policies</h2>
 *
 * <p>S, b, c̄, A and λ are the wing's area, span, mean aerodynamic chord, aspect and taper ratio; a_w and a_h the lift-curve
 * slopes of wing and tail on their own areas; S_h, S_v, l_h, l_v areas and arms of the horizontal and vertical tail; η_h
 * the tail efficiency; ε the downwash angle, ε_α its gradient. Index t stands for whichever tail is being sized. h is a
 * place along c̄, behind its leading edge, as a fraction of it: h_w of the wing, h_h of the tail, h_n of the neutral point,
 * h alone of the centre of gravity; z is a height. Arms l_h and l_v run from the wing's quarter mean aerodynamic chord to
 * the tail's, positive aft; arms from the centre of gravity have the index g (l_g, and V_g for the volume coefficient with
 * it). x is measured aft from the nose tip; moments are nose-up positive; an elevator is deflected positively with its
 * trailing edge down, a rudder with its trailing edge to port. δ is the decalage, δ_e and δ_r are elevator and rudder; the
 * induced drag factor of the finite wing, δ in every book, is met in {@link io.github.wingwright.stability.lattice} only.
 *
 * <p>Numbers that are not well known (section data at small Reynolds numbers, downwash) are carried as bands. Kernels are
 * public static methods on SI {@code double}s that allocate nothing; results on top of them carry their workings and
 * findings. Everything is immutable and may be used from any thread. Ranges for full-size aircraft and for small models
 * stand side by side and are never mixed.
 *
 * <h2>Sources</h2>
 *
 * <p>Raymer, Aircraft Design: A Conceptual Approach; Perkins and Hage, Airplane Performance, Stability and Control; Lamb,
 * Hydrodynamics; NACA Reports 184, 711 and TM 1036; USAF Stability and Control DATCOM; the course books of Purdue (AAE 451)
 * and of H. Smith (Aircraft Flight Mechanics); M. Drela's rules for small models. Each formula says where it is from and
 * whether that was read or remembered.
 */
@NullMarked
package io.github.wingwright.stability;

import org.jspecify.annotations.NullMarked;
