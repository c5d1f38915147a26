// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file all at once: under a temporary name beside its place, into which it is moved when it is complete. */
final class WholeFile {
  /** So many abandoned files of one name are tried to be passed. */
  private static final int MOST = 1000;

  private WholeFile() {}

  /**
   * Writes a file.
   *
   * @throws IOException if it cannot be written; the message names the file and the cause, what was there is still there,
   *     and nothing else is
   */
  static void write(Path file, byte[] bytes) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    Path name = file.getFileName();
    if (folder == null || name == null) {
      throw new IOException("file must have a name and a folder, was " + file);
    }
    Path fresh;
    try {
      fresh = free(folder, name);
    } catch (IOException e) {
      throw new IOException(file + " cannot be written: " + cause(e), e);
    }
    try {
      Files.write(fresh, bytes);
      Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      IOException named = new IOException(file + " cannot be written: " + cause(e), e);
      try {
        Files.deleteIfExists(fresh);
      } catch (IOException left) {
        named.addSuppressed(left);
      }
      throw named;
    }
  }

  /**
   * An empty file of a name that nobody has, also where several write at once. A file made for temporary use would be closed
   * to everybody else, and stay so when it is moved.
   */
  private static Path free(Path folder, Path name) throws IOException {
    for (int i = 0; ; i++) {
      try {
        return Files.createFile(folder.resolve("." + name + "-" + i + ".part"));
      } catch (FileAlreadyExistsException taken) {
        if (i == MOST) {
          throw taken;
        }
      }
    }
  }

  /** The cause alone: a full disk names no file, a missing folder nothing but the temporary name. */
  private static String cause(IOException e) {
    String kind = e.getClass().getSimpleName();
    if (e instanceof FileSystemException f) {
      return f.getReason() == null ? kind : f.getReason();
    }
    return e.getMessage() == null ? kind : e.getMessage();
  }
}
