// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import static io.github.wingwright.core.quantity.Length.millimetres;

import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Tail;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import java.util.List;

/** The same small glider in every layout (invented, of usual proportions). */
public enum Layouts {
  CONVENTIONAL {
    @Override
    public Airframe airframe() {
      return Models.glider();
    }
  },
  T_TAIL {
    @Override
    public Airframe airframe() {
      Airframe a = Models.glider();
      Tail fin = fin();
      Placement top = Placement.at(level().placement().x(), fin.placement().z().plus(fin.planform().span()));
      return with(a.wing(), onTop(top), fin);
    }

    private Tail onTop(Placement top) {
      return new Tail(Tail.Role.HORIZONTAL, level().planform(), level().section(), top, level().incidence());
    }
  },
  V_TAIL {
    @Override
    public Airframe airframe() {
      return with(Models.glider().wing(), vTail());
    }
  },
  TWIN_FINS {
    @Override
    public Airframe airframe() {
      TwinFins pair = TwinFins.replacing(fin(), level());
      return with(Models.glider().wing(), level(), pair.port(), pair.starboard());
    }
  },
  CANARD {
    @Override
    public Airframe airframe() {
      Wing aft = Models.glider().wing().placedAt(Placement.at(millimetres(220), millimetres(8)));
      Tail foreplane =
          new Tail(
              Tail.Role.HORIZONTAL,
              Planform.tapered(Area.squareCentimetres(35), 5, 0.8),
              Models.PLATE,
              Placement.at(millimetres(20), millimetres(-4)),
              Angle.degrees(3));
      return with(aft, foreplane, fin());
    }
  },
  TAILLESS {
    @Override
    public Airframe airframe() {
      Wing straight = Models.glider().wing();
      Planform swept =
          straight.planform().withSweep(0.25, Angle.degrees(25)).withWashout(Angle.degrees(4));
      return with(new Wing(swept, Models.PLATE, straight.placement(), Angle.ZERO), fin());
    }
  };

  public abstract Airframe airframe();

  private static Tail level() {
    return Models.glider().horizontalTail().orElseThrow();
  }

  private static Tail fin() {
    return Models.glider().verticalTail().orElseThrow();
  }

  /** As stable as the two tails of the conventional layout. */
  static Tail vTail() {
    return VTail.asStableAs(level(), fin()).inPlaceOf(level());
  }

  static Airframe with(Wing wing, Tail... tails) {
    return new Airframe(Models.glider().fuselage(), wing, List.of(tails));
  }
}
