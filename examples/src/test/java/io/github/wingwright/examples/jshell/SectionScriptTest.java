// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.jshell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Runs the documented script as a user would; a script full of errors exits 0, so its output is compared. */
class SectionScriptTest {
  @Test
  void the_section_script_prints_a_polar_and_draws_two_pictures(@TempDir Path folder) throws IOException, InterruptedException {
    Path script = Path.of("src/main/jshell/section.jsh").toAbsolutePath();
    Path jshell = Path.of(System.getProperty("java.home"), "bin", "jshell");
    Path output = folder.resolve("output.txt");
    Process process = new ProcessBuilder(jshell.toString(), "-s", "--execution", "local",
            "--class-path", System.getProperty("java.class.path"),
            "-J--class-path=" + System.getProperty("java.class.path"), "-J-Dfile.encoding=UTF-8",
            "-J-Djava.util.prefs.userRoot=" + folder, script.toString())
        .directory(folder.toFile())
        // The log of the shell's own preferences; an error in the script leaves lines of the polar out.
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .redirectOutput(output.toFile())
        .start();
    process.getOutputStream().close();
    assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
    String printed = Files.readString(output, StandardCharsets.UTF_8);
    assertThat(printed.strip().lines())
        .as(printed)
        .hasSize(9)
        .allMatch(line -> line.matches("-?\\d\\.\\d\\d°, Re 80000: cl -?\\d\\.\\d{3}, cd 0\\.\\d{4}, cm -0\\.\\d{3}, .*"));
    assertThat(Files.readString(folder.resolve("section.svg"))).contains("<svg").contains("60 mm");
    assertThat(Files.readString(folder.resolve("polar.svg"))).contains("<svg").contains("drag coefficient");
  }
}
