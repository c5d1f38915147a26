// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Runs a class in a Java machine of its own in which no file may become longer than one block of the shell (512 or 1,024
 * bytes): the operating system then fails a write half way, as it does on a full disk.
 */
public final class SmallFiles {
  private SmallFiles() {}

  /**
   * Runs the main method of a class so.
   *
   * @param main the class
   * @param folder its only argument
   * @param needed classes from whose places the class path is made
   * @return the lines it printed; the test is skipped where there is no such shell
   */
  public static List<String> run(Class<?> main, Path folder, Class<?>... needed)
      throws IOException, InterruptedException {
    assumeTrue(Files.isExecutable(Path.of("/bin/sh")));
    String path = Stream.concat(Stream.of(main), Stream.of(needed)).map(SmallFiles::place).distinct()
        .collect(Collectors.joining(File.pathSeparator));
    List<String> command = new ArrayList<>(List.of("/bin/sh", "-c", "ulimit -f 1 && exec \"$@\"", "sh"));
    command.addAll(List.of(
        Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:-UsePerfData", "-XX:TieredStopAtLevel=1",
        "-cp", path, main.getName(), folder.toString()));
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).as(out).isZero();
    return out.lines().toList();
  }

  private static String place(Class<?> type) {
    try {
      return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI()).toString();
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }
}
