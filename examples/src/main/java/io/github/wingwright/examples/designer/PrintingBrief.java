// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.manufacture.BuildVolume;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.examples.brief.Field;
import java.util.Optional;

/**
 * The machine that prints a design, and a smaller one to compare with.
 *
 * @param machine its build volume; if the brief does not give it a cube of the longest straight part
 * @param smaller the build volume of the smaller machine, if the brief names one
 */
record PrintingBrief(BuildVolume machine, Optional<BuildVolume> smaller) {

  /** Reads both from the brief's machine. */
  static PrintingBrief from(Field field) {
    Length longest = field.required("longest_straight_part").quantity(Length.KIND, "20 mm", "10 m");
    BuildVolume machine =
        field.optional("build_volume").map(PrintingBrief::volume).orElse(BuildVolume.box(longest, longest, longest));
    return new PrintingBrief(machine, field.optional("smaller_machine").map(PrintingBrief::volume));
  }

  /** A box of width, depth and height, or a cylinder of diameter and height. */
  private static BuildVolume volume(Field field) {
    Length height = side(field, "height");
    Optional<Field> round = field.optional("diameter");
    Optional<Field> width = field.optional("width");
    if (round.isPresent() == width.isPresent()) {
      throw field.error("needs either a \"diameter\" or a \"width\" with a \"depth\", has " + (width.isPresent() ? "both" : "neither"));
    }
    BuildVolume volume =
        round.isPresent()
            ? BuildVolume.cylinder(side(field, "diameter"), height)
            : BuildVolume.box(side(field, "width"), side(field, "depth"), height);
    field.refuseTheRest();
    return volume;
  }

  private static Length side(Field field, String name) {
    return field.required(name).quantity(Length.KIND, "20 mm", "10 m");
  }
}
