// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.testing;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Who may use whom: the packages of core and the two modules beside it, each with those it stands on. What these stand on
 * in turn is allowed too. Arrows only point down.
 */
public final class Layers {
  private static final String ROOT = "io.github.wingwright.";

  /** In an order in which every package comes after those it stands on. */
  private static final Map<String, Set<String>> STANDS_ON = new LinkedHashMap<>();

  static {
    layer("core");
    layer("core.quantity", "core");
    layer("core.numerics", "core");
    layer("core.basis", "core.quantity");
    layer("core.atmosphere", "core.basis", "core.numerics");
    layer("core.geometry", "core.basis", "core.numerics");
    layer("core.aerodynamics", "core.atmosphere", "core.geometry", "core.numerics");
    layer("core.mass", "core.geometry");
    layer("core.aircraft", "core.geometry", "core.mass");
    layer("core.performance", "core.aerodynamics", "core.aircraft");
    layer("core.manufacture", "core.geometry", "core.mass");
    layer("core.sizing", "core.aerodynamics", "core.mass");
    layer("core.drawing", "core.geometry");
    layer("core.report", "core.basis");
    layer("core.study", "core.basis", "core.numerics");
    layer("airfoils", "core.aerodynamics", "core.aircraft");
    layer("stability", "core.aerodynamics", "core.aircraft", "core.performance", "core.manufacture", "core.sizing");
  }

  /** Every class uses only what its package stands on, and lies in a package that has a layer. */
  public static final ArchRule ARROWS_POINT_DOWN = ArchRuleDefinition.classes()
      .that().resideInAnyPackage(ROOT + "core..", ROOT + "airfoils..", ROOT + "stability..")
      .should(new ArchCondition<JavaClass>("use only the layers below them") {
        @Override
        public void check(JavaClass user, ConditionEvents events) {
          String layer = layerOf(user.getPackageName());
          if (!STANDS_ON.containsKey(layer)) {
            events.add(SimpleConditionEvent.violated(user, user.getName() + " is in no known layer: add "
                + user.getPackageName() + " to " + Layers.class.getName()));
            return;
          }
          for (Dependency dependency : user.getDirectDependenciesFromSelf()) {
            String used = dependency.getTargetClass().getBaseComponentType().getPackageName();
            if (used.startsWith(ROOT) && !allows(layer, layerOf(used))) {
              events.add(SimpleConditionEvent.violated(user,
                  layer + " must not use " + layerOf(used) + ": " + dependency.getDescription()));
            }
          }
        }
      });

  private Layers() {
  }

  private static void layer(String name, String... standsOn) {
    Set<String> all = new TreeSet<>(Set.of(standsOn));
    for (String below : standsOn) {
      Set<String> further = STANDS_ON.get(below);
      if (further == null) {
        throw new IllegalStateException(name + " must come after " + below);
      }
      all.addAll(further);
    }
    STANDS_ON.put(name, Set.copyOf(all));
  }

  /** {@code io.github.wingwright.core.geometry.x} is in {@code core.geometry}, {@code …airfoils.x} in {@code airfoils}. */
  private static String layerOf(String packageName) {
    String[] parts = packageName.substring(ROOT.length()).split("\\.", -1);
    return parts[0].equals("core") && parts.length > 1 ? "core." + parts[1] : parts[0];
  }

  static boolean allows(String user, String used) {
    return user.equals(used) || STANDS_ON.getOrDefault(user, Set.of()).contains(used);
  }
}
