// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core;

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

/** The rules of the house, for core; the examples module checks them across the modules. */
@AnalyzeClasses(packages = "io.github.wingwright.core", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
  @ArchTest
  static final ArchTests HOUSE_RULES = ArchTests.in(HouseRules.class);

  @ArchTest
  static final ArchRule LAYERS = Layers.ARROWS_POINT_DOWN;

  @ArchTest
  static void every_package_is_exported(JavaClasses classes) {
    assertThat(ModuleExports.of("io.github.wingwright.core", "io.github.wingwright.core.numerics"))
        .as("exports of core's module-info")
        .isEqualTo(ModuleExports.packagesWithClasses(classes, "io.github.wingwright.core"));
  }
}
