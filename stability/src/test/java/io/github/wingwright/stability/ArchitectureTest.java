// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

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

/** The rules of the house, for stability. */
@AnalyzeClasses(packages = "io.github.wingwright.stability", importOptions = DoNotIncludeTests.class)
class ArchitectureTest {
  @ArchTest
  static final ArchTests HOUSE_RULES = ArchTests.in(HouseRules.class);

  @ArchTest
  static final ArchRule LAYERS = Layers.ARROWS_POINT_DOWN;

  @ArchTest
  static void every_package_is_exported(JavaClasses classes) {
    assertThat(ModuleExports.of("io.github.wingwright.stability", "io.github.wingwright.stability"))
        .as("exports of stability's module-info")
        .isEqualTo(ModuleExports.packagesWithClasses(classes, "io.github.wingwright.stability"));
  }
}
