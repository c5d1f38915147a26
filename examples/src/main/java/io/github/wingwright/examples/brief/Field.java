// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.brief;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.QuantityKind;
import io.github.wingwright.core.quantity.ScalarQuantity;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * One value of a brief with its place in the file: text, a number, a truth value, a list, or an object of named fields.
 *
 * <p>An object notes which of its fields were asked for; {@link #refuseTheRest()} then names the others.
 */
public final class Field {
  private static final int LONGEST_QUOTE = 80;

  private final Place place;
  private final Object content;
  private final Set<String> asked = new LinkedHashSet<>();

  Field(Place place, Object content) {
    this.place = place;
    this.content = content;
  }

  /**
   * Where a value stands.
   *
   * @param file name of the file
   * @param path names of the fields from the top, joined by points
   * @param line line, from 1
   * @param column column, from 1
   */
  record Place(String file, String path, int line, int column) {
    @Override
    public String toString() {
      return file + ", line " + line + ", column " + column + (path.isEmpty() ? "" : ", field \"" + path + "\"");
    }
  }

  /**
   * An error at this place.
   *
   * @param requirement what must hold, and what was got
   * @return the exception, to be thrown
   */
  public BriefException error(String requirement) {
    return new BriefException(place + ": " + requirement);
  }

  /**
   * Runs something on this value and gives its complaint the place of this value.
   *
   * @param reader what to do with it
   * @param <T> what it gives
   * @return what it gave
   * @throws BriefException if the reader refuses the value
   */
  public <T> T as(Function<Field, T> reader) {
    try {
      return reader.apply(this);
    } catch (IllegalArgumentException | IllegalStateException e) {
      throw new BriefException(place + ": " + e.getMessage(), e);
    }
  }

  /**
   * A field that must be there.
   *
   * @param name its name
   * @return the field
   * @throws BriefException if it is missing
   */
  public Field required(String name) {
    return optional(name)
        .orElseThrow(() -> error("field \"" + name + "\" is missing; " + present(name)));
  }

  private String present(String missing) {
    Set<String> there = fields().keySet();
    Set<String> others = new LinkedHashSet<>(there);
    others.removeAll(asked);
    return there.isEmpty()
        ? "there is no field here at all"
        : "the fields here are: "
            + String.join(", ", there)
            + NearMiss.of(missing, others).map(near -> "; is \"" + near + "\" meant?").orElse("");
  }

  /**
   * A field that may be left out.
   *
   * @param name its name
   * @return the field, empty if it is not there
   */
  public Optional<Field> optional(String name) {
    asked.add(name);
    return Optional.ofNullable(fields().get(name));
  }

  /**
   * Refuses what was not asked for.
   *
   * @throws BriefException if there is a field that nobody asked for
   */
  public void refuseTheRest() {
    for (Map.Entry<String, Field> entry : fields().entrySet()) {
      if (!asked.contains(entry.getKey())) {
        throw entry
            .getValue()
            .error(
                "unknown field"
                    + NearMiss.of(entry.getKey(), asked).map(near -> ", did you mean \"" + near + "\"?").orElse("")
                    + "; accepted here are: "
                    + String.join(", ", asked));
      }
    }
  }

  /**
   * The named fields of an object.
   *
   * @return the fields in the order of the file
   * @throws BriefException if this is not an object
   */
  public Map<String, Field> fields() {
    if (content instanceof Map<?, ?> map) {
      Map<String, Field> fields = new LinkedHashMap<>();
      map.forEach((name, value) -> fields.put((String) name, (Field) value));
      return fields;
    }
    throw error("must be an object in braces, was " + describe());
  }

  /**
   * The values of a list.
   *
   * @return the values
   * @throws BriefException if this is not a list
   */
  public List<Field> items() {
    if (content instanceof List<?> list) {
      return list.stream().map(Field.class::cast).toList();
    }
    throw error("must be a list in brackets, was " + describe());
  }

  /**
   * A text.
   *
   * @return the text, not blank
   * @throws BriefException if this is not a text, or a blank one
   */
  public String text() {
    if (content instanceof String text && !text.isBlank()) {
      return text;
    }
    throw error("must be text in quotation marks, was " + describe());
  }

  /**
   * A truth value.
   *
   * @return true or false
   * @throws BriefException if this is neither
   */
  public boolean truth() {
    if (content instanceof Boolean truth) {
      return truth;
    }
    throw error("must be true or false, was " + describe());
  }

  /**
   * A number between two ends.
   *
   * @param accepted the values accepted
   * @return the number
   * @throws BriefException if this is not a number, or not an accepted one
   */
  public double number(Interval accepted) {
    if (!(content instanceof Double number)) {
      throw error("must be a plain number, was " + describe());
    }
    if (!accepted.contains(number)) {
      throw error("must be " + accepted + ", was " + NamedUnit.NUMBER.format(number, 6));
    }
    return number;
  }

  /**
   * A whole number between two ends.
   *
   * @param least least number accepted
   * @param most greatest number accepted
   * @return the number
   * @throws BriefException if this is not a number, not a whole one, or not an accepted one
   */
  public int whole(int least, int most) {
    double number = number(Interval.between(least, most));
    if (number != Math.rint(number)) {
      throw error("must be a whole number, was " + describe());
    }
    return (int) number;
  }

  /**
   * A quantity between two ends, with the unit that it was written in.
   *
   * @param kind the kind of quantity
   * @param least least value accepted, as text with a unit
   * @param greatest greatest value accepted, as text with a unit
   * @param <Q> the type of the quantity
   * @return the quantity and its unit
   * @throws BriefException if this is not such a quantity, or not an accepted one
   */
  public <Q extends ScalarQuantity<Q>> QuantityKind.Written<Q> written(
      QuantityKind<Q> kind, String least, String greatest) {
    if (!(content instanceof String text)) {
      throw error("must be a " + kind.name() + " as text with a unit (" + kind.unitSymbols() + "), was " + describe());
    }
    if (text.length() > LONGEST_QUOTE) {
      throw error("must be a " + kind.name() + " with a unit (" + kind.unitSymbols() + "), was " + describe());
    }
    QuantityKind.Written<Q> written = as(f -> kind.parseWithUnit(text));
    if (written.value().compareTo(kind.parse(least)) < 0 || written.value().compareTo(kind.parse(greatest)) > 0) {
      throw error(kind.name() + " must be " + least + " to " + greatest + ", was " + text);
    }
    return written;
  }

  /**
   * A quantity between two ends.
   *
   * @param kind the kind of quantity
   * @param least least value accepted, as text with a unit
   * @param greatest greatest value accepted, as text with a unit
   * @param <Q> the type of the quantity
   * @return the quantity
   * @throws BriefException if this is not such a quantity, or not an accepted one
   */
  public <Q extends ScalarQuantity<Q>> Q quantity(QuantityKind<Q> kind, String least, String greatest) {
    return written(kind, least, greatest).value();
  }

  /**
   * One of a few words.
   *
   * @param type the enumeration; its words are its names in small letters
   * @param <E> the enumeration
   * @return the constant
   * @throws BriefException if this is none of them
   */
  public <E extends Enum<E>> E choice(Class<E> type) {
    String text = text();
    for (E constant : type.getEnumConstants()) {
      if (word(constant).equals(text)) {
        return constant;
      }
    }
    String words = Arrays.stream(type.getEnumConstants()).map(Field::word).collect(Collectors.joining(", "));
    Set<String> accepted = Arrays.stream(type.getEnumConstants()).map(Field::word).collect(Collectors.toSet());
    throw error(
        "must be one of: "
            + words
            + ", was "
            + describe()
            + NearMiss.of(text, accepted).map(near -> "; did you mean \"" + near + "\"?").orElse(""));
  }

  /**
   * Whether this is an object of named fields.
   *
   * @return false for a text, a number, a truth value or a list
   */
  public boolean isObject() {
    return content instanceof Map<?, ?>;
  }

  /**
   * Every value in this one as it is written, each under its path from here, for comparing two briefs.
   *
   * @return paths such as {@code "wing.span"} with their values as text
   */
  public Map<String, String> flat() {
    Map<String, String> flat = new LinkedHashMap<>();
    flatten("", flat);
    return flat;
  }

  private void flatten(String path, Map<String, String> flat) {
    if (content instanceof Map<?, ?> map) {
      map.forEach((name, value) -> ((Field) value).flatten(path.isEmpty() ? (String) name : path + "." + name, flat));
    } else if (content instanceof List<?> list) {
      for (int i = 0; i < list.size(); i++) {
        ((Field) list.get(i)).flatten(path + "[" + i + "]", flat);
      }
    } else {
      flat.put(path, content instanceof Double number ? NamedUnit.NUMBER.format(number, 10) : content.toString());
    }
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT);
  }

  private static String shortened(String text) {
    return text.length() <= LONGEST_QUOTE ? text : text.substring(0, LONGEST_QUOTE) + "…";
  }

  private String describe() {
    if (content instanceof Map<?, ?>) {
      return "an object";
    }
    if (content instanceof List<?>) {
      return "a list";
    }
    if (content instanceof String text) {
      return text.isBlank() ? "empty text" : "\"" + shortened(text) + "\"";
    }
    return content instanceof Double number ? NamedUnit.NUMBER.format(number, 10) : content.toString();
  }
}
