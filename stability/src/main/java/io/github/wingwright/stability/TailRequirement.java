// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.geometry.Tail;
import java.util.function.DoubleFunction;

/** Something that a tail must do, and the least area with which it does. */
public interface TailRequirement {
  /**
   * What is required, in words.
   *
   * @return for example {@code "static margin of 12 % at the most aft centre of gravity"}
   */
  String name();

  /**
   * Who requires it.
   *
   * @return the source
   */
  Source source();

  /**
   * The least area.
   *
   * @param tailOfArea makes the tail of an area [m²], all else as specified
   * @return a step for the area [m²]; zero or less if no tail is needed for it
   * @throws IllegalStateException if no area can do it: the message says why and what to change
   */
  Step area(DoubleFunction<Tail> tailOfArea);
}
