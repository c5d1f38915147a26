// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** A value that is computed when it is first asked for, once, by whichever thread comes first. */
final class Lazy<T> {
  private final Supplier<T> source;
  private volatile @Nullable T value;

  Lazy(Supplier<T> source) {
    this.source = source;
  }

  T get() {
    T known = value;
    if (known == null) {
      synchronized (this) {
        known = value;
        if (known == null) {
          known = source.get();
          value = known;
        }
      }
    }
    return known;
  }
}
