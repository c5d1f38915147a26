// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.quantity.Length;

/** Where the sections of a planform stand, for both halves. */
final class WingFrame {
  private final Planform planform;
  private final Length end;

  WingFrame(Planform planform) {
    this.planform = planform;
    end = planform.isMirrored() ? planform.span().times(0.5) : planform.span();
  }

  private Length station(double y) {
    Length at = Length.metres(Math.abs(y));
    return at.compareTo(end) > 0 ? end : at;
  }

  double chord(double y) {
    return planform.chordAt(station(y)).si();
  }

  double twist(double y) {
    return planform.twistAt(station(y)).si();
  }

  /** The place of a point of the section given in chords. */
  void place(double y, double x, double z, double[] p) {
    Length at = station(y);
    double c = planform.chordAt(at).si();
    double twist = planform.twistAt(at).si();
    // Nose-up twist lowers the trailing edge.
    p[0] = planform.leadingEdgeAt(at).si() + c * (x * Math.cos(twist) + z * Math.sin(twist));
    p[1] = y;
    p[2] = planform.heightAt(at).si() + c * (z * Math.cos(twist) - x * Math.sin(twist));
  }

  /** The point in chords of a place. */
  void local(double y, double[] p, double[] local) {
    Length at = station(y);
    double c = planform.chordAt(at).si();
    double twist = planform.twistAt(at).si();
    double dx = (p[0] - planform.leadingEdgeAt(at).si()) / c;
    double dz = (p[2] - planform.heightAt(at).si()) / c;
    local[0] = dx * Math.cos(twist) - dz * Math.sin(twist);
    local[1] = dz * Math.cos(twist) + dx * Math.sin(twist);
  }
}
