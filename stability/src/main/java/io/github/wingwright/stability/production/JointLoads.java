// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.production;

import io.github.wingwright.core.manufacture.Joint;
import io.github.wingwright.core.manufacture.JointKind;
import io.github.wingwright.core.manufacture.PrintItem;
import io.github.wingwright.core.manufacture.PrintList;
import io.github.wingwright.core.manufacture.SlenderPart;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Moment;
import io.github.wingwright.core.quantity.Pressure;
import java.util.ArrayList;
import java.util.List;

/** What throw and impact do to the joints of a print list. */
final class JointLoads {
  private JointLoads() {}

  /** The loads; {@code impact} begins the words for those of the impact, {@code peak} is its greatest deceleration [m/s²]. */
  static List<LaunchLoads.Load> of(PrintList list, String impact, double peak) {
    List<LaunchLoads.Load> found = new ArrayList<>();
    for (PrintItem item : list.items()) {
      SlenderPart part = item.pieces().part();
      for (Joint joint : item.pieces().joints()) {
        String place = "joint of the " + item.name() + " at " + joint.at().format(Length.MILLIMETRE, 3);
        double bent = Math.abs(joint.bending().si());
        if (bent > 0.0) {
          found.add(new LaunchLoads.Load(place, "bending at launch", bent, joint.capacity().si(), Moment.NEWTON_METRE));
        }
        if (!item.name().equals("fuselage")) {
          double forward = peak * outboardMoment(part, item.mass().si(), joint.at().si());
          double capacity = inPlane(part, joint);
          found.add(new LaunchLoads.Load(place, impact + "outer piece going forward", forward, capacity, Moment.NEWTON_METRE));
        }
      }
    }
    return found;
  }

  /** Mass times distance of what lies beyond a seam, the mass spread like the width. */
  private static double outboardMoment(SlenderPart part, double mass, double seam) {
    int steps = 200;
    double length = part.length().si();
    boolean whole = part.at(Length.ZERO).width().si() < part.at(Length.metres(0.5 * length)).width().si();
    boolean towardsEnd = !whole || seam >= 0.5 * length;
    double all = 0.0;
    double beyond = 0.0;
    for (int i = 0; i < steps; i++) {
      double x = length * (i + 0.5) / steps;
      double width = part.at(Length.metres(x)).width().si();
      all += width;
      double distance = towardsEnd ? x - seam : seam - x;
      beyond += distance > 0.0 ? width * distance : 0.0;
    }
    return mass * beyond / all;
  }

  /** A strip over the seam of a plate is as strong in its plane as the plate; round joints are as strong in any. */
  private static double inPlane(SlenderPart part, Joint joint) {
    boolean strip = joint.kind() == JointKind.TONGUE && !part.wall().isPositive();
    double width = part.at(joint.at()).width().si();
    double strength = part.material().strength().map(Pressure::si).orElse(0.0);
    return strip ? strength * joint.size().si() * width * width / 6.0 : joint.capacity().si();
  }
}
