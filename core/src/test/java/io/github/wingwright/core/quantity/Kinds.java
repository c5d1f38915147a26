// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.quantity;

import io.github.wingwright.testing.Seeded;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Every kind of quantity there is, found through the sealed base type: a new kind is tested without being listed. */
final class Kinds {
  private Kinds() {}

  static List<Class<? extends ScalarQuantity<?>>> types() {
    List<Class<? extends ScalarQuantity<?>>> types = new ArrayList<>();
    collect(ScalarQuantity.class, types);
    return types;
  }

  @SuppressWarnings("unchecked")
  private static void collect(Class<?> type, List<Class<? extends ScalarQuantity<?>>> types) {
    if (type.isSealed()) {
      for (Class<?> permitted : type.getPermittedSubclasses()) {
        collect(permitted, types);
      }
    } else {
      types.add((Class<? extends ScalarQuantity<?>>) type);
    }
  }

  static Stream<QuantityKind<?>> all() {
    return types().stream().map(Kinds::of);
  }

  static QuantityKind<?> of(Class<?> type) {
    try {
      return (QuantityKind<?>) type.getField("KIND").get(null);
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(type + " must have a public constant KIND", e);
    }
  }

  /** Some finite values of a kind [SI], of both signs where the kind has them. */
  static double[] values(QuantityKind<?> kind, long seed, int count) {
    double[] values = Seeded.logUniform(seed, count, 1e-12, 1e12).toArray();
    for (int i = 1; i < values.length; i += 2) {
      values[i] = kind == Temperature.KIND ? values[i] : -values[i];
    }
    return values;
  }
}
