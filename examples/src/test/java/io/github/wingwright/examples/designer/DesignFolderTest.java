// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DesignFolderTest {
  @TempDir
  Path temporary;

  @Test
  void a_folder_takes_the_place_of_the_one_before_with_all_it_held() throws IOException {
    Path folder = temporary.resolve("designs/glider");
    DesignFolder.write(folder, Map.of("old.txt", "old", "both.txt", "old"));
    DesignFolder.write(folder, Map.of("new.txt", "new", "both.txt", "new"));
    assertThat(ProgramRun.contents(folder)).containsExactly(DesignFolder.LIST, "both.txt", "new.txt");
    assertThat(folder.resolve("both.txt")).hasContent("new");
    assertThat(ProgramRun.contents(folder.getParent())).containsExactly("glider");
  }

  @Test
  void a_failure_half_way_leaves_what_was_there_and_nothing_else() throws IOException {
    Path folder = temporary.resolve("glider");
    DesignFolder.write(folder, Map.of("report.html", "old"));
    Map<String, String> files = new LinkedHashMap<>();
    files.put("report.html", "new");
    files.put("no/such/folder.txt", "cannot be written");
    assertThatThrownBy(() -> DesignFolder.write(folder, files)).isInstanceOf(IOException.class);
    assertThat(folder.resolve("report.html")).hasContent("old");
    assertThat(ProgramRun.contents(temporary)).containsExactly("glider");
  }

  @Test
  void a_folder_before_that_cannot_be_deleted_is_named_and_the_new_one_stands() throws IOException {
    Path folder = temporary.resolve("glider");
    assertThat(DesignFolder.write(folder, Map.of("report.html", "old"))).isEmpty();
    Path left =
        DesignFolder.write(folder, Map.of("report.html", "new"), Map.of(), old -> {
          throw new IOException("held open");
        }).orElseThrow();
    assertThat(folder.resolve("report.html")).hasContent("new");
    assertThat(left).isNotEqualTo(folder).hasParent(temporary);
    assertThat(left.resolve("report.html")).hasContent("old");
    assertThat(DesignFolder.write(folder, Map.of("report.html", "newer"))).isEmpty();
  }

  @Test
  void a_file_in_the_way_is_not_overwritten() throws IOException {
    Path file = Files.writeString(temporary.resolve("glider"), "a file");
    assertThatThrownBy(() -> DesignFolder.write(file, Map.of("report.html", "new")))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("not a folder");
    assertThat(file).hasContent("a file");
    assertThat(ProgramRun.contents(temporary)).containsExactly("glider");
  }

  @Test
  void a_file_in_place_of_the_folder_above_is_named_with_what_it_must_be() throws IOException {
    Path file = Files.writeString(temporary.resolve("designs"), "a file");
    assertThatThrownBy(() -> DesignFolder.write(file.resolve("glider"), Map.of("report.html", "new")))
        .isInstanceOf(IOException.class)
        .hasMessage(file + " must be a folder, is a file");
    assertThat(ProgramRun.contents(temporary)).containsExactly("designs");
  }

  /** To the one who may do everything no folder is closed. */
  @Test
  void a_folder_that_is_closed_is_named_and_not_a_temporary_one() throws IOException {
    Path closed = Files.createDirectory(temporary.resolve("closed"));
    assumeTrue(closed.toFile().setWritable(false) && !Files.isWritable(closed));
    assertThatThrownBy(() -> DesignFolder.write(closed.resolve("glider"), Map.of("report.html", "new")))
        .isInstanceOf(IOException.class)
        .hasMessage(closed + " must be a folder that may be written to, it or what it lies in may not");
    assertThat(ProgramRun.contents(closed)).isEmpty();
  }

  @Test
  void what_the_program_did_not_write_is_moved_over() throws IOException {
    Path folder = temporary.resolve("glider");
    DesignFolder.write(folder, Map.of("report.html", "old"), Map.of("parts/old.stl", new byte[] {1}));
    Files.writeString(folder.resolve("notes.txt"), "flew well");
    Files.writeString(folder.resolve("parts/mine.stl"), "mine");
    Files.writeString(Files.createDirectories(folder.resolve("photos/june")).resolve("first.txt"), "a picture");
    for (int again = 0; again < 2; again++) {
      DesignFolder.write(folder, Map.of("report.html", "new"), Map.of("parts/new.stl", new byte[] {2}));
      assertThat(folder.resolve("report.html")).hasContent("new");
      assertThat(folder.resolve("notes.txt")).hasContent("flew well");
      assertThat(folder.resolve("parts/mine.stl")).hasContent("mine");
      assertThat(folder.resolve("photos/june/first.txt")).hasContent("a picture");
      assertThat(folder.resolve("parts/new.stl")).exists();
      assertThat(folder.resolve("parts/old.stl")).doesNotExist();
      assertThat(ProgramRun.contents(temporary)).containsExactly("glider");
    }
  }

  @Test
  void a_file_of_someone_elses_by_the_name_of_one_to_be_written_refuses_the_folder() throws IOException {
    Path folder = Files.createDirectory(temporary.resolve("glider"));
    Files.writeString(folder.resolve("report.html"), "mine");
    assertThatThrownBy(() -> DesignFolder.write(folder, Map.of("report.html", "new", "other.txt", "new")))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("report.html was not written by the program");
    assertThat(folder.resolve("report.html")).hasContent("mine");
    assertThat(ProgramRun.contents(folder)).containsExactly("report.html");
    assertThat(ProgramRun.contents(temporary)).containsExactly("glider");
  }

  @Test
  void a_folder_has_the_permissions_of_any_folder_made_there() throws IOException {
    assumeTrue(Files.getFileStore(temporary).supportsFileAttributeView("posix"));
    Path usual = Files.createDirectory(temporary.resolve("usual"));
    Path folder = temporary.resolve("glider");
    DesignFolder.write(folder, Map.of("report.html", "new"));
    assertThat(Files.getPosixFilePermissions(folder)).isEqualTo(Files.getPosixFilePermissions(usual));
  }

  @Test
  void the_program_says_that_it_cannot_write_and_ends_with_one() throws IOException {
    // A plain file stands where the folder of designs should be: nobody can write there, not even the superuser.
    Path designs = Files.writeString(temporary.resolve("designs"), "in the way");
    ProgramRun run = ProgramRun.of(designs);
    assertThat(run.status()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().lines()).hasSize(1);
    assertThat(run.err()).contains("cannot be written", designs.toString());
    assertThat(designs).hasContent("in the way");
    assertThat(ProgramRun.contents(temporary)).containsExactly("designs");
  }

  @Test
  void a_file_named_as_the_design_keeps_the_program_from_writing() throws IOException {
    Files.writeString(temporary.resolve("hall-glider"), "mine");
    ProgramRun run = ProgramRun.of(temporary);
    assertThat(run.status()).isEqualTo(1);
    assertThat(run.err()).contains("hall-glider", "not a folder");
    assertThat(ProgramRun.contents(temporary)).containsExactly("hall-glider");
  }
}
