// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Stream;

/**
 * Writes a folder all at once: into a folder of a temporary name beside it, which takes its place when every file is
 * written. What was there before is there until then.
 *
 * <p>The folder holds a list of what was written into it, {@value #LIST}. What stands on the list of the folder before and
 * is not written again is gone with it; any other file is somebody's own, a note or a photograph, and is moved over. Where
 * it stands in the way of a file to be written, nothing is written at all.
 */
public final class DesignFolder {
  /** The list of the files that were written here, a path in each line. */
  static final String LIST = ".written";

  private DesignFolder() {}

  /**
   * Writes a folder of texts.
   *
   * @param folder where
   * @param files name and text of each file
   * @return what is left of the folder before and could not be deleted, beside the new one; empty as a rule
   * @throws IOException if it cannot be written; then nothing has changed
   */
  public static Optional<Path> write(Path folder, Map<String, String> files) throws IOException {
    return write(folder, files, Map.of());
  }

  /**
   * Writes a folder of texts and of other files.
   *
   * @param folder where
   * @param files name and text of each file
   * @param others path, with folders of its own if need be, and bytes of each other file
   * @return what is left of the folder before and could not be deleted, beside the new one; empty as a rule
   * @throws IOException if it cannot be written; then nothing has changed
   */
  public static Optional<Path> write(Path folder, Map<String, String> files, Map<String, byte[]> others)
      throws IOException {
    return write(folder, files, others, DesignFolder::delete);
  }

  /** How a folder is taken away. */
  interface Removal {
    void remove(Path folder) throws IOException;
  }

  /** The same, with the way in which the folder before is taken away. */
  static Optional<Path> write(
      Path folder, Map<String, String> files, Map<String, byte[]> others, Removal removal) throws IOException {
    Path parent = folder.toAbsolutePath().getParent();
    if (parent == null) {
      throw new IOException("folder must have a parent, was " + folder);
    }
    Path fresh = beside(folder, parent);
    try {
      begin(parent, fresh);
      for (Map.Entry<String, String> file : files.entrySet()) {
        write(folder, fresh, file.getKey(), file.getValue().getBytes(StandardCharsets.UTF_8));
      }
      for (Map.Entry<String, byte[]> file : others.entrySet()) {
        Files.createDirectories(fresh.resolve(file.getKey()).resolveSibling("."));
        write(folder, fresh, file.getKey(), file.getValue());
      }
      Set<String> written = new TreeSet<>(files.keySet());
      written.addAll(others.keySet());
      Files.write(fresh.resolve(LIST), written, StandardCharsets.UTF_8);
      if (Files.isDirectory(folder)) {
        keepForeign(folder, fresh);
      }
      Optional<Path> old = replace(folder, fresh, parent);
      return old.isPresent() && !removed(old.get(), removal) ? old : Optional.empty();
    } catch (IOException e) {
      try {
        delete(fresh);
      } catch (IOException left) {
        e.addSuppressed(left);
      }
      throw e;
    }
  }

  /** The folder of a temporary name, which a complaint should not name. */
  private static void begin(Path parent, Path fresh) throws IOException {
    try {
      Files.createDirectories(parent);
      Files.createDirectory(fresh);
    } catch (FileAlreadyExistsException e) {
      throw new IOException(e.getFile() + " must be a folder, is a file", e);
    } catch (AccessDeniedException e) {
      throw new IOException(parent + " must be a folder that may be written to, it or what it lies in may not", e);
    }
  }

  /** One file; a full disk names none, so its place in the folder to be is said here. */
  private static void write(Path folder, Path fresh, String name, byte[] bytes) throws IOException {
    try {
      Files.write(fresh.resolve(name), bytes);
    } catch (IOException e) {
      String reason = e instanceof FileSystemException f && f.getReason() != null ? f.getReason()
          : e instanceof FileSystemException ? e.getClass().getSimpleName() : e.getMessage();
      throw new IOException(folder.resolve(name) + ": " + reason, e);
    }
  }

  /** A name that is free; a folder made for temporary use would be closed to everybody else. */
  private static Path beside(Path folder, Path parent) {
    return parent.resolve("." + folder.getFileName() + "-" + UUID.randomUUID());
  }

  /** Copies what the program did not write, so that the folder before stays whole until it is replaced. */
  private static void keepForeign(Path folder, Path fresh) throws IOException {
    Path list = folder.resolve(LIST);
    Set<String> own = Files.isRegularFile(list) ? Set.copyOf(Files.readAllLines(list, StandardCharsets.UTF_8)) : Set.of();
    List<Path> paths;
    try (Stream<Path> walk = Files.walk(folder)) {
      paths = walk.filter(path -> !Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)).sorted().toList();
    }
    for (Path path : paths) {
      Path within = folder.relativize(path);
      String name = within.toString().replace(File.separatorChar, '/');
      if (name.equals(LIST) || own.contains(name)) {
        continue;
      }
      Path target = fresh.resolve(within.toString());
      if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
        throw new IOException(
            path + " was not written by the program and would be overwritten; move it away or give it another name");
      }
      Files.createDirectories(target.resolveSibling("."));
      Files.copy(path, target, LinkOption.NOFOLLOW_LINKS, StandardCopyOption.COPY_ATTRIBUTES);
    }
  }

  /** Once the new folder stands, what is left of the old one is no reason to call it a failure. */
  private static boolean removed(Path old, Removal removal) {
    try {
      removal.remove(old);
      return true;
    } catch (IOException e) {
      return false;
    }
  }

  /** Puts the new folder in its place; the one before then has another name, which is returned. */
  private static Optional<Path> replace(Path folder, Path fresh, Path parent) throws IOException {
    if (!Files.exists(folder)) {
      Files.move(fresh, folder, StandardCopyOption.ATOMIC_MOVE);
      return Optional.empty();
    }
    if (!Files.isDirectory(folder)) {
      throw new IOException(folder + " is in the way and is not a folder");
    }
    Path old = beside(folder, parent);
    Files.move(folder, old, StandardCopyOption.ATOMIC_MOVE);
    try {
      Files.move(fresh, folder, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      Files.move(old, folder, StandardCopyOption.ATOMIC_MOVE);
      throw e;
    }
    return Optional.of(old);
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
