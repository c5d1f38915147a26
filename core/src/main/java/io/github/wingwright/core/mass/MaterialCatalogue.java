// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.mass;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Materials by name: those of the library, with one's own beside them or in their place.
 *
 * <pre>{@code
 * MaterialCatalogue mine =
 *     MaterialCatalogue.standard()
 *         .with(Material.of("blue PLA, weighed", gramsPerCubicCentimetre(1.21), Source.BRIEF));
 * mine.named("blue PLA, weighed");
 * }</pre>
 */
public final class MaterialCatalogue implements Serializable {
  private static final long serialVersionUID = 1L;

  private static final MaterialCatalogue STANDARD = new MaterialCatalogue(Materials.all());

  private final List<Material> materials;

  private MaterialCatalogue(List<Material> materials) {
    this.materials = List.copyOf(materials);
  }

  /**
   * The materials of the library.
   *
   * @return {@link Materials#all()}
   */
  public static MaterialCatalogue standard() {
    return STANDARD;
  }

  /**
   * The same catalogue with more materials.
   *
   * @param added the materials; each takes the place of one of its name, capitals not counting
   * @return the new catalogue
   */
  public MaterialCatalogue with(Material... added) {
    Objects.requireNonNull(added, "materials");
    List<Material> more = new ArrayList<>(materials);
    for (Material material : added) {
      Objects.requireNonNull(material, "material");
      more.removeIf(m -> m.name().equalsIgnoreCase(material.name()));
      more.add(material);
    }
    return new MaterialCatalogue(more);
  }

  /**
   * All materials.
   *
   * @return in the order of the library, one's own last
   */
  public List<Material> all() {
    return materials;
  }

  /**
   * A material that may not be there.
   *
   * @param name its name; capitals do not count
   * @return the material, empty if it is not in the catalogue
   */
  public Optional<Material> find(String name) {
    Objects.requireNonNull(name, "name");
    return materials.stream().filter(m -> m.name().equalsIgnoreCase(name.strip())).findFirst();
  }

  /**
   * A material.
   *
   * @param name its name; capitals do not count
   * @return the material
   * @throws IllegalArgumentException if it is not in the catalogue; the message lists those that are
   */
  public Material named(String name) {
    Objects.requireNonNull(name, "name");
    return find(name)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "material must be one of "
                        + materials.stream().map(Material::name).collect(Collectors.joining(", "))
                        + ", was "
                        + name));
  }

  @Override
  public String toString() {
    return materials.size() + " materials, from " + materials.get(0).name();
  }
}
