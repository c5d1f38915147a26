// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.mass.Material;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.examples.brief.Field;
import java.util.List;
import java.util.Optional;

/** A material that a brief brings along: each property a list of least, likely and greatest value. */
final class OwnMaterial {
  private OwnMaterial() {}

  /** Reads name, density, elastic modulus and, if it is known, strength. */
  static Material from(Field field) {
    String name = field.required("name").text();
    List<Density> density = three(field.required("density")).stream().map(f -> f.quantity(Density.KIND, "5 kg/m³", "25000 kg/m³")).toList();
    List<Pressure> modulus = pressures(field.required("elastic_modulus"), "0.1 MPa", "1000 GPa");
    Optional<List<Pressure>> strength = field.optional("strength").map(f -> pressures(f, "0.01 MPa", "10 GPa"));
    field.refuseTheRest();
    Material material = Material.of(name, density.get(0), density.get(1), density.get(2), Source.BRIEF)
        .withElasticModulus(modulus.get(0), modulus.get(1), modulus.get(2), Source.BRIEF);
    return strength.isEmpty()
        ? material
        : material.withStrength(strength.get().get(0), strength.get().get(1), strength.get().get(2), Source.BRIEF);
  }

  private static List<Pressure> pressures(Field field, String least, String greatest) {
    return three(field).stream().map(f -> f.quantity(Pressure.KIND, least, greatest)).toList();
  }

  private static List<Field> three(Field field) {
    List<Field> values = field.items();
    if (values.size() != 3) {
      throw field.error("must be a list of three values, least, likely and greatest, had " + values.size());
    }
    return values;
  }
}
