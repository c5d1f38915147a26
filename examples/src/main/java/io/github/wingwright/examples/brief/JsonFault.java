// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.brief;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonStreamContext;
import java.util.List;
import java.util.function.Function;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What breaks the rules of JSON, told to the author of a brief: what stands there, what must stand there, and where the
 * thing began that is not closed. The parser tells its programmers; here its messages are only recognised.
 */
final class JsonFault {
  private static final String VALUE =
      "a value must stand here: text in quotation marks, a number, true or false, a list in brackets or an object in braces";

  /** A message of the parser, and the same for the author. */
  private record Known(Pattern pattern, Function<MatchResult, String> words) {}

  private static final List<Known> KNOWN =
      List.of(
          known("Unexpected end-of-input.*(VALUE_STRING|string value)", m -> "the file ends inside a text; its closing quotation mark is missing"),
          known("Unexpected end-of-input in field name", m -> "the file ends inside the name of a field; its closing quotation mark is missing"),
          known("Unexpected end-of-input.*", m -> "the file ends too early"),
          known("Duplicate field '(.*)'", m -> "the field \"" + m.group(1) + "\" is there twice; leave one of them out"),
          known("Unexpected close marker '(.)': no open .*", m -> "'" + m.group(1) + "' closes nothing; leave it out"),
          known(
              "Unexpected close marker '(.)': expected '(.)'.*",
              m -> "'" + m.group(1) + "' stands where '" + m.group(2) + "' must close what was opened"),
          known("Unexpected character \\('/' .*", m -> "JSON has no comments; leave out what follows the '/'"),
          known("Unexpected character \\('(.)' .*comma to separate.*", m -> missingComma(m.group(1))),
          known("Unexpected character \\('(.)' .*a colon.*", m -> "a colon must stand between the name of a field and its value, was '" + m.group(1) + "'"),
          known("Unexpected character \\('(.)' .*in numeric value.*", m -> "a number is written like 12, 0.5 or 1e-3, with digits on both sides of the point and no plus in front, was '" + m.group(1) + "' in one"),
          known("Unexpected character \\('([}\\],])' .*", m -> "an entry is missing before the '" + m.group(1) + "'; leave out a comma, or put in what is missing"),
          known("Unexpected character \\('(.)' .*hex-digit.*", m -> "\\u in a text must be followed by four hexadecimal digits, was '" + m.group(1) + "'"),
          known("Unexpected character \\('([^a-zA-Z0-9.+-])' .*(double-quote|valid value).*", m -> quotes(m.group(1))),
          known("Unexpected character \\('(.)' .*double-quote.*", m -> noName(m.group(1))),
          known("Unexpected character \\('(.)' .*valid value.*", m -> VALUE + ", was '" + m.group(1) + "'; a number begins with a digit or a minus"),
          known("Non-standard token '(.*)'", m -> "a number must be finite, was " + m.group(1)),
          known("Unrecognized token '(.*)':.*", m -> VALUE + ", was " + m.group(1)),
          known("Invalid numeric value: Leading zeroes.*", m -> "a number must not begin with a further zero"),
          known("Illegal unquoted character \\(\\(CTRL-CHAR, code (10|13)\\)\\).*", m -> "a text must end on the line on which it began; its closing quotation mark is missing"),
          known("Illegal unquoted character \\(\\(CTRL-CHAR, code (\\d+)\\)\\).*", m -> "a text must not hold control characters such as tabs; put a space or \\t, was the one of code " + m.group(1)),
          known("Unrecognized character escape '(.)'.*", m -> "a backslash in a text must be followed by one of \" \\ / b f n r t u, was '" + m.group(1) + "'"),
          known("(?:Number value|String value|Name) length \\((\\d+)\\) exceeds the maximum allowed \\((\\d+).*", m -> "a number or a name must have at most " + m.group(2) + " characters, had " + m.group(1)));

  private JsonFault() {}

  private static Known known(String pattern, Function<MatchResult, String> words) {
    return new Known(Pattern.compile(pattern, Pattern.DOTALL), words);
  }

  private static String missingComma(String found) {
    return "a comma or the closing bracket must follow the value before, was '"
        + found
        + "'; is a comma missing, or the quotation marks around a text?";
  }

  private static String noName(String found) {
    boolean digit = Character.isDigit(found.charAt(0));
    return "the name of a field must stand here, in quotation marks like \"this\", was '"
        + found
        + (digit ? "'; the decimal mark of a number is a point" : "'");
  }

  private static String quotes(String found) {
    return "text and names must stand in plain quotation marks like \"this\", was '" + found + "'";
  }

  /** The fault in words, with what was opened and not closed where the file ends too early. */
  static String words(JsonProcessingException fault, JsonParser parser) {
    String message = fault.getOriginalMessage();
    for (Known one : KNOWN) {
      Matcher matcher = one.pattern().matcher(message);
      if (matcher.lookingAt()) {
        return one.words().apply(matcher.toMatchResult()) + opened(message, parser);
      }
    }
    return "what stands here breaks the rules of JSON";
  }

  private static String opened(String message, JsonParser parser) {
    JsonStreamContext context = parser.getParsingContext();
    boolean open = message.startsWith("Unexpected end-of-input") || message.contains("expected '");
    if (!open || !message.matches("(?s).*(close marker|within|expected ').*") || context.inRoot()) {
      return "";
    }
    JsonLocation at = context.startLocation(parser.currentTokenLocation().contentReference());
    return ": the "
        + (context.inArray() ? "list" : "object")
        + " that begins in line "
        + at.getLineNr()
        + ", column "
        + at.getColumnNr()
        + " is not closed";
  }
}
