// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.brief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.quantity.Length;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What the author of a brief is told: the place, the key, the value, and what is allowed. */
class BriefRefusalTest {
  private static final String UNITS = " (units: m, mm, cm, µm, km, in, ft, yd, mi, NM; the decimal mark is a point)";

  @TempDir Path temporary;

  /** The fields of this small brief: a length, a count and a name. */
  private static void read(String json) {
    Field top = BriefFile.parse("b.json", json);
    top.required("span").quantity(Length.KIND, "1 mm", "10 m");
    top.optional("pieces").ifPresent(f -> f.whole(1, 9));
    top.optional("ratio").ifPresent(f -> f.number(Interval.between(1.0, 2.0)));
    top.refuseTheRest();
  }

  private static Arguments span(String value, String says) {
    return Arguments.of("{\n  \"span\": " + value + "\n}", "b.json, line 2, column 11, field \"span\": " + says);
  }

  private static Arguments quantity(String text, String why) {
    return span(
        "\"" + text + "\"", "length must be a number and a unit such as \"1.5 m\", was \"" + text + "\": " + why + UNITS);
  }

  static Stream<Arguments> briefs() {
    return Stream.of(
        quantity("5 ft 13 in", "\"13 in\" after \"ft\" must be less than one ft"),
        quantity("5 ft -3 in", "only the first term may have a sign"),
        quantity("5.5 ft 3 in", "only the last term may have decimals"),
        quantity("5 m 3 m", "each further term needs a smaller unit than the one before"),
        quantity("1,5 m", "the decimal mark is a comma"),
        quantity("1e400 m", "the number is too large"),
        quantity("--5 m", "it has two signs"),
        quantity("+-5 m", "it has two signs"),
        quantity("NaN m", "there is no number at \"NaN m\""),
        quantity("12", "the number has no unit"),
        quantity("3 kg", "\"kg\" is a unit of mass, not of length"),
        quantity("5 m wide", "\"m wide\" is not one of its units"),
        span("\"-5 mm\"", "length must be 1 mm to 10 m, was -5 mm"),
        span("\"0 m\"", "length must be 1 mm to 10 m, was 0 m"),
        span("\"1e30 m\"", "length must be 1 mm to 10 m, was 1e30 m"),
        span("0.4", "must be a length as text with a unit (m, mm, cm, µm, km, in, ft, yd, mi, NM), was 0.4"),
        span("[1]", "must be a length as text with a unit (m, mm, cm, µm, km, in, ft, yd, mi, NM), was a list"),
        span("{}", "must be a length as text with a unit (m, mm, cm, µm, km, in, ft, yd, mi, NM), was an object"),
        span("null", "null is not a value; leave the field out"),
        Arguments.of(
            "{\"span\": \"1 m\", \"piecse\": 2}",
            "b.json, line 1, column 27, field \"piecse\": unknown field, did you mean \"pieces\"?; accepted here are: span,"
                + " pieces, ratio"),
        Arguments.of(
            "{\"spam\": \"1 m\"}",
            "b.json, line 1, column 1: field \"span\" is missing; the fields here are: spam; is \"spam\" meant?"),
        Arguments.of("{}", "b.json, line 1, column 1: field \"span\" is missing; there is no field here at all"),
        Arguments.of(
            "{\"span\": \"1 m\", \"pieces\": 1.5}",
            "b.json, line 1, column 27, field \"pieces\": must be a whole number, was 1.5"),
        Arguments.of(
            "{\"span\": \"1 m\", \"ratio\": [1, 2]}",
            "b.json, line 1, column 26, field \"ratio\": must be a plain number, was a list"),
        Arguments.of(
            "{\"span\": \"1 m\", \"ratio\": 1e999}",
            "b.json, line 1, column 26, field \"ratio\": a number must be finite, was 1e999"),
        Arguments.of("", "b.json, line 1, column 1: the file is empty; a brief must be a JSON object in braces"),
        Arguments.of(" \n ", "b.json, line 1, column 1: the file is empty; a brief must be a JSON object in braces"),
        Arguments.of("[1]", "b.json, line 1, column 1: a brief must be a JSON object in braces"),
        Arguments.of("\u0000\u0001", "b.json: is not a text file; a brief is a text file in JSON"));
  }

  @ParameterizedTest
  @MethodSource("briefs")
  void a_refusal_says_place_key_value_and_what_is_allowed(String json, String message) {
    assertThatThrownBy(() -> read(json)).isInstanceOf(BriefException.class).hasMessage(message);
  }

  static Stream<Arguments> faults() {
    return Stream.of(
        fault("{\"span\": \"1 m\",\n \"span\": \"2 m\"}", 2, 8, "the field \"span\" is there twice; leave one of them out"),
        fault("{\"span\": \"1 m\",, \"pieces\": 2}", 1, 16, "an entry is missing before the ','; leave out a comma"),
        fault("{\"span\": \"1 m\",}", 1, 16, "an entry is missing before the '}'; leave out a comma"),
        fault("{\"a\": [1, 2,]}", 1, 13, "an entry is missing before the ']'"),
        fault("{\"a\": 1\n \"b\": 2}", 2, 2, "a comma or the closing bracket must follow the value before, was '\"'"),
        fault("{\"a\": 1 m}", 1, 9, "was 'm'; is a comma missing, or the quotation marks around a text?"),
        fault("{\"a\" 1}", 1, 6, "a colon must stand between the name of a field and its value, was '1'"),
        fault("{a: 1}", 1, 2, "the name of a field must stand here, in quotation marks like \"this\", was 'a'"),
        fault("{\"a\": 1,5}", 1, 9, "was '5'; the decimal mark of a number is a point"),
        fault("{'a': 1}", 1, 2, "text and names must stand in plain quotation marks like \"this\", was '''"),
        fault("{\"a\": “1 m”}", 1, 7, "text and names must stand in plain quotation marks like \"this\", was '“'"),
        fault("{\"a\": 01}", 1, 8, "a number must not begin with a further zero"),
        fault("{\"a\": 1.}", 1, 8, "a number is written like 12, 0.5 or 1e-3"),
        fault("{\"a\": .5}", 1, 7, "was '.'; a number begins with a digit or a minus"),
        fault("{\"a\": +5}", 1, 8, "no plus in front, was '+'"),
        fault("{\"a\": six}", 1, 7, "true or false, a list in brackets or an object in braces, was six"),
        fault("{\"a\": 1} // note", 1, 10, "JSON has no comments; leave out what follows the '/'"),
        fault("{\"a\": \"1 m\n}", 1, 11, "a text must end on the line on which it began; its closing quotation mark is missing"),
        fault("{\"a\": \"1\tm\"}", 1, 9, "a text must not hold control characters such as tabs"),
        fault("{\"a\": \"1 \\m\"}", 1, 11, "a backslash in a text must be followed by one of"),
        fault("{\"a\": \"1 \\u00zm\"}", 1, 14, "\\u in a text must be followed by four hexadecimal digits, was 'z'"),
        fault("{\"a\": [1, 2}", 1, 12, "'}' stands where ']' must close what was opened: the list that begins in line 1, column 7 is not"),
        fault("{\"a\": 1}}", 1, 9, "'}' closes nothing; leave it out"),
        fault("{\"a\": \"1 m", 1, 11, "the file ends inside a text; its closing quotation mark is missing"),
        fault("{\n  \"a\": {\"b\": 1", 2, 15, "the file ends too early: the object that begins in line 2, column 8 is not closed"),
        fault("{\"a\": 1." + "2".repeat(2_000) + "}", 1, 2_009, "must have at most 1000 characters, had 2001"));
  }

  private static Arguments fault(String json, int line, int column, String says) {
    return Arguments.of(json, "b.json, line " + line + ", column " + column + ": not JSON: ", says);
  }

  @ParameterizedTest
  @MethodSource("faults")
  void what_is_no_json_is_told_in_words_for_its_author_and_none_of_the_parser(String json, String place, String says) {
    assertThatThrownBy(() -> BriefFile.parse("b.json", json))
        .isInstanceOf(BriefException.class)
        .hasMessageStartingWith(place)
        .hasMessageContaining(says)
        .message()
        .doesNotContainIgnoringCase("unexpected", "token", "(code", "marker", "end-of-input");
  }

  @Test
  void a_folder_and_a_missing_file_are_told_apart() {
    assertThatThrownBy(() -> BriefFile.read(temporary)).hasMessageContaining(": is a folder; the argument must be");
    assertThatThrownBy(() -> BriefFile.read(temporary.resolve("none.json")))
        .hasMessageContaining("none.json: there is no such file");
  }

  @Test
  void an_empty_file_and_one_that_is_no_text_are_told_apart() throws IOException {
    Path empty = Files.createFile(temporary.resolve("empty.json"));
    assertThatThrownBy(() -> BriefFile.read(empty)).hasMessageContaining("empty.json, line 1, column 1: the file is empty");
    Path latin = Files.write(temporary.resolve("latin.json"), "{\"name\": \"ä\"}".getBytes(StandardCharsets.ISO_8859_1));
    assertThatThrownBy(() -> BriefFile.read(latin)).hasMessageContaining("latin.json: is not text in UTF-8");
  }

  @Test
  void what_is_far_from_every_word_gets_no_suggestion() {
    assertThat(NearMiss.of("colour", List.of("span", "pieces"))).isEmpty();
    assertThat(NearMiss.of("aspect-ratio", List.of("aspect_ratio", "taper_ratio"))).contains("aspect_ratio");
  }
}
