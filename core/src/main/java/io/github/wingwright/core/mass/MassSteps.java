// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.mass;

import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.MomentOfInertia;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Function;

/** The workings of a mass statement. Sums run in the order of its items, so they give its numbers bit for bit. */
final class MassSteps {
  private final MassStatement statement;

  MassSteps(MassStatement statement) {
    this.statement = statement;
  }

  Step total(Map<String, Step> origins) {
    for (String name : new TreeSet<>(origins.keySet())) {
      if (statement.item(name).isEmpty()) {
        throw new IllegalArgumentException(
            "origin must be of one of "
                + statement.items().stream().map(MassItem::name).toList()
                + ", was \""
                + name
                + "\"");
      }
    }
    List<Step> steps = new ArrayList<>();
    for (MassItem item : statement.items()) {
      Step origin = origins.get(item.name());
      if (origin != null && origin.value() != item.mass().si()) {
        throw new IllegalArgumentException(
            "origin of " + item.name() + " must give its mass " + item.mass() + ", gave " + origin);
      }
      steps.add(origin != null ? origin : Step.given(item.name(), "m", item.mass(), item.source()));
    }
    return Step.sum("total mass", "m", steps);
  }

  Step centreOfGravity(Step total) {
    return centre(total, Axis.X);
  }

  Step pitchInertia(Step total) {
    return inertia(total, "pitch", "I_yy", Axis.X, Axis.Z, item -> item.ownInertia().pitch());
  }

  Step rollInertia(Step total) {
    return inertia(total, "roll", "I_xx", Axis.Y, Axis.Z, item -> item.ownInertia().roll());
  }

  Step yawInertia(Step total) {
    return inertia(total, "yaw", "I_zz", Axis.X, Axis.Y, item -> item.ownInertia().yaw());
  }

  private Step inertia(
      Step total, String name, String symbol, Axis first, Axis second, Function<MassItem, MomentOfInertia> own) {
    Step cgFirst = centre(total, first);
    Step cgSecond = centre(total, second);
    List<Step> terms = new ArrayList<>();
    for (int i = 0; i < statement.items().size(); i++) {
      MassItem item = statement.items().get(i);
      Step ownStep = Step.given("own inertia of " + item.name(), "I_0", own.apply(item), item.source());
      Step a = Step.of("distance of " + item.name(), "a", MassStatement.DISTANCE, place(item, first), cgFirst);
      Step b = Step.of("distance of " + item.name(), "b", MassStatement.DISTANCE, place(item, second), cgSecond);
      terms.add(Step.of("inertia of " + item.name(), symbol, Inertia.PARALLEL_AXIS, ownStep, term(total, i), a, b));
    }
    return Step.sum("moment of inertia in " + name, symbol, terms);
  }

  private Step centre(Step total, Axis axis) {
    List<Step> shares = new ArrayList<>();
    for (int i = 0; i < statement.items().size(); i++) {
      MassItem item = statement.items().get(i);
      String name = "share of " + item.name();
      shares.add(
          Step.of(name, "Δ" + axis.symbol, MassStatement.SHARE, term(total, i), place(item, axis), total));
    }
    return Step.sum("centre of gravity", axis.symbol + "_cg", shares);
  }

  private Step term(Step total, int i) {
    if (total.inputs().size() != statement.items().size() || total.value() != statement.mass().si()) {
      throw new IllegalArgumentException("total must be a step of this statement's mass, was " + total);
    }
    return total.inputs().get(i);
  }

  private static Step place(MassItem item, Axis axis) {
    Length place = axis.of(item.centreOfGravity());
    return Step.given(axis.symbol + " of " + item.name(), axis.symbol, place, item.source());
  }

  /** One of the three axes, for steps that read alike along each. */
  private enum Axis {
    X("x"),
    Y("y"),
    Z("z");

    private final String symbol;

    Axis(String symbol) {
      this.symbol = symbol;
    }

    Length of(Placement place) {
      return switch (this) {
        case X -> place.x();
        case Y -> place.y();
        case Z -> place.z();
      };
    }
  }
}
