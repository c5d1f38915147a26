// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Reads and writes quantities as text. No locale takes part: the decimal mark is the point, digits are ASCII, and
 * there are no group separators.
 */
final class QuantityText {
  /** Significant digits of {@code toString}. */
  static final int DIGITS = 6;

  /** Text longer than this is refused before it is looked at. */
  private static final int LONGEST = 200;

  /** Beyond this decimal exponent, and below its like, a power of ten is written. */
  private static final int PLAIN_EXPONENT = 7;

  private static final int SMALLEST_PLAIN_EXPONENT = -4;

  /** A number, then a unit: all up to the next blank that is followed by a number, or the end. */
  private static final Pattern TERM =
      Pattern.compile(
          "([+-]?(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[eE][+-]?[0-9]+)?)\\s*"
              + "([^\\s0-9+-][^\\s]*(?:\\s+[^\\s0-9.+-][^\\s]*)*)?\\s*");

  private static final Pattern WHOLE = Pattern.compile("[+-]?[0-9]+\\.?0*");

  private QuantityText() {}

  static <Q extends ScalarQuantity<Q>> QuantityKind.Written<Q> parse(String text, QuantityKind<Q> kind) {
    if (text.length() > LONGEST) {
      throw refuse(text.substring(0, 40) + "…", kind, "it is longer than " + LONGEST + " characters");
    }
    String plain = text.replace('\u2212', '-').replace('\u00a0', ' ').replace('\u202f', ' ').strip();
    if (plain.isEmpty()) {
      throw refuse(text, kind, "it is empty");
    }
    Matcher term = TERM.matcher(plain);
    NamedUnit<Q> first = null;
    NamedUnit<Q> last = null;
    String previous = "";
    double sum = 0.0;
    boolean negative = plain.startsWith("-");
    int end = 0;
    while (end < plain.length()) {
      if (!term.find(end) || term.start() != end) {
        throw refuse(text, kind, noNumber(plain, end));
      }
      String unitText = term.group(2);
      if (unitText == null) {
        throw refuse(text, kind, "the number has no unit");
      }
      NamedUnit<Q> unit = unit(text, unitText, kind);
      double value = Double.parseDouble(term.group(1));
      if (first == null) {
        first = unit;
        sum = unit.toSi(value);
      } else {
        if (term.group(1).startsWith("-") || term.group(1).startsWith("+")) {
          throw refuse(text, kind, "only the first term may have a sign");
        }
        // A second term is a smaller unit without an offset: feet and inches, hours and minutes.
        if (!WHOLE.matcher(previous).matches()) {
          throw refuse(text, kind, "only the last term may have decimals");
        }
        if (last == null || unit.toSi(1.0) >= last.toSi(1.0) || unit.toSi(0.0) != 0.0 || last.toSi(0.0) != 0.0) {
          throw refuse(text, kind, "each further term needs a smaller unit than the one before");
        }
        // To a billionth: 12 in are a foot, and so are 11.9999999999.
        if (unit.toSi(value) >= last.toSi(1.0) * (1.0 - 1e-9)) {
          throw refuse(
              text,
              kind,
              "\"" + term.group(1) + " " + unit.symbol() + "\" after \"" + last.symbol() + "\" must be less than one " + last.symbol());
        }
        sum = negative ? sum - unit.toSi(value) : sum + unit.toSi(value);
      }
      last = unit;
      previous = term.group(1);
      end = term.end();
    }
    if (first == null || !Double.isFinite(sum)) {
      throw refuse(text, kind, "the number is too large");
    }
    return new QuantityKind.Written<>(kind.ofSi(sum), first);
  }

  private static String noNumber(String plain, int end) {
    String rest = plain.substring(end);
    return rest.matches("[+-]\\s*[+-].*") ? "it has two signs" : "there is no number at \"" + rest + "\"";
  }

  private static <Q extends ScalarQuantity<Q>> NamedUnit<Q> unit(String text, String unitText, QuantityKind<Q> kind) {
    String symbol = normalised(unitText);
    for (NamedUnit<Q> unit : kind.units()) {
      if (unit.symbol().equals(symbol) || unit.aliases().contains(symbol)) {
        return unit;
      }
    }
    if (unitText.startsWith(",")) {
      throw refuse(text, kind, "the decimal mark is a comma");
    }
    String others =
        Kinds.ALL.stream()
            .filter(other -> other.units().stream().anyMatch(u -> u.symbol().equals(symbol) || u.aliases().contains(symbol)))
            .map(QuantityKind::name)
            .collect(Collectors.joining(" or "));
    throw refuse(
        text,
        kind,
        "\"" + unitText + "\" is " + (others.isEmpty() ? "not one of its units" : "a unit of " + others + ", not of " + kind.name()));
  }

  /** Every kind, asked for only when a text is refused. */
  private static final class Kinds {
    static final List<QuantityKind<?>> ALL =
        List.of(
            Acceleration.KIND,
            Angle.KIND,
            AngularRate.KIND,
            Area.KIND,
            ArealDensity.KIND,
            Density.KIND,
            DynamicViscosity.KIND,
            Energy.KIND,
            FlexuralRigidity.KIND,
            Force.KIND,
            Frequency.KIND,
            KinematicViscosity.KIND,
            Length.KIND,
            LinearDensity.KIND,
            Mass.KIND,
            Moment.KIND,
            MomentOfInertia.KIND,
            Power.KIND,
            Pressure.KIND,
            SecondMomentOfArea.KIND,
            Speed.KIND,
            Temperature.KIND,
            TemperatureDifference.KIND,
            Time.KIND,
            Volume.KIND,
            WingLoading.KIND);
  }

  /** Brings the spellings of one unit together: both micro signs, ASCII powers and products. */
  private static String normalised(String unit) {
    return unit.strip()
        .replace('\u03bc', '\u00b5')
        .replace("^2", "²")
        .replace("^3", "³")
        .replace("^4", "⁴")
        .replace('*', '·')
        .replace('\u22c5', '·')
        .replaceAll("\\s+", " ");
  }

  private static IllegalArgumentException refuse(String text, QuantityKind<?> kind, String why) {
    return new IllegalArgumentException(
        kind.name()
            + " must be a number and a unit such as \"1.5 "
            + kind.siUnit().symbol()
            + "\", was \""
            + text
            + "\": "
            + why
            + " (units: "
            + kind.unitSymbols()
            + "; the decimal mark is a point)");
  }

  static String format(double si, NamedUnit<?> unit, int significantDigits) {
    return number(unit.fromSi(si), significantDigits) + separator(unit.symbol()) + unit.symbol();
  }

  static String exact(double si, NamedUnit<?> unit) {
    return (si + 0.0) + separator(unit.symbol()) + unit.symbol();
  }

  /** SI puts a space between number and unit, except before the degree, minute and second of arc. */
  private static String separator(String symbol) {
    return symbol.isEmpty() || symbol.equals("°") ? "" : " ";
  }

  /** A number to some significant digits, without trailing zeros; a power of ten only where digits would run on. */
  static String number(double value, int significantDigits) {
    if (significantDigits < 1 || significantDigits > 17) {
      throw new IllegalArgumentException("significant digits must be 1 to 17, was " + significantDigits);
    }
    if (!Double.isFinite(value)) {
      return Double.isNaN(value) ? "NaN" : value > 0.0 ? "∞" : "−∞";
    }
    if (value == 0.0) {
      return "0";
    }
    BigDecimal rounded =
        new BigDecimal(value).round(new MathContext(significantDigits, RoundingMode.HALF_EVEN)).stripTrailingZeros();
    int exponent = rounded.precision() - rounded.scale() - 1;
    if (exponent >= SMALLEST_PLAIN_EXPONENT && exponent < PLAIN_EXPONENT) {
      return rounded.toPlainString();
    }
    return new BigDecimal(rounded.unscaledValue(), rounded.precision() - 1).stripTrailingZeros().toPlainString()
        + "e"
        + exponent;
  }
}
