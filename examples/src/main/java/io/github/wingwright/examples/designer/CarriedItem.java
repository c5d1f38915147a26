// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.mass.Material;
import io.github.wingwright.core.mass.Stock;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.examples.brief.Field;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Something that a brief has on board: bought and weighed, or a tube, a rod or a sheet whose mass follows from its size.
 *
 * <pre>{@code
 * { "name": "battery", "mass": "8.5 g", "at": "40 mm" }
 * { "name": "spar", "at": "95 mm", "tube": { "material": "carbon tube", "outer": "3 mm", "inner": "2 mm", "length": "300 mm", "lies": "across" } }
 * { "name": "floor", "at": "60 mm", "sheet": { "material": "balsa plywood", "area": "12 cm²", "thickness": "1 mm" } }
 * }</pre>
 */
final class CarriedItem {
  private enum Lies {
    ALONG,
    ACROSS
  }

  private CarriedItem() {}

  static MassItem from(Field field) {
    String name = field.required("name").text();
    Placement place = Placement.at(field.required("at").quantity(Length.KIND, "-1 m", "20 m"), Length.ZERO);
    Optional<MassItem> weighed =
        field.optional("mass").map(f -> MassItem.of(name, f.quantity(Mass.KIND, "0.01 g", "100 kg"), place));
    Optional<MassItem> tube = field.optional("tube").map(f -> tube(f, name, place));
    Optional<MassItem> sheet = field.optional("sheet").map(f -> sheet(f, name, place));
    field.refuseTheRest();
    List<MassItem> said = Stream.of(weighed, tube, sheet).flatMap(Optional::stream).toList();
    if (said.size() != 1) {
      String has = said.isEmpty() ? "none" : Integer.toString(said.size());
      throw field.error("needs one of \"mass\", \"tube\" and \"sheet\", has " + has);
    }
    // Sizes and places are the brief's, and so is the choice of the material.
    return said.get(0).withSource(Source.BRIEF);
  }

  private static MassItem tube(Field field, String name, Placement place) {
    Material material = field.required("material").as(BriefMaterial::from);
    Length outer = field.required("outer").quantity(Length.KIND, "0.2 mm", "200 mm");
    Optional<Field> bore = field.optional("inner");
    Length inner = bore.map(f -> f.quantity(Length.KIND, "0.1 mm", "200 mm")).orElse(Length.ZERO);
    if (inner.compareTo(outer) >= 0) {
      throw bore.orElseThrow().error("must be less than the outer diameter of " + outer + ", was " + inner);
    }
    Length length = field.required("length").quantity(Length.KIND, "1 mm", "20 m");
    Lies lies = field.optional("lies").map(f -> f.choice(Lies.class)).orElse(Lies.ALONG);
    field.refuseTheRest();
    return lies == Lies.ALONG
        ? Stock.tube(name, material, outer, inner, length, place)
        : Stock.tubeAcross(name, material, outer, inner, length, place);
  }

  private static MassItem sheet(Field field, String name, Placement place) {
    Material material = field.required("material").as(BriefMaterial::from);
    Area area = field.required("area").quantity(Area.KIND, "0.01 cm²", "50 m²");
    Length thickness = field.required("thickness").quantity(Length.KIND, "0.05 mm", "100 mm");
    field.refuseTheRest();
    return Stock.sheet(name, material, area, thickness, place);
  }
}
