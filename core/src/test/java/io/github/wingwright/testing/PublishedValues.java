// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.testing;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A table of published values from a CSV resource beside the test.
 *
 * <p>The file is UTF-8. Blank lines and lines that start with {@code #} are comments; the first other line names the
 * columns; every further line is a row with as many fields. A field that holds a comma stands in double quotes, and a
 * double quote inside is written twice. Spaces around a field do not count.
 *
 * <pre>{@code
 * @ParameterizedTest
 * @MethodSource("published")
 * void matches_the_published_value(PublishedValues.Row row) {
 *     assertThat(density(row.number("altitude_m")))
 *             .as(row.toString())
 *             .isCloseTo(row.number("density_kg_m3"), withinPercentage(row.number("tolerance_percent")));
 * }
 *
 * static Stream<PublishedValues.Row> published() {
 *     return PublishedValues.beside(AtmosphereTest.class, "standard-atmosphere.csv").rows();
 * }
 * }</pre>
 */
public final class PublishedValues implements Iterable<PublishedValues.Row> {
  private final List<Row> rows;

  private PublishedValues(List<Row> rows) {
    this.rows = List.copyOf(rows);
  }

  /**
   * Reads the resource that lies in the package of a test class.
   *
   * @param test the test class
   * @param name the file name
   * @return the table, with at least one row
   */
  public static PublishedValues beside(Class<?> test, String name) {
    try (InputStream in = test.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalArgumentException(
            "resource must lie in package " + test.getPackageName() + ", was not there: " + name);
      }
      return parse(name, new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)).lines().toList());
    } catch (IOException e) {
      throw new UncheckedIOException(name, e);
    }
  }

  static PublishedValues parse(String name, List<String> lines) {
    List<String> columns = null;
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i).strip();
      if (line.isEmpty() || line.startsWith("#")) {
        continue;
      }
      String place = name + " line " + (i + 1);
      List<String> fields = fields(place, line);
      if (columns == null) {
        if (fields.stream().distinct().count() < fields.size()) {
          throw new IllegalArgumentException(place + ": column names must differ, were " + fields);
        }
        columns = fields;
      } else if (fields.size() == columns.size()) {
        rows.add(new Row(place, columns, fields));
      } else {
        throw new IllegalArgumentException(place + ": must have " + columns.size() + " fields, one for each of "
            + columns + ", had " + fields.size());
      }
    }
    if (rows.isEmpty()) {
      throw new IllegalArgumentException(name + ": must have a line of column names and at least one row");
    }
    return new PublishedValues(rows);
  }

  private static List<String> fields(String place, String line) {
    List<String> fields = new ArrayList<>();
    StringBuilder field = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '"' && quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
        field.append('"');
        i++;
      } else if (c == '"') {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        fields.add(field.toString().strip());
        field.setLength(0);
      } else {
        field.append(c);
      }
    }
    if (quoted) {
      throw new IllegalArgumentException(place + ": a quoted field must end on its line");
    }
    fields.add(field.toString().strip());
    return fields;
  }

  /**
   * The rows in the order of the file.
   *
   * @return a new stream
   */
  public Stream<Row> rows() {
    return rows.stream();
  }

  @Override
  public Iterator<Row> iterator() {
    return rows.iterator();
  }

  /** One row, its fields by the name of their column. */
  public static final class Row {
    private final String place;
    private final List<String> columns;
    private final List<String> fields;

    private Row(String place, List<String> columns, List<String> fields) {
      this.place = place;
      this.columns = List.copyOf(columns);
      this.fields = List.copyOf(fields);
    }

    /**
     * A field as text.
     *
     * @param column the name of its column
     * @return the text, empty if the field is
     */
    public String text(String column) {
      int index = columns.indexOf(column);
      if (index < 0) {
        throw new IllegalArgumentException(place + ": column must be one of " + columns + ", was " + column);
      }
      return fields.get(index);
    }

    /**
     * A field as a finite number, with a decimal point.
     *
     * @param column the name of its column
     * @return the number
     */
    public double number(String column) {
      String text = text(column);
      double number;
      try {
        number = Double.parseDouble(text);
      } catch (NumberFormatException e) {
        number = Double.NaN;
      }
      if (!Double.isFinite(number)) {
        throw new IllegalArgumentException(
            place + ", column " + column + ": must be a finite number, was \"" + text + "\"");
      }
      return number;
    }

    /**
     * Whether a field has something in it.
     *
     * @param column the name of its column
     * @return true if it is not empty
     */
    public boolean has(String column) {
      return !text(column).isEmpty();
    }

    /** Where the row is and what it holds, as a test's display name. */
    @Override
    public String toString() {
      return place + " " + fields;
    }
  }
}
