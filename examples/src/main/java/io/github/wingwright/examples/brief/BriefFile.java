// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.brief;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads a file of JSON into {@link Field}s. */
public final class BriefFile {
  /** A brief is a page of text; a file larger than this is something else. */
  private static final int LARGEST = 1_000_000;

  private static final int DEEPEST = 20;

  private static final JsonFactory JSON =
      new JsonFactoryBuilder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

  private BriefFile() {}

  /**
   * Reads a file.
   *
   * @param file the file
   * @return its top object
   * @throws BriefException if it is not there, too large, or not JSON
   */
  public static Field read(Path file) {
    try {
      if (Files.isDirectory(file)) {
        throw new BriefException(file + ": is a folder; the argument must be the path of a brief in JSON");
      }
      if (!Files.exists(file)) {
        throw new BriefException(file + ": there is no such file; the argument must be the path of a brief in JSON");
      }
      if (!Files.isRegularFile(file)) {
        throw new BriefException(file + ": is no plain file; the argument must be the path of a brief in JSON");
      }
      if (!Files.isReadable(file)) {
        throw new BriefException(file + ": may not be read by you; give yourself the right to read it");
      }
      if (Files.size(file) > LARGEST) {
        throw new BriefException(file + ": a brief must be at most 1 MB, was " + Files.size(file) + " bytes");
      }
      return parse(String.valueOf(file.getFileName()), Files.readString(file, StandardCharsets.UTF_8));
    } catch (CharacterCodingException e) {
      throw new BriefException(file + ": is not text in UTF-8; a brief is a text file in JSON", e);
    } catch (IOException e) {
      throw new BriefException(file + ": cannot be read: " + e.getMessage(), e);
    }
  }

  /**
   * Reads text.
   *
   * @param name name of the brief, for messages
   * @param json the text
   * @return its top object
   * @throws BriefException if it is not JSON, or not an object
   */
  public static Field parse(String name, String json) {
    if (json.length() > LARGEST) {
      throw new BriefException(name + ": a brief must be at most 1 MB, was " + json.length() + " characters");
    }
    // An editor may have put a byte order mark in front.
    String text = json.startsWith("\uFEFF") ? json.substring(1) : json;
    if (text.isBlank()) {
      throw new BriefException(name + ", line 1, column 1: the file is empty; a brief must be a JSON object in braces");
    }
    if (text.indexOf('\0') >= 0) {
      throw new BriefException(name + ": is not a text file; a brief is a text file in JSON");
    }
    try (JsonParser parser = JSON.createParser(text)) {
      return top(name, parser);
    } catch (IOException e) {
      throw new BriefException(name + ": cannot be read: " + e.getMessage(), e);
    }
  }

  private static Field top(String name, JsonParser parser) throws IOException {
    try {
      if (parser.nextToken() != JsonToken.START_OBJECT) {
        throw new BriefException(place(name, "", parser) + ": a brief must be a JSON object in braces");
      }
      Field top = value(name, "", parser, 0);
      if (parser.nextToken() != null) {
        throw new BriefException(place(name, "", parser) + ": nothing may follow the closing brace");
      }
      return top;
    } catch (JsonProcessingException e) {
      JsonLocation at = e.getLocation() == null ? parser.currentLocation() : e.getLocation();
      throw new BriefException(
          name + ", line " + at.getLineNr() + ", column " + at.getColumnNr() + ": not JSON: " + JsonFault.words(e, parser), e);
    }
  }

  private static Field value(String file, String path, JsonParser parser, int depth) throws IOException {
    Field.Place place = place(file, path, parser);
    if (depth > DEEPEST) {
      throw new BriefException(place + ": objects must not be nested deeper than " + DEEPEST);
    }
    JsonToken token = parser.currentToken();
    return switch (token) {
      case START_OBJECT -> new Field(place, fields(file, path, parser, depth));
      case START_ARRAY -> new Field(place, items(file, path, parser, depth));
      case VALUE_STRING -> new Field(place, parser.getText());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Field(place, finite(place, parser.getText()));
      case VALUE_TRUE, VALUE_FALSE -> new Field(place, token == JsonToken.VALUE_TRUE);
      default -> throw new BriefException(place + ": null is not a value; leave the field out");
    };
  }

  private static double finite(Field.Place place, String text) {
    double number = Double.parseDouble(text);
    if (!Double.isFinite(number)) {
      throw new BriefException(place + ": a number must be finite, was " + text);
    }
    return number;
  }

  private static Map<String, Field> fields(String file, String path, JsonParser parser, int depth) throws IOException {
    Map<String, Field> fields = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = parser.currentName();
      parser.nextToken();
      fields.put(name, value(file, path.isEmpty() ? name : path + "." + name, parser, depth + 1));
    }
    return fields;
  }

  private static List<Field> items(String file, String path, JsonParser parser, int depth) throws IOException {
    List<Field> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(value(file, path + "[" + items.size() + "]", parser, depth + 1));
    }
    return items;
  }

  private static Field.Place place(String file, String path, JsonParser parser) {
    JsonLocation at = parser.currentTokenLocation();
    return new Field.Place(file, path, at.getLineNr(), at.getColumnNr());
  }
}
