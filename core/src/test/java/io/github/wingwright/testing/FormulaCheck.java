// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.testing;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.basis.Symbol;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.StringJoiner;
import java.util.stream.Stream;
import net.objecthunter.exp4j.Expression;
import org.junit.jupiter.api.DynamicTest;

/**
 * Holds the printed text of formulas against the methods that compute them. One test for a module:
 *
 * <pre>{@code
 * @TestFactory
 * Stream<DynamicTest> every_formula_computes_what_it_prints() {
 *     return FormulaCheck.ofFormulasIn("io.github.wingwright.airfoils");
 * }
 * }</pre>
 *
 * <p>Each formula is computed at {@value #POINTS} points of its declared domain: the corner of all lower ends, that of all
 * upper ends, and seeded ones between, every other one spread over the orders of magnitude where the domain is positive.
 * In its own domain a formula must give a finite number; a pole that the domain cannot leave out, as where two arms are
 * equal, may take {@value #POLES} points.
 */
public final class FormulaCheck {
  /** How many points each formula is computed at. */
  public static final int POINTS = 1_000;

  /** How many of the points may lie on poles, where neither text nor method gives a finite number. */
  public static final int POLES = 10;

  /**
   * How far text and method may differ, as a part of the value. Both reckon in doubles and differ by the order of
   * operations, some 1e-15; a difference of nearly equal terms can make that a million times worse. A constant that is
   * wrong in its eighth digit is still found.
   */
  private static final double TOLERANCE = 1e-9;

  /** What rounding leaves where terms cancel altogether, as a part of the greatest value in the domain. */
  private static final double CANCELLED = 1e-14;

  private static final long SEED = 20_260_101L;

  private FormulaCheck() {
  }

  /**
   * One test for each formula constant of some packages.
   *
   * @param packages names of packages; their subpackages are included, tests are not
   * @return the tests
   * @throws AssertionError if there is no formula at all
   */
  public static Stream<DynamicTest> ofFormulasIn(String... packages) {
    List<Field> constants = constants(packages);
    if (constants.isEmpty()) {
      throw new AssertionError("no formula constant found in " + List.of(packages));
    }
    return constants.stream().map(constant -> DynamicTest.dynamicTest(
        constant.getDeclaringClass().getSimpleName() + "." + constant.getName(),
        () -> textAgreesWithMethod(value(constant))));
  }

  /**
   * Compares the text of a formula with its method.
   *
   * @param formula the formula
   * @throws AssertionError if they differ somewhere, or the text cannot be read
   */
  public static void textAgreesWithMethod(Formula formula) {
    Expression expression;
    try {
      expression = FormulaText.expression(formula);
    } catch (IllegalArgumentException e) {
      throw new AssertionError("text of " + formula.name() + " cannot be read: " + e.getMessage(), e);
    }
    List<double[]> points = points(formula.inputs());
    double[] computed = points.stream().mapToDouble(point -> formula.evaluate(point.clone())).toArray();
    double greatest = 0.0;
    for (double value : computed) {
      greatest = Double.isFinite(value) ? Math.max(greatest, Math.abs(value)) : greatest;
    }
    int poles = 0;
    for (int i = 0; i < computed.length; i++) {
      double read = read(expression, points.get(i));
      if (!Double.isFinite(read) && !Double.isFinite(computed[i]) && ++poles <= POLES) {
        continue;
      }
      double allowed = TOLERANCE * Math.max(Math.abs(computed[i]), Math.abs(read)) + CANCELLED * greatest;
      if (!(Math.abs(computed[i] - read) <= allowed)) {
        throw new AssertionError(describe(formula, points.get(i), read, computed[i], allowed));
      }
    }
  }

  /**
   * What a reader with an expression evaluator of their own makes of a formula's text.
   *
   * @param formula the formula
   * @param values the inputs in its order [SI]
   * @return the value of the text
   */
  public static double valueOfText(Formula formula, double... values) {
    return read(FormulaText.expression(formula), values);
  }

  static List<Field> constants(String... packages) {
    List<Field> constants = new ArrayList<>();
    for (JavaClass one : new ClassFileImporter(List.of(new ImportOption.DoNotIncludeTests())).importPackages(packages)) {
      for (Field field : one.reflect().getDeclaredFields()) {
        if (field.getType() == Formula.class && Modifier.isStatic(field.getModifiers())) {
          constants.add(field);
        }
      }
    }
    constants.sort(Comparator.comparing((Field field) -> field.getDeclaringClass().getName())
        .thenComparing(Field::getName));
    return constants;
  }

  private static Formula value(Field constant) {
    try {
      constant.setAccessible(true);
      return (Formula) constant.get(null);
    } catch (IllegalAccessException e) {
      throw new AssertionError(constant + " cannot be read", e);
    }
  }

  private static List<double[]> points(List<Symbol> inputs) {
    double[][] unit = new double[inputs.size()][];
    Arrays.setAll(unit, i -> new double[] {0.0, 1.0});
    List<double[]> points = Seeded.points(SEED, POINTS, unit).toList();
    for (int i = 0; i < points.size(); i++) {
      for (int k = 0; k < unit.length; k++) {
        points.get(i)[k] = place(inputs.get(k).domain(), points.get(i)[k], i % 2 == 1);
      }
    }
    return points;
  }

  private static double place(Interval domain, double part, boolean byOrderOfMagnitude) {
    double low = domain.lower();
    double high = domain.upper();
    double place = byOrderOfMagnitude && low > 0.0
        ? low * Math.exp(part * Math.log(high / low))
        : low + part * (high - low);
    return domain.clamp(place);
  }

  private static double read(Expression expression, double[] point) {
    for (int i = 0; i < point.length; i++) {
      expression.setVariable("v" + i, point[i]);
    }
    try {
      return expression.evaluate();
    } catch (ArithmeticException e) {
      // the evaluator throws where plain arithmetic gives an infinity; neither belongs in a formula's domain
      return Double.NaN;
    }
  }

  private static String describe(Formula formula, double[] point, double read, double computed, double allowed) {
    StringJoiner inputs = new StringJoiner(", ");
    for (int i = 0; i < point.length; i++) {
      inputs.add(formula.inputs().get(i).symbol() + " = " + point[i]);
    }
    return String.join("\n",
        formula.name() + " does not compute what it prints",
        "  formula: " + formula,
        "  at:      " + inputs,
        "  text:    " + read,
        "  method:  " + computed,
        "  differ by " + Math.abs(read - computed) + ", allowed " + allowed);
  }
}
