// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.testing;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;
import javax.measure.Unit;
import net.objecthunter.exp4j.ExpressionBuilder;
import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A rule that cannot fail is none: each one meets a class that breaks it, and a class that breaks none. */
class HouseRulesTest {
  private static final JavaClasses CLASSES = new ClassFileImporter().importClasses(fixtures());

  private static List<Class<?>> fixtures() {
    List<Class<?>> classes = new ArrayList<>(List.of(HouseRulesTest.class.getDeclaredClasses()));
    classes.add(ExpressionBuilder.class);
    try {
      classes.add(Class.forName(HouseRules.class.getPackageName() + ".package-info"));
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(e);
    }
    return classes;
  }

  private static boolean breaks(ArchRule rule, Class<?> one) {
    return rule.evaluate(CLASSES.that(describe("is one", each -> each.isEquivalentTo(one)))).hasViolation();
  }

  @ParameterizedTest
  @MethodSource("breaches")
  void a_breach_is_found(ArchRule rule, Class<?> breach) {
    assertThat(breaks(rule, breach)).as("%s finds %s", rule.getDescription(), breach.getSimpleName()).isTrue();
  }

  @ParameterizedTest
  @MethodSource("breaches")
  void a_proper_class_passes(ArchRule rule) {
    assertThat(breaks(rule, Proper.class)).as(rule.getDescription()).isFalse();
  }

  static Stream<Arguments> breaches() {
    return Stream.of(
        Arguments.of(HouseRules.UNITS_OF_OTHERS_STAY_IN_QUANTITY, UsesForeignUnits.class),
        Arguments.of(HouseRules.COMMONS_MATH_IS_IN_NO_PUBLIC_SIGNATURE, ShowsCommonsMath.class),
        Arguments.of(HouseRules.NO_DESKTOP, UsesDesktop.class),
        Arguments.of(HouseRules.NO_OUTPUT_OF_ITS_OWN, Prints.class),
        Arguments.of(HouseRules.VISIBLE_FIELDS_ARE_FINAL, Mutable.class),
        Arguments.of(HouseRules.NO_VISIBLE_ARRAYS, Mutable.class),
        Arguments.of(HouseRules.RANDOMNESS_HAS_A_SEED, Unseeded.class),
        Arguments.of(HouseRules.OUTPUT_DOES_NOT_DEPEND_ON_THE_MACHINE, FormatsByDefault.class),
        Arguments.of(HouseRules.EVERY_PACKAGE_IS_NULL_MARKED, ExpressionBuilder.class),
        Arguments.of(HouseRules.NAMES_SAY_WHAT_A_CLASS_IS, WingHelper.class));
  }

  @Test
  void arrows_point_down_only() {
    assertThat(Layers.allows("core.geometry", "core.quantity")).isTrue();
    assertThat(Layers.allows("core.performance", "core.numerics")).isTrue();
    assertThat(Layers.allows("stability", "core.sizing")).isTrue();
    assertThat(Layers.allows("core.quantity", "core.basis")).isFalse();
    assertThat(Layers.allows("core.geometry", "core.aerodynamics")).isFalse();
    assertThat(Layers.allows("core.report", "core.geometry")).isFalse();
    assertThat(Layers.allows("airfoils", "stability")).isFalse();
    assertThat(Layers.allows("stability", "airfoils")).isFalse();
    assertThat(Layers.allows("airfoils", "core.sizing")).isFalse();
  }

  public record Proper(double length) {
    static final String UNIT = "m";

    String text() {
      return String.format(Locale.ROOT, "%.3f %s", length + new Random(1).nextDouble(), UNIT);
    }
  }

  static final class UsesForeignUnits {
    Unit<?> unit;
  }

  public static final class ShowsCommonsMath {
    public Complex root() {
      return Complex.I;
    }
  }

  static final class UsesDesktop {
    Color colour;
  }

  static final class Prints {
    void print() {
      System.out.println();
    }
  }

  static final class Mutable {
    public static double factor = 1;
    public static final double[] TABLE = {1, 2};
  }

  static final class Unseeded {
    double draw() {
      return new Random().nextDouble();
    }
  }

  static final class FormatsByDefault {
    String text() {
      return String.format("%.1f", 1.5);
    }
  }

  static final class WingHelper {
  }
}
