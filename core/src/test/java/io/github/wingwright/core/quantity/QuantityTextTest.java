// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Text in and out: what is read, what is refused and how, and that what is written can be read again. */
class QuantityTextTest {
  /** Half a unit in the sixth digit of 1.00000, and the rounding of two conversions. */
  private static final double SIX_DIGITS = 5e-6 * (1 + 1e-9);

  static Stream<QuantityKind<?>> kinds() {
    return Kinds.all();
  }

  static Stream<String> locales() {
    return Stream.of("de-DE", "tr-TR", "ar-EG-u-nu-arab", "fa-IR-u-nu-arabext", "hi-IN-u-nu-deva", "fr-FR", "sv-SE");
  }

  @ParameterizedTest
  @CsvSource(delimiter = ';', textBlock = """
      1.2 m          ; 1.2
      1e-3 m         ; 0.001
      1E-3 m         ; 0.001
      1234.5 m       ; 1234.5
      +5 mm          ; 0.005
      -5 mm          ; -0.005
      −5 mm          ; -0.005
      5mm            ; 0.005
      .5 m           ; 0.5
      5. m           ; 5
      00012 m        ; 12
      5 ft 3 in      ; 1.6002
      5' 3\"         ; 1.6002
      5′ 3″          ; 1.6002
      -5 ft 3 in     ; -1.6002
      -0 ft 3 in     ; -0.0762
      1 m 20 cm 5 mm ; 1.205
      12 um          ; 0.000012
      12 µm          ; 0.000012
      12 μm          ; 0.000012
      0 m            ; 0
      1e-400 m       ; 0
      """)
  void reads_lengths(String text, double metres) {
    assertThat(Length.parse(text).metres()).isCloseTo(metres, within(1e-15 * Math.abs(metres)));
  }

  @Test
  void reads_blanks_of_all_widths() {
    assertThat(Length.parse(" \t1.5\u00a0m\u00a0")).isEqualTo(Length.metres(1.5));
    assertThat(Length.parse("1.5\u202fm")).isEqualTo(Length.metres(1.5));
    assertThat(Area.parse("3  sq   ft")).isEqualTo(Area.squareFeet(3));
  }

  @Test
  void reads_units_in_ascii() {
    assertThat(Area.parse("2 dm2")).isEqualTo(Area.parse("2 dm^2")).isEqualTo(Area.parse("2 dm²"));
    assertThat(Moment.parse("2 N*m")).isEqualTo(Moment.parse("2 N·m")).isEqualTo(Moment.parse("2 N⋅m"));
    assertThat(Temperature.parse("20 degC")).isEqualTo(Temperature.degreesCelsius(20));
    assertThat(Temperature.parse("-10 °C")).isEqualTo(Temperature.degreesCelsius(-10));
    assertThat(Angle.parse("8°")).isEqualTo(Angle.degrees(8));
  }

  @Test
  void remembers_the_unit_it_read() {
    QuantityKind.Written<Length> written = Length.KIND.parseWithUnit("5 ft 3 in");
    assertThat(written.unit()).isSameAs(Length.FOOT);
    assertThat(written.value()).isEqualTo(Length.inches(63));
  }

  @ParameterizedTest
  @CsvSource(delimiter = ';', quoteCharacter = '`', textBlock = """
      ``           ; it is empty
      `   `        ; it is empty
      1.5          ; the number has no unit
      1,5 m        ; the decimal mark is a comma
      1.234,5 m    ; the decimal mark is a comma
      1 kg         ; "kg" is a unit of mass, not of length
      1 N·m        ; "N·m" is a unit of moment, not of length
      1 furlong    ; "furlong" is not one of its units
      1 M          ; "M" is not one of its units
      m            ; there is no number at "m"
      NaN m        ; there is no number at "NaN m"
      Infinity m   ; there is no number at "Infinity m"
      ∞ m          ; there is no number at "∞ m"
      --5 m        ; it has two signs
      +-5 m        ; it has two signs
      5 ft 13 in   ; "13 in" after "ft" must be less than one ft
      5.5 ft 3 in  ; only the last term may have decimals
      - 5 m        ; there is no number at "- 5 m"
      ５ m         ; there is no number at "５ m"
      ١٢ m         ; there is no number at "١٢ m"
      5 ft -3 in   ; only the first term may have a sign
      5 ft +3 in   ; only the first term may have a sign
      3 in 5 ft    ; each further term needs a smaller unit
      1 m 2 m      ; each further term needs a smaller unit
      1 m 5        ; the number has no unit
      1e400 m      ; the number is too large
      1e308 km     ; the number is too large
      0x10 m       ; "x10 m" is not one of its units
      1_000 m      ; "_000 m" is not one of its units
      1d m         ; "d m" is not one of its units
      """)
  void refuses_and_says_why_and_what_is_accepted(String text, String why) {
    assertThatThrownBy(() -> Length.parse(text))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("was \"" + text + "\": " + why)
        .hasMessageContaining("(units: m, mm, cm, µm, km, in, ft, yd, mi, NM; the decimal mark is a point)");
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void every_kind_refuses_alike(QuantityKind<?> kind) {
    for (String text : List.of("", "1", "1 xyz", "NaN " + kind.siUnit(), "1,5 " + kind.siUnit(), "--1 " + kind.siUnit())) {
      assertThatThrownBy(() -> kind.parse(text))
          .as("%s from \"%s\"", kind, text)
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageStartingWith(kind.name() + " must be a number and a unit such as \"1.5 " + kind.siUnit() + "\"")
          .hasMessageContaining("was \"" + text + "\"")
          .hasMessageContaining("units: " + kind.unitSymbols())
          .hasMessageContaining("the decimal mark is a point");
    }
  }

  @Test
  void a_temperature_has_one_term() {
    assertThatThrownBy(() -> Temperature.parse("20 °C 5 K")).hasMessageContaining("each further term");
  }

  @ParameterizedTest
  @ValueSource(ints = {201, 10_000, 1_000_000})
  void refuses_very_long_text_in_a_short_message(int length) {
    assertThatThrownBy(() -> Length.parse("1".repeat(length - 2) + " m"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("it is longer than 200 characters")
        .satisfies(e -> assertThat(e.getMessage()).hasSizeLessThan(400));
  }

  @Test
  void reads_two_hundred_characters_that_try_its_patience() {
    assertThatThrownBy(() -> Length.parse("1 " + "a ".repeat(98) + "1"))
        .isInstanceOf(IllegalArgumentException.class);
    assertThat(Length.parse("0".repeat(197) + "1 m")).isEqualTo(Length.metres(1));
  }

  @ParameterizedTest
  @MethodSource("locales")
  void neither_reading_nor_writing_depends_on_the_default_locale(String tag) {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(tag));
      assertThat(Length.parse("1234.5 m").metres()).isEqualTo(1234.5);
      assertThat(Length.parse("1e-3 m").metres()).isEqualTo(0.001);
      assertThat(Length.parse("1 in")).isEqualTo(Length.inches(1));
      assertThat(Length.metres(1234.5)).hasToString("1.2345 km");
      assertThat(Length.inches(1234567.25).format(Length.INCH, 9)).isEqualTo("1234567.25 in");
      assertThat(Length.metres(0.1).toExactText()).isEqualTo("0.1 m");
      assertThat(Pressure.pascals(-1.5e12).format(Pressure.PASCAL)).isEqualTo("-1.5e12 Pa");
      assertThatThrownBy(() -> Length.parse("1,5 m")).hasMessageContaining("such as \"1.5 m\"");
      assertThatThrownBy(() -> Length.metres(Double.NaN)).hasMessage("length must be a finite number of m, was NaN");
    } finally {
      Locale.setDefault(before);
    }
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void exact_text_gives_the_same_bits(QuantityKind<?> kind) {
    for (double si : Kinds.values(kind, 11, 1_000)) {
      ScalarQuantity<?> quantity = kind.ofSi(si);
      assertThat(Double.doubleToLongBits(kind.parse(quantity.toExactText()).si()))
          .as(quantity.toExactText())
          .isEqualTo(Double.doubleToLongBits(si));
    }
    for (double si : new double[] {Double.MIN_VALUE, Double.MIN_NORMAL, Double.MAX_VALUE, 0.1 + 0.2, Math.PI}) {
      assertThat(kind.parse(kind.ofSi(si).toExactText()).si()).isEqualTo(si);
    }
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void six_digit_text_gives_the_value_to_six_digits_in_every_unit(QuantityKind<?> kind) {
    roundTrips(kind);
  }

  private static <Q extends ScalarQuantity<Q>> void roundTrips(QuantityKind<Q> kind) {
    for (NamedUnit<Q> unit : kind.units()) {
      for (double number : Kinds.values(kind, 12, 200)) {
        Q quantity = kind.of(number, unit);
        String text = quantity.format(unit);
        double expected = quantity.in(unit);
        // an offset costs digits: 1e-9 °C is 273.15 K and some
        double lost = 1e-12 * Math.abs(unit.toSi(0.0));
        assertThat(kind.parse(text).in(unit))
            .as(text)
            .isCloseTo(expected, within(SIX_DIGITS * Math.abs(expected) + lost));
        assertThat(text).hasSizeLessThanOrEqualTo(75);
      }
    }
    for (double si : Kinds.values(kind, 13, 200)) {
      Q quantity = kind.ofSi(si);
      NamedUnit<Q> shown = kind.parseWithUnit(quantity.toString()).unit();
      assertThat(kind.parse(quantity.toString()).in(shown))
          .as(quantity.toString())
          .isCloseTo(quantity.in(shown), within(SIX_DIGITS * Math.abs(quantity.in(shown)) + 1e-12 * shown.toSi(0.0)));
    }
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void every_spelling_of_a_unit_means_that_unit_alone(QuantityKind<?> kind) {
    Set<String> spellings = new HashSet<>();
    for (NamedUnit<?> unit : kind.units()) {
      spellings.add(unit.symbol());
      assertThat(kind.parseWithUnit("1.5 " + unit.symbol()).unit()).isSameAs(unit);
      for (String alias : unit.aliases()) {
        assertThat(spellings.add(alias)).as("%s of %s is taken", alias, kind).isTrue();
        assertThat(kind.parseWithUnit("1.5" + alias).unit()).as(alias).isSameAs(unit);
      }
    }
    assertThat(spellings.stream().filter(kind.unitSymbols()::contains)).hasSizeGreaterThanOrEqualTo(kind.units().size());
  }

  @ParameterizedTest
  @CsvSource({
    "0.3, 300 mm", "0.0003, 0.3 mm", "3e-9, 0.003 µm", "0.9999999, 1000 mm", "1, 1 m", "1500, 1.5 km", "-0.0245, -24.5 mm",
    "1e12, 1e9 km", "0, 0 m", "-0.0, 0 m", "1e-12, 1e-6 µm"
  })
  void writes_the_handiest_unit(double metres, String text) {
    assertThat(Length.metres(metres)).hasToString(text);
  }

  @Test
  void writes_as_many_digits_as_asked_for() {
    assertThat(Length.metres(0.3).format(Length.INCH)).isEqualTo("11.811 in");
    assertThat(Length.metres(0.3).format(Length.INCH, 3)).isEqualTo("11.8 in");
    assertThat(Length.metres(0.3).format(Length.INCH, 1)).isEqualTo("10 in");
    assertThat(Angle.degrees(8).format(Angle.DEGREE)).isEqualTo("8°");
    assertThat(NamedUnit.NUMBER.format(20537.6, 5)).isEqualTo("20538");
    assertThat(NamedUnit.NUMBER.format(Double.NEGATIVE_INFINITY, 5)).isEqualTo("−∞");
    for (int digits : new int[] {0, 18, -1}) {
      assertThatThrownBy(() -> Length.metres(1).format(Length.METRE, digits))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessage("significant digits must be 1 to 17, was " + digits);
    }
  }
}
