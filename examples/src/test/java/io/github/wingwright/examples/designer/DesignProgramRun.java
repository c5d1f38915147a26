// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Runs the program for tests of other packages. */
public final class DesignProgramRun {
  private DesignProgramRun() {}

  /** Designs the built-in brief into a folder and gives what was printed. */
  public static String ofBuiltInBrief(Path folder) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int status =
        DesignProgram.run(
            new String[0],
            folder,
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8));
    if (status != 0) {
      throw new AssertionError("status " + status + ": " + err.toString(StandardCharsets.UTF_8));
    }
    return out.toString(StandardCharsets.UTF_8);
  }
}
