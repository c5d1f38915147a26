// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.lattice;

import java.util.ArrayList;
import java.util.List;

/**
 * The wake far behind, cut into strips. Strips of the same group belong to one sheet; other sheets feel the trailing
 * vortices through a core of half a strip's width.
 */
public final class WakeStrips {
  /** First edge, second edge, control station, and whose they are. */
  private record Strip(double y1, double z1, double y2, double z2, double ym, double zm, int group) {}

  private final List<Strip> strips;
  private final double ground;

  private WakeStrips(List<Strip> strips, double ground) {
    this.strips = strips;
    this.ground = ground;
  }

  /** No strips yet, far from the ground. */
  public static WakeStrips none() {
    return new WakeStrips(List.of(), Double.NEGATIVE_INFINITY);
  }

  /**
   * A level sheet across the plane of symmetry, spaced by equal arcs, its control stations at η = cos(jπ/(n+1)) from
   * starboard to port.
   *
   * @param span distance between the wing tips [m], positive
   * @param height height [m]
   * @param count number of strips, at least 2
   */
  public WakeStrips withLevelSheet(double span, double height, int count) {
    if (!(span > 0) || count < 2) {
      throw new IllegalArgumentException(
          "a sheet needs a positive span and 2 strips, had " + span + " m and " + count);
    }
    List<Strip> more = new ArrayList<>(strips);
    int group = strips.stream().mapToInt(Strip::group).max().orElse(-1) + 1;
    double step = Math.PI / (count + 1);
    for (int j = 1; j <= count; j++) {
      more.add(new Strip(span / 2 * Math.cos((j + 0.5) * step), height, span / 2 * Math.cos((j - 0.5) * step),
          height, span / 2 * Math.cos(j * step), height, group));
    }
    return new WakeStrips(List.copyOf(more), ground);
  }

  /** Over the ground at this height [m]. */
  public WakeStrips overGround(double height) {
    return new WakeStrips(strips, height);
  }

  /** Starboard strips surface by surface, then the port images of the mirrored surfaces in the same order. */
  static WakeStrips of(LatticePanels[] panels, double ground) {
    List<Strip> all = new ArrayList<>();
    for (int side = 0; side <= 1; side++) {
      for (int s = 0; s < panels.length; s++) {
        LatticePanels p = panels[s];
        for (int j = 0; j < p.strips && (side == 0 || !p.surface.isCentral()); j++) {
          all.add(side == 0
              ? new Strip(p.edgeY[j], p.edgeZ[j], p.edgeY[j + 1], p.edgeZ[j + 1], p.stripY[j],
                  p.stripZ[j], s)
              : new Strip(-p.edgeY[j + 1], p.edgeZ[j + 1], -p.edgeY[j], p.edgeZ[j], -p.stripY[j],
                  p.stripZ[j], s));
        }
      }
    }
    return new WakeStrips(List.copyOf(all), ground);
  }

  /** Number of strips. */
  public int size() {
    return strips.size();
  }

  /** Lateral place of a strip's control station [m]. */
  public double middleY(int strip) {
    return strips.get(strip).ym;
  }

  /** Height of a strip's control station [m]. */
  public double middleZ(int strip) {
    return strips.get(strip).zm;
  }

  /** Width of a strip between its edges [m]. */
  public double width(int strip) {
    Strip s = strips.get(strip);
    return Math.hypot(s.y2 - s.y1, s.z2 - s.z1);
  }

  /** Height of the ground [m], negative infinity when there is none. */
  public double ground() {
    return ground;
  }

  double firstY(int strip) {
    return strips.get(strip).y1;
  }

  double firstZ(int strip) {
    return strips.get(strip).z1;
  }

  double secondY(int strip) {
    return strips.get(strip).y2;
  }

  double secondZ(int strip) {
    return strips.get(strip).z2;
  }

  double normalY(int strip) {
    Strip s = strips.get(strip);
    return -(s.z2 - s.z1) / width(strip);
  }

  double normalZ(int strip) {
    Strip s = strips.get(strip);
    return (s.y2 - s.y1) / width(strip);
  }

  int group(int strip) {
    return strips.get(strip).group;
  }

  double core4(int strip) {
    double core = width(strip) / 2;
    return core * core * core * core;
  }
}
