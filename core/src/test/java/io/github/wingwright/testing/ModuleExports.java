// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.testing;

import com.tngtech.archunit.core.domain.JavaClasses;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Compares what a module exports with the packages it has. */
public final class ModuleExports {
  private ModuleExports() {
  }

  /**
   * The packages a module exports, to all or to some.
   *
   * @param module      the module's name
   * @param packageName the name of a package in it that has a package-info
   * @return the names, sorted
   */
  public static Set<String> of(String module, String packageName) {
    try {
      Class<?> packageInfo = Class.forName(packageName + ".package-info");
      Path place = Path.of(packageInfo.getProtectionDomain().getCodeSource().getLocation().toURI());
      return ModuleFinder.of(place).find(module).orElseThrow().descriptor().exports().stream()
          .map(ModuleDescriptor.Exports::source)
          .collect(Collectors.toCollection(TreeSet::new));
    } catch (ClassNotFoundException | URISyntaxException e) {
      throw new IllegalArgumentException("package must have an annotated package-info, was " + packageName, e);
    }
  }

  /**
   * The packages that have classes, below a root.
   *
   * @param classes the classes
   * @param root    the package to start from
   * @return the names, sorted
   */
  public static Set<String> packagesWithClasses(JavaClasses classes, String root) {
    return classes.stream()
        .filter(one -> !one.getSimpleName().equals("package-info"))
        .map(one -> one.getPackageName())
        .filter(name -> name.equals(root) || name.startsWith(root + "."))
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
