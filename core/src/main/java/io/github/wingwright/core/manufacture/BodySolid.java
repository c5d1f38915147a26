// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * A body or a piece of it, as it is made: closed ends, a seat for the wing, slots for the tails, a rib across the underside
 * at the centre of gravity, joints. Any {@link Fuselage} will do: round or not, straight or bent up.
 *
 * <pre>{@code
 * TriangleMesh body = BodySolid.of(fuselage)
 *     .with(new WingSeat(millimetres(50), millimetres(140), millimetres(8), Angle.degrees(12)))
 *     .markedAt(millimetres(85))
 *     .mesh(millimetres(0.05));
 * }</pre>
 *
 * <p>With slots the body ends a little early, where there is still enough left on both sides of them.
 */
public final class BodySolid implements Solid {
  /** Stations from which those of the mesh are chosen. */
  private static final int DENSE = 1200;

  private final Fuselage body;
  private final double from;
  private final double to;
  private final @Nullable WingSeat seat;
  private final @Nullable TailSlots slots;
  private final double mark;
  private final @Nullable Spigot aft;
  private final List<Socket> sockets;

  private BodySolid(
      Fuselage body,
      double from,
      double to,
      @Nullable WingSeat seat,
      @Nullable TailSlots slots,
      double mark,
      @Nullable Spigot aft,
      List<Socket> sockets) {
    this.body = body;
    this.from = from;
    this.to = to;
    this.seat = seat;
    this.slots = slots;
    this.mark = mark;
    this.aft = aft;
    this.sockets = List.copyOf(sockets);
  }

  /**
   * The whole body.
   *
   * @param body its shape
   * @return the solid
   */
  public static BodySolid of(Fuselage body) {
    Objects.requireNonNull(body, "body");
    return new BodySolid(body, 0.0, body.length().si(), null, null, Double.NaN, null, List.of());
  }

  /**
   * The same with a seat for the wing.
   *
   * @param wingSeat the seat
   * @return the body
   */
  public BodySolid with(WingSeat wingSeat) {
    Door.within(wingSeat.to(), Length.ZERO, body.length(), "end of the wing seat");
    return new BodySolid(body, from, to, wingSeat, slots, mark, aft, sockets);
  }

  /**
   * The same with slots for the tails.
   *
   * @param tailSlots the slots
   * @return the body
   */
  public BodySolid with(TailSlots tailSlots) {
    Objects.requireNonNull(tailSlots, "tail slots");
    Door.within(tailSlots.tailplaneFrom(), Length.ZERO, body.length(), "beginning of the tailplane's slot");
    Door.within(tailSlots.finFrom(), Length.ZERO, body.length(), "beginning of the fin's slot");
    return new BodySolid(body, from, to, seat, tailSlots, mark, aft, sockets);
  }

  /**
   * The same with a small rib across its underside, to be felt by the fingers that balance it: 1 mm long, 0.4 mm high.
   *
   * @param centreOfGravity where, aft of the nose tip
   * @return the body
   */
  public BodySolid markedAt(Length centreOfGravity) {
    Door.within(centreOfGravity, Length.ZERO, body.length(), "place of the mark");
    return new BodySolid(body, from, to, seat, slots, centreOfGravity.si(), aft, sockets);
  }

  /**
   * The piece between two stations.
   *
   * @param begin its forward end, aft of the nose tip
   * @param end its aft end
   * @return the piece
   */
  public BodySolid between(Length begin, Length end) {
    Objects.requireNonNull(begin, "begin");
    Objects.requireNonNull(end, "end");
    if (!(begin.si() >= from && end.si() <= to && begin.si() < end.si())) {
      throw new IllegalArgumentException(
          "a piece must lie between " + Length.metres(from) + " and " + Length.metres(to) + ", was " + begin + " to " + end);
    }
    return new BodySolid(body, begin.si(), end.si(), seat, slots, mark, aft, sockets);
  }

  /**
   * The same with a spigot at its aft end.
   *
   * @param spigot the spigot
   * @return the piece
   */
  public BodySolid endingWith(Spigot spigot) {
    Objects.requireNonNull(spigot, "spigot");
    return new BodySolid(body, from, to, seat, slots, mark, spigot, sockets);
  }

  /**
   * The same with a socket at its forward end for the spigot of the piece before, for a tube or a dowel.
   *
   * @param spigot what goes in
   * @param aside how far to starboard of the plane of symmetry
   * @return the piece
   */
  public BodySolid startingOver(Spigot spigot, Length aside) {
    Objects.requireNonNull(spigot, "spigot");
    return socket(true, spigot, aside);
  }

  /**
   * The same with a socket at its aft end, for a tube or a dowel.
   *
   * @param spigot what goes in
   * @param aside how far to starboard of the plane of symmetry
   * @return the piece
   */
  public BodySolid endingOver(Spigot spigot, Length aside) {
    Objects.requireNonNull(spigot, "spigot");
    return socket(false, spigot, aside);
  }

  private BodySolid socket(boolean fore, Spigot spigot, Length aside) {
    List<Socket> more = new ArrayList<>(sockets);
    more.add(new Socket(fore, spigot, Door.finite(aside, "place of a socket").si()));
    return new BodySolid(body, from, to, seat, slots, mark, aft, more);
  }

  private record Socket(boolean fore, Spigot spigot, double aside) {}

  Fuselage body() {
    return body;
  }

  /** How large a circle fits around the middle of the section, below the seat where there is one. */
  Length roomAt(Length x) {
    BodyFrame frame = new BodyFrame(body);
    double room = Math.min(frame.halfWidth(x.si()), frame.halfHeight(x.si()));
    if (seat != null && x.si() >= seat.from().si() && x.si() <= seat.to().si()) {
      room = Math.min(room, (seat.floor().si() - frame.centre(x.si())) * Math.cos(seat.dihedral().si()));
    }
    return Length.metres(room);
  }

  Optional<WingSeat> seat() {
    return Optional.ofNullable(seat);
  }

  Optional<TailSlots> slots() {
    return Optional.ofNullable(slots);
  }

  Optional<Length> mark() {
    return Double.isNaN(mark) ? Optional.empty() : Optional.of(Length.metres(mark));
  }

  @Override
  public TriangleMesh mesh(Length tolerance) {
    double asked = 0.5 * Curves.tolerance(tolerance);
    // Sides that cut off more than the skin around a socket would cut into the socket.
    double tol = aft == null && sockets.isEmpty() ? asked : Math.min(asked, 0.5 * BodyPin.LEAST_SKIN);
    BodyFrame frame = new BodyFrame(body);
    TailSlots cut = slots != null && Math.min(slots.tailplaneFrom().si(), slots.finFrom().si()) < to ? slots : null;
    double end = cut == null ? to : Math.min(to, lastWithRoom(frame, cut));
    BodyRing ring = new BodyRing(frame, seat, cut, mark, end);
    List<BodyPin> pins = pins(frame, end, tol);
    NavigableSet<Double> events = events(cut, end, pins);
    double[] dense = dense(events);
    ring.divide(dense, from, end, tol);
    int key = ring.keys();
    for (BodyPin pin : pins) {
      pin.numberedFrom(key);
      key += pin.sides();
    }
    List<SlabStack.Slab> slabs = new ArrayList<>();
    double start = events.first();
    for (double stop : events.tailSet(start, false)) {
      double middle = 0.5 * (start + stop);
      boolean inside = middle > from && middle < end;
      List<int[]> loops = new ArrayList<>(inside ? ring.loops(middle) : List.of());
      for (BodyPin pin : pins) {
        if (middle > pin.from() && middle < pin.to()) {
          pin.check(ring, start, stop, inside);
          loops.add(pin.loop(inside));
        }
      }
      double[] stations = inside ? ring.stations(dense, start, stop, tol) : new double[] {start, stop};
      slabs.add(new SlabStack.Slab(stations, loops));
      start = stop;
    }
    boolean pointedStart = frame.isPoint(from);
    boolean pointedEnd = frame.isPoint(end);
    return SlabStack.mesh(0, slabs, pointedStart, pointedEnd, (k, x, p) -> {
      if (k < ring.keys()) {
        ring.locate(k, x, p);
      } else {
        pins.stream().filter(pin -> pin.has(k)).findFirst().orElseThrow().locate(k, x, p);
      }
    });
  }

  /** Where a body with slots ends: there is still a millimetre and half a slot around each. */
  private double lastWithRoom(BodyFrame frame, TailSlots cut) {
    double room = cut.width().si() + 1e-3;
    double height = cut.height().si();
    double last = frame.lastWithRoom(room, height);
    double needed = Math.max(from, Math.min(cut.tailplaneFrom().si(), cut.finFrom().si()));
    if (last <= needed) {
      throw new IllegalStateException(
          "a body must reach " + Length.metres(room).format(Length.MILLIMETRE, 3)
              + " from the middle of its tail slots aside, above and below, at "
              + Length.metres(needed).format(Length.MILLIMETRE, 3) + " from the nose it reaches "
              + Length.metres(frame.room(needed, height)).format(Length.MILLIMETRE, 3));
    }
    return last;
  }

  /** Where its section changes at once. */
  private NavigableSet<Double> events(@Nullable TailSlots cut, double end, List<BodyPin> pins) {
    TreeSet<Double> changes = new TreeSet<>();
    if (seat != null) {
      within(changes, seat.from().si(), end);
      within(changes, seat.to().si(), end);
    }
    if (cut != null) {
      within(changes, cut.tailplaneFrom().si(), end);
      within(changes, cut.finFrom().si(), end);
    }
    if (!Double.isNaN(mark)) {
      within(changes, mark - BodyRing.RIB_HALF_LENGTH, end);
      within(changes, mark + BodyRing.RIB_HALF_LENGTH, end);
    }
    pins.forEach(pin -> {
      changes.add(pin.from());
      changes.add(pin.to());
    });
    return SlabStack.apart(changes, from, end);
  }

  private void within(NavigableSet<Double> events, double x, double end) {
    if (x > from && x < end) {
      events.add(x);
    }
  }

  private List<BodyPin> pins(BodyFrame frame, double end, double tol) {
    List<BodyPin> pins = new ArrayList<>();
    if (aft != null) {
      double r = 0.5 * aft.diameter().si();
      pins.add(new BodyPin(end, end + aft.length().si(), 0.0, frame.centre(end), r, tol));
    }
    for (Socket socket : sockets) {
      double play = socket.spigot().play().si();
      double r = 0.5 * socket.spigot().diameter().si() + play;
      double deep = socket.spigot().length().si() + play;
      double begin = socket.fore() ? from : end - deep;
      double centre = frame.centre(socket.fore() ? from : end);
      pins.add(new BodyPin(begin, begin + deep, socket.aside(), centre, r, tol));
    }
    return pins;
  }

  /** Stations drawn together at nose and tail, where the outline turns fastest, and those of the events. */
  private double[] dense(NavigableSet<Double> events) {
    TreeSet<Double> all = new TreeSet<>(events);
    double length = body.length().si();
    for (int i = 0; i <= DENSE; i++) {
      double x = 0.5 * length * (1.0 - Math.cos(Math.PI * i / DENSE));
      Double before = events.floor(x);
      Double after = events.ceiling(x);
      // A station right beside an event would make a sliver.
      if (x > from && before != null && after != null && x - before > 1e-7 && after - x > 1e-7) {
        all.add(x);
      }
    }
    return all.stream().mapToDouble(Double::doubleValue).toArray();
  }

  @Override
  public String toString() {
    return "body from " + Length.metres(from) + " to " + Length.metres(to) + " of " + body;
  }
}
