// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.basis.Sized;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.sizing.BodySteps;
import io.github.wingwright.core.sizing.DragArea;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The workings of a choice with the drag of the body, whether or not it was chosen by its drag. */
final class FuselageWorkings {
  private FuselageWorkings() {}

  static Workings of(Sized<Fuselage> sized, DragArea drag) {
    List<Step> steps = sized.workings().steps();
    Optional<Step> length = steps.stream().filter(s -> s.symbol().equals("L")).findFirst();
    Optional<Step> diameter = steps.stream().filter(s -> s.symbol().equals("d")).findFirst();
    boolean dragged = steps.stream().anyMatch(s -> s.symbol().equals("F"));
    if (dragged || length.isEmpty() || diameter.isEmpty()) {
      return sized.workings();
    }
    BodySteps body =
        known(BodySteps.of(sized.value().shape(), length.get(), diameter.get()), steps);
    List<Step> all = new ArrayList<>(steps);
    drag.step(body).ifPresent(all::add);
    return Workings.of(all);
  }

  /** The lines that are there already take the place of new ones, so that none stands twice. */
  private static BodySteps known(BodySteps body, List<Step> steps) {
    return new BodySteps(
        body.shape(),
        body.length(),
        body.diameter(),
        there(body.fineness(), steps),
        there(body.frontalArea(), steps),
        there(body.volume(), steps),
        there(body.wettedArea(), steps));
  }

  private static Step there(Step step, List<Step> steps) {
    return steps.stream()
        .filter(s -> s.name().equals(step.name()) && s.symbol().equals(step.symbol()))
        .findFirst()
        .orElse(step);
  }
}
