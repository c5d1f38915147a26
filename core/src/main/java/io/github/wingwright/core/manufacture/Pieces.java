// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A part cut where its {@link Segmentation} says, with the shape of each {@link Joint} on both sides of the cut.
 *
 * <table>
 *   <caption>Joints as they are made</caption>
 *   <tr><th>kind</th><th>on a wing</th><th>on a body</th></tr>
 *   <tr><td>tongue</td><td>a flat tongue from 0.22 to 0.5 of the chord, two fifths as thick as the section, and its slot</td>
 *       <td>a round spigot inside the wall, and its socket</td></tr>
 *   <tr><td>two dowels</td><td>holes at 0.22 and 0.45 of the chord</td><td>holes at a quarter of the width to both sides</td></tr>
 *   <tr><td>tube</td><td>a hole where the section is thickest, within 0.2 to 0.5 of the chord</td><td>a socket in the middle</td></tr>
 * </table>
 *
 * <p>A body cut where its tail slots are is joined by the tails, which bridge the seam; it has no room for anything else.
 */
public final class Pieces {
  private static final double[] DOWEL_PLACES = {0.22, 0.45};

  /** A hole that finds no room all the way is made less deep, in these steps, down to the shortest [mm]. */
  private static final double STEP = 0.5;

  private static final double SHORTEST = 5.0;

  /** A tongue that finds no room is made thinner in these steps, down to the thinnest, both as parts of its thickness. */
  private static final double THINNER = 0.02;

  private static final double THINNEST = 0.6;

  private Pieces() {}

  /**
   * The pieces of a half wing, from the root outwards. The segments may be counted along a panel with dihedral, as it lies in
   * the machine; the solid counts along the span.
   *
   * @param half the half
   * @param segments where it is cut and how it is joined
   * @return one solid for each segment
   */
  public static List<WingSolid> ofWing(WingSolid half, Segmentation segments) {
    Objects.requireNonNull(half, "half");
    Objects.requireNonNull(segments, "segments");
    List<WingSolid> pieces = new ArrayList<>();
    List<Segment> all = segments.segments();
    double span = half.semispan().dividedBy(segments.part().length());
    for (int i = 0; i < all.size(); i++) {
      WingSolid piece = half.between(all.get(i).from().times(span), half.outerEnd(all.get(i).to().times(span)));
      if (i > 0) {
        Joint joint = segments.joints().get(i - 1);
        piece = joined(half, piece, joint, joint.at().times(span), false);
      }
      if (i < all.size() - 1) {
        Joint joint = segments.joints().get(i);
        piece = joined(half, piece, joint, joint.at().times(span), true);
      }
      pieces.add(piece);
    }
    return pieces;
  }

  private static WingSolid joined(WingSolid half, WingSolid piece, Joint joint, Length at, boolean outer) {
    if (joint.kind() == JointKind.TONGUE) {
      Tongue tongue = tongue(half, joint, at);
      return outer ? piece.endingWith(tongue) : piece.startingOver(tongue);
    }
    double[] places = joint.kind() == JointKind.TUBE ? new double[] {half.thickestAt()} : DOWEL_PLACES;
    WingSolid bored = piece;
    for (double place : places) {
      bored = bored.with(hole(half, joint, at, place));
    }
    return bored;
  }

  /** As thick as the joint has it, less where a thin or much cambered section leaves no skin around its slot. */
  private static Tongue tongue(WingSolid half, Joint joint, Length at) {
    Tongue whole = new Tongue(Tongue.FROM, Tongue.TO, joint.size(), joint.overlap(), joint.clearance());
    for (double part = 1.0; part >= THINNEST; part -= THINNER) {
      Tongue tongue = whole.withThickness(joint.size().times(part));
      if (half.fits(tongue, at)) {
        return tongue;
      }
    }
    return whole;
  }

  /** As deep as the joint has it, less where a tapering section leaves no skin around it: alike on both sides of the seam. */
  private static Bore hole(WingSolid half, Joint joint, Length at, double place) {
    Length wide = joint.size().plus(joint.clearance().times(2.0));
    Bore whole = Bore.along(place, wide, at.minus(joint.overlap()), at.plus(joint.overlap()));
    Bore bore = whole;
    for (double deep = joint.overlap().millimetres(); deep >= SHORTEST && !half.fits(bore); deep -= STEP) {
      bore = Bore.along(place, wide, at.minus(Length.millimetres(deep)), at.plus(Length.millimetres(deep)));
    }
    return half.fits(bore) ? bore : whole;
  }

  /**
   * The pieces of a body, from the nose aft.
   *
   * @param body the body
   * @param segments where it is cut and how it is joined
   * @return one solid for each segment
   * @throws IllegalStateException if a joint finds no room in the body
   */
  public static List<BodySolid> ofBody(BodySolid body, Segmentation segments) {
    Objects.requireNonNull(body, "body");
    Objects.requireNonNull(segments, "segments");
    List<BodySolid> pieces = new ArrayList<>();
    List<Segment> all = segments.segments();
    Length wall = segments.part().wall();
    Length length = body.body().length();
    for (int i = 0; i < all.size(); i++) {
      Length to = all.get(i).to().compareTo(length) > 0 ? length : all.get(i).to();
      BodySolid piece = body.between(all.get(i).from(), to);
      if (i > 0) {
        piece = joined(piece, segments.joints().get(i - 1), wall, false);
      }
      if (i < all.size() - 1) {
        piece = joined(piece, segments.joints().get(i), wall, true);
      }
      pieces.add(piece);
    }
    return pieces;
  }

  /**
   * The pieces of a plate. Its joint is a strip glued over the seam, which needs nothing in the plate; dowels and tubes find no
   * room in one.
   *
   * @param plate the plate
   * @param segments where it is cut
   * @return one solid for each segment
   */
  public static List<PlateSolid> ofPlate(PlateSolid plate, Segmentation segments) {
    Objects.requireNonNull(plate, "plate");
    Objects.requireNonNull(segments, "segments");
    return segments.segments().stream().map(s -> plate.between(s.from(), s.to())).toList();
  }

  private static BodySolid joined(BodySolid piece, Joint joint, Length wall, boolean aft) {
    double reach = joint.reach().si();
    if (piece.slots().isPresent()
        && reach > Math.min(piece.slots().get().tailplaneFrom().si(), piece.slots().get().finFrom().si())) {
      return piece;
    }
    if (joint.kind() == JointKind.TONGUE) {
      // A body that tapers has less room at the bottom of the socket than at the seam.
      Length here = piece.roomAt(joint.at());
      Length there = piece.roomAt(Length.metres(Math.min(reach, piece.body().length().si())));
      Length room = (here.compareTo(there) < 0 ? here : there).minus(wall).minus(joint.clearance());
      if (room.compareTo(wall.times(0.5)) < 0) {
        throw new IllegalStateException(
            "a joint at " + joint.at().format(Length.MILLIMETRE, 5) + " from the nose must leave room for a tongue of "
                + wall.format(Length.MILLIMETRE, 3) + " inside a wall as thick, leaves "
                + room.times(2.0).format(Length.MILLIMETRE, 3) + " around the middle of the body");
      }
      Spigot spigot = new Spigot(room.times(2.0), joint.overlap(), joint.clearance());
      return aft ? piece.endingWith(spigot) : piece.startingOver(spigot, Length.ZERO);
    }
    Spigot pin = new Spigot(joint.size(), joint.overlap(), joint.clearance());
    if (joint.kind() == JointKind.TUBE) {
      return aft ? piece.endingOver(pin, Length.ZERO) : piece.startingOver(pin, Length.ZERO);
    }
    Length side = piece.body().widthAt(joint.at()).times(0.25);
    return aft
        ? piece.endingOver(pin, side).endingOver(pin, side.negated())
        : piece.startingOver(pin, side).startingOver(pin, side.negated());
  }
}
