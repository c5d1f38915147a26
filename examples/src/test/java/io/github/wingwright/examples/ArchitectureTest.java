// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.junit.ArchTests;
import com.tngtech.archunit.lang.ArchRule;
import io.github.wingwright.testing.HouseRules;
import io.github.wingwright.testing.Layers;
import io.github.wingwright.testing.ModuleExports;

/** The rules of the house across the library modules: here is the one place that sees them all. */
@AnalyzeClasses(
    packages = {"io.github.wingwright.core", "io.github.wingwright.airfoils", "io.github.wingwright.stability"},
    importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
  @ArchTest
  static final ArchTests HOUSE_RULES = ArchTests.in(HouseRules.class);

  /** Holds the two sibling modules apart as well: neither is among the layers the other stands on. */
  @ArchTest
  static final ArchRule LAYERS = Layers.ARROWS_POINT_DOWN;

  @ArchTest
  static void every_package_of_airfoils_is_exported(JavaClasses classes) {
    String name = "io.github.wingwright.airfoils";
    assertThat(ModuleExports.of(name, name)).isEqualTo(ModuleExports.packagesWithClasses(classes, name));
  }

  @ArchTest
  static void every_package_of_stability_is_exported(JavaClasses classes) {
    String name = "io.github.wingwright.stability";
    assertThat(ModuleExports.of(name, name)).isEqualTo(ModuleExports.packagesWithClasses(classes, name));
  }
}
