// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.testing.SmallFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FullFolderTest {
  @TempDir
  Path temporary;

  /** What runs where files stay small: the first file still fits, the second does not. */
  static final class Child {
    private Child() {}

    public static void main(String[] arguments) {
      Map<String, String> files = new LinkedHashMap<>();
      files.put("BUILD.md", "new");
      files.put("report.html", "new ".repeat(1000));
      try {
        DesignFolder.write(Path.of(arguments[0]), files, Map.of("parts/a.stl", new byte[5000]));
        System.out.println("written");
      } catch (IOException e) {
        System.out.println(e.getMessage());
      }
    }
  }

  @Test
  void a_disk_that_fills_half_way_leaves_the_folder_before_whole() throws Exception {
    Path folder = temporary.resolve("glider");
    DesignFolder.write(folder, Map.of("report.html", "old"), Map.of("parts/a.stl", new byte[] {1}));
    Files.writeString(folder.resolve("notes.txt"), "flew well");
    assertThat(SmallFiles.run(Child.class, folder, DesignFolder.class))
        .singleElement().asString().startsWith(folder.resolve("report.html") + ": ");
    assertThat(folder.resolve("report.html")).hasContent("old");
    assertThat(folder.resolve("notes.txt")).hasContent("flew well");
    assertThat(folder.resolve("parts/a.stl")).hasBinaryContent(new byte[] {1});
    assertThat(ProgramRun.contents(temporary)).containsExactly("glider");
  }

  @Test
  void nothing_is_left_where_there_was_no_folder() throws Exception {
    SmallFiles.run(Child.class, temporary.resolve("glider"), DesignFolder.class);
    assertThat(ProgramRun.contents(temporary)).isEmpty();
  }
}
