// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** One run of the program with what it said. */
record ProgramRun(int status, String out, String err) {

  static ProgramRun of(Path designs, String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int status = DesignProgram.run(
        arguments,
        designs,
        new PrintStream(out, true, StandardCharsets.UTF_8),
        new PrintStream(err, true, StandardCharsets.UTF_8));
    return new ProgramRun(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  static String builtInBrief() {
    try (InputStream in = DesignProgram.class.getResourceAsStream("hall-glider.json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The built-in brief with parts of its text replaced: pairs of what stands there and what shall. */
  static String changed(String... pairs) {
    String text = builtInBrief();
    for (int i = 0; i < pairs.length; i += 2) {
      if (!text.contains(pairs[i])) {
        throw new AssertionError("the built-in brief must contain " + pairs[i]);
      }
      text = text.replace(pairs[i], pairs[i + 1]);
    }
    return text;
  }

  static String write(Path folder, String brief) {
    try {
      return Files.writeString(folder.resolve("brief.json"), brief).toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Names of all that is in a folder, hidden files too. */
  static List<String> contents(Path folder) {
    if (!Files.exists(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
