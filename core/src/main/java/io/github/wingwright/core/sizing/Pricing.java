// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.basis.Price;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.FlexuralRigidity;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Volume;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What a choice is priced in: volume always, drag, stiffness, mass and figures of merit as far as they are known. */
record Pricing(Optional<DragArea> drag, Optional<BodyShell> shell, List<FigureOfMerit> figures) {
  static final Pricing NONE = new Pricing(Optional.empty(), Optional.empty(), List.of());

  Pricing withDrag(DragArea other) {
    return new Pricing(Optional.of(other), shell, figures);
  }

  Pricing withShell(BodyShell other) {
    return new Pricing(drag, Optional.of(other), figures);
  }

  Pricing withFigure(FigureOfMerit figure) {
    List<FigureOfMerit> all = new ArrayList<>(figures);
    all.removeIf(f -> f.name().equals(figure.name()));
    all.add(figure);
    return new Pricing(drag, shell, List.copyOf(all));
  }

  /** What the best body is looked for by, in words. */
  String judge() {
    return drag.isEmpty() ? "wetted area" : figures.isEmpty() ? "drag area D/q" : figures.get(0).name();
  }

  /** What is made small when the best body is looked for: the first figure of merit, else drag, else skin. */
  double badness(BodyShape shape, double length, double diameter) {
    if (drag.isPresent() && !figures.isEmpty()) {
      FigureOfMerit figure = figures.get(0);
      double value = figure(figure, body(shape, length, diameter));
      return figure.moreIsBetter() ? -value : value;
    }
    return drag.isPresent()
        ? drag.get().dragArea(shape, length, diameter)
        : shape.wettedArea(length, diameter);
  }

  private double figure(FigureOfMerit figure, Fuselage body) {
    return figure.value().of(body, drag.map(d -> dragArea(d, body)).orElse(Double.NaN));
  }

  private static double dragArea(DragArea drag, Fuselage body) {
    return drag.dragArea(body.shape(), body.length().si(), body.diameter().si());
  }

  static Fuselage body(BodyShape shape, double length, double diameter) {
    return new Fuselage(shape, Length.metres(length), Length.metres(diameter));
  }

  List<Price> prices(Fuselage reference, Fuselage chosen, NamedUnit<Length> unit) {
    boolean large = unit.equals(Length.METRE) || unit.equals(Length.FOOT);
    boolean inches = unit.equals(Length.INCH) || unit.equals(Length.FOOT);
    NamedUnit<Area> small = inches ? Area.SQUARE_INCH : Area.SQUARE_CENTIMETRE;
    NamedUnit<Area> skin = !large ? small : inches ? Area.SQUARE_FOOT : Area.SQUARE_METRE;
    NamedUnit<Mass> grams = inches ? Mass.OUNCE : Mass.GRAM;
    NamedUnit<Mass> mass = !large ? grams : inches ? Mass.POUND : Mass.KILOGRAM;
    NamedUnit<FlexuralRigidity> metric =
        large ? FlexuralRigidity.KILONEWTON_SQUARE_METRE : FlexuralRigidity.NEWTON_SQUARE_METRE;
    NamedUnit<FlexuralRigidity> imperial =
        large ? FlexuralRigidity.POUND_FORCE_SQUARE_FOOT : FlexuralRigidity.POUND_FORCE_SQUARE_INCH;
    NamedUnit<Volume> litres = inches ? Volume.CUBIC_INCH : Volume.CUBIC_CENTIMETRE;
    NamedUnit<Volume> space = !large ? litres : inches ? Volume.CUBIC_FOOT : Volume.CUBIC_METRE;
    List<Price> prices = new ArrayList<>();
    if (drag.isPresent()) {
      double before = dragArea(drag.get(), reference);
      double after = dragArea(drag.get(), chosen);
      prices.add(new Price("drag area", before, after, small, false));
      for (FigureOfMerit figure : figures) {
        prices.add(
            new Price(
                figure.name(),
                figure(figure, reference),
                figure(figure, chosen),
                figure.unit(),
                figure.moreIsBetter()));
      }
    } else {
      prices.add(
          new Price(
              "wetted area",
              reference.wettedArea().si(),
              chosen.wettedArea().si(),
              skin,
              false));
    }
    if (shell.isPresent()) {
      BodyShell wall = shell.get();
      prices.add(
          new Price(
              "bending stiffness",
              wall.bendingStiffness(reference.diameter()).si(),
              wall.bendingStiffness(chosen.diameter()).si(),
              inches ? imperial : metric,
              true));
      prices.add(new Price("shell mass", mass(wall, reference), mass(wall, chosen), mass, false));
    }
    prices.add(
        new Price("volume", reference.volume().si(), chosen.volume().si(), space, true));
    return List.copyOf(prices);
  }

  /** A shell is never heavier than the solid body. */
  private static double mass(BodyShell shell, Fuselage body) {
    double skin = body.wettedArea().si() * shell.wall().si();
    return shell.density().si() * Math.min(skin, body.volume().si());
  }
}
