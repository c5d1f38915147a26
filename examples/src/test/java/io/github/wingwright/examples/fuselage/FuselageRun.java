// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.examples.brief.BriefFile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** One run of the program with what it said. */
record FuselageRun(int status, String out, String err) {

  private static final Map<String, BodyStudy> STUDIES = new ConcurrentHashMap<>();

  static FuselageRun of(Path designs, String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int status =
        FuselageProgram.run(
            arguments,
            designs,
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8));
    return new FuselageRun(
        status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  static String brief(String name) {
    try (InputStream in = FuselageProgram.class.getResourceAsStream(name + ".json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A study takes a second or more, and never changes: each is made once. */
  static BodyStudy study(String brief) {
    return STUDIES.computeIfAbsent(
        brief, text -> BodyStudy.of(FuselageBrief.from(BriefFile.parse("brief.json", text))));
  }

  /** A built-in brief with parts of its text replaced: pairs of what stands there and what shall. */
  static String changed(String name, String... pairs) {
    String text = brief(name);
    for (int i = 0; i < pairs.length; i += 2) {
      if (!text.contains(pairs[i])) {
        throw new AssertionError("the brief must contain " + pairs[i]);
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
}
