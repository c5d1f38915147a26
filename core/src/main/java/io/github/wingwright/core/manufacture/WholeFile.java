// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file all at once: under a temporary name beside its place, into which it is moved when it is complete. */
final class WholeFile {
  private WholeFile() {}

  static void write(Path file, byte[] bytes) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    Path name = file.getFileName();
    if (folder == null || name == null) {
      throw new IOException("file must have a name and a folder, was " + file);
    }
    Path fresh = Files.createTempFile(folder, "." + name + "-", ".part");
    try {
      Files.write(fresh, bytes);
      Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(fresh);
    }
  }
}
