// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.mass;

import io.github.wingwright.core.basis.Band;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.MomentOfInertia;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** How far centre of gravity and inertia of a mass statement may be off, when each mass takes any value in its range. */
final class MassBands {
  private final MassStatement statement;

  MassBands(MassStatement statement) {
    this.statement = statement;
  }

  Band centreOfGravity() {
    double x = statement.centreOfGravity().x().si();
    return new Band(Math.min(extreme(false), x), x, Math.max(extreme(true), x));
  }

  private double extreme(boolean aft) {
    Comparator<MassItem> byPlace = Comparator.comparing(item -> item.centreOfGravity().x());
    List<MassItem> ordered = statement.items().stream().sorted(aft ? byPlace.reversed() : byPlace).toList();
    double sum = 0.0;
    double moment = 0.0;
    for (MassItem item : ordered) {
      sum += item.massBand().low().si();
      moment += item.massBand().low().si() * item.centreOfGravity().x().si();
    }
    double best = sum > 0.0 ? moment / sum : ordered.get(0).centreOfGravity().x().si();
    for (MassItem item : ordered) {
      double more = item.massBand().high().si() - item.massBand().low().si();
      sum += more;
      moment += more * item.centreOfGravity().x().si();
      if (sum > 0.0) {
        best = aft ? Math.max(best, moment / sum) : Math.min(best, moment / sum);
      }
    }
    return best;
  }

  Band inertia(Function<Inertia, MomentOfInertia> axis) {
    double likely = axis.apply(statement.inertia()).si();
    double low = axis.apply(at(Band::low)).si();
    double high = axis.apply(at(Band::high)).si();
    return new Band(Math.min(low, likely), likely, Math.max(high, likely));
  }

  /** The inertia with all items at one end of their ranges; none if they weigh nothing there. */
  private Inertia at(ToDoubleFunction<Band> end) {
    List<MassItem> changed = new ArrayList<>();
    double total = 0.0;
    for (MassItem item : statement.items()) {
      double mass = end.applyAsDouble(item.massBand().si());
      double likely = item.mass().si();
      Inertia own = likely > 0.0 ? item.ownInertia().times(mass / likely) : item.ownInertia();
      changed.add(MassItem.of(item.name(), Mass.kilograms(mass), item.centreOfGravity()).withOwnInertia(own));
      total += mass;
    }
    return total > 0.0 ? MassStatement.of(changed).inertia() : Inertia.NONE;
  }
}
