// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.testing.SmallFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each kind of file where the operating system fails the write half way. */
class FullDiskTest {
  private static final List<String> NAMES = List.of("parts.3mf", "part.stl", "sheet.svg", "sheet.pdf");

  @TempDir
  Path temporary;

  /** Writes one of the files. */
  private interface Writing {
    void to(Path file) throws IOException;
  }

  /** What runs in the machine with small files: tries all and prints what each said. */
  static final class Child {
    private Child() {}

    public static void main(String[] arguments) {
      Length mm = Length.millimetres(1);
      Part part = Part.of("tube", TubeSolid.of(mm.times(20), mm.times(9), mm.times(5)).mesh(mm.times(0.01)));
      Template sheet = Templates.body("body", BodySolid.of(FullDiskTest.body()));
      List<Writing> all = List.of(
          ThreeMfFile.titled("tube").with(part)::write,
          file -> StlFile.write(part, file),
          sheet::writeSvg,
          sheet::writePdf);
      for (int i = 0; i < all.size(); i++) {
        try {
          all.get(i).to(Path.of(arguments[0], NAMES.get(i)));
          System.out.println("written");
        } catch (IOException e) {
          System.out.println(e.getMessage());
        }
      }
    }
  }

  static Fuselage body() {
    return new Fuselage(
        BodyShape.capsule(), Length.millimetres(200), Length.millimetres(20));
  }

  @Test
  void a_write_that_fails_half_way_leaves_what_was_there_and_nothing_else() throws Exception {
    for (String name : NAMES) {
      Files.writeString(temporary.resolve(name), "as it was");
    }
    List<String> said = SmallFiles.run(Child.class, temporary, ThreeMfFile.class, Quantity.class);
    assertThat(said).hasSize(4);
    for (int i = 0; i < 4; i++) {
      Path file = temporary.resolve(NAMES.get(i));
      assertThat(said.get(i)).startsWith(file + " cannot be written: ").hasSizeGreaterThan(file.toString().length() + 24);
      assertThat(file).hasContent("as it was");
    }
    try (Stream<Path> left = Files.list(temporary)) {
      assertThat(left).hasSize(4);
    }
  }

  @Test
  void where_nobody_may_write_the_error_names_the_file() {
    Path forbidden = Path.of("/proc/sys/kernel");
    assumeTrue(Files.isDirectory(forbidden));
    Part shim = Part.of("shim", ShimSolid.of(
            Length.millimetres(50), Length.millimetres(10), Length.millimetres(1), Angle.degrees(1), Angle.ZERO)
        .mesh(Length.millimetres(0.1)));
    Path file = forbidden.resolve("shim.stl");
    assertThatThrownBy(() -> StlFile.write(shim, file)).isInstanceOf(IOException.class).hasMessageStartingWith(file + " cannot");
  }

  @Test
  void a_file_has_the_permissions_of_any_file_made_there() throws IOException {
    assumeTrue(Files.getFileStore(temporary).supportsFileAttributeView("posix"));
    Path usual = Files.writeString(temporary.resolve("usual"), "");
    Path file = temporary.resolve("sheet.svg");
    Templates.body("body", BodySolid.of(body())).writeSvg(file);
    assertThat(Files.getPosixFilePermissions(file)).isEqualTo(Files.getPosixFilePermissions(usual));
  }
}
