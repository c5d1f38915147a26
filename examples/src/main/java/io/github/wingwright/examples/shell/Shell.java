// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.shell;

import java.io.File;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import jdk.jshell.tool.JavaShellToolBuilder;

/** Starts the JDK's shell with the library on its class path. */
public final class Shell {
  private Shell() {}

  /**
   * Starts the shell.
   *
   * @param scripts paths of scripts to run; with none the shell waits for input
   * @throws Exception if the shell cannot be started
   */
  public static void main(String[] scripts) throws Exception {
    List<String> options = new ArrayList<>(List.of("--class-path", classPath(Shell.class.getClassLoader())));
    options.addAll(List.of(scripts));
    JavaShellToolBuilder.builder().run(options.toArray(String[]::new));
  }

  /** The class path that this class was loaded from: a build tool's own loader, or that of the virtual machine. */
  static String classPath(ClassLoader loader) throws URISyntaxException {
    if (!(loader instanceof URLClassLoader urls)) {
      return System.getProperty("java.class.path");
    }
    StringJoiner path = new StringJoiner(File.pathSeparator);
    for (URL url : urls.getURLs()) {
      URI place = url.toURI();
      path.add(Path.of(place).toString());
    }
    return path.toString();
  }
}
