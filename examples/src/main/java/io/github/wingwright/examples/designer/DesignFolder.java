// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Writes a folder all at once: into a folder of a temporary name beside it, which takes its place when every file is
 * written. What was there before is there until then.
 */
public final class DesignFolder {
  private DesignFolder() {}

  /**
   * Writes a folder of texts.
   *
   * @param folder where
   * @param files name and text of each file
   * @throws IOException if it cannot be written; then nothing has changed
   */
  public static void write(Path folder, Map<String, String> files) throws IOException {
    write(folder, files, Map.of());
  }

  /**
   * Writes a folder of texts and of other files.
   *
   * @param folder where
   * @param files name and text of each file
   * @param others path, with folders of its own if need be, and bytes of each other file
   * @throws IOException if it cannot be written; then nothing has changed
   */
  public static void write(Path folder, Map<String, String> files, Map<String, byte[]> others) throws IOException {
    Path parent = folder.toAbsolutePath().getParent();
    if (parent == null) {
      throw new IOException("folder must have a parent, was " + folder);
    }
    Files.createDirectories(parent);
    Path fresh = Files.createTempDirectory(parent, "." + folder.getFileName() + "-");
    try {
      for (Map.Entry<String, String> file : files.entrySet()) {
        Files.writeString(fresh.resolve(file.getKey()), file.getValue(), StandardCharsets.UTF_8);
      }
      for (Map.Entry<String, byte[]> file : others.entrySet()) {
        Path path = fresh.resolve(file.getKey());
        Files.createDirectories(path.resolveSibling("."));
        Files.write(path, file.getValue());
      }
      replace(folder, fresh, parent);
    } finally {
      delete(fresh);
    }
  }

  private static void replace(Path folder, Path fresh, Path parent) throws IOException {
    if (!Files.exists(folder)) {
      Files.move(fresh, folder, StandardCopyOption.ATOMIC_MOVE);
      return;
    }
    if (!Files.isDirectory(folder)) {
      throw new IOException(folder + " is in the way and is not a folder");
    }
    Path old = parent.resolve("." + folder.getFileName() + "-replaced-" + fresh.getFileName());
    Files.move(folder, old, StandardCopyOption.ATOMIC_MOVE);
    try {
      Files.move(fresh, folder, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      Files.move(old, folder, StandardCopyOption.ATOMIC_MOVE);
      throw e;
    }
    delete(old);
  }

  private static void delete(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    List<Path> paths;
    try (Stream<Path> walk = Files.walk(folder)) {
      paths = walk.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path path : paths) {
      Files.delete(path);
    }
  }
}
