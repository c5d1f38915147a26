// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.mass.Material;
import io.github.wingwright.core.mass.Materials;
import io.github.wingwright.examples.brief.Field;

/** A material as a brief names it: one of the library's by its name, or one of its own. */
final class BriefMaterial {
  private BriefMaterial() {}

  static Material from(Field field) {
    if (field.isObject()) {
      return OwnMaterial.from(field);
    }
    String text = field.text();
    return Materials.all().stream()
        .filter(m -> m.name().equals(text))
        .findFirst()
        .orElseThrow(
            () ->
                field.error(
                    "must be one of the materials of the library: "
                        + String.join("; ", Materials.all().stream().map(Material::name).toList())
                        + "; was \""
                        + text
                        + "\""));
  }
}
