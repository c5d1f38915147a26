// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.manufacture;

import io.github.wingwright.core.quantity.Door;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.mass.Material;
import java.io.Serializable;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * One line of a print list: a part, how often it is made, and how.
 *
 * @param name what it is
 * @param count how many of it, at least one
 * @param making how it is made, such as {@code "one wall of 0.42 mm, no infill"}
 * @param mass mass of one, without its joints
 * @param pieces how it is split for the machine
 */
public record PrintItem(String name, int count, String making, Mass mass, Segmentation pieces) implements Serializable {
  /** Refuses what is no part. */
  public PrintItem {
    Objects.requireNonNull(pieces, "pieces");
    Door.said(name, "name of the part");
    Door.said(making, "making of " + name);
    Door.notNegative(mass, "mass of " + name);
    if (count < 1) {
      throw new IllegalArgumentException("count of " + name + " must be at least 1, was " + count);
    }
  }

  /**
   * What it is made of.
   *
   * @return the material
   */
  public Material material() {
    return pieces.part().material();
  }

  /**
   * How its pieces lie in the machine.
   *
   * @return the orientations, each once
   */
  public String lying() {
    return pieces.isPossible()
        ? pieces.segments().stream().map(s -> s.orientation().toString()).distinct().collect(Collectors.joining("; "))
        : "does not fit";
  }

  /**
   * Its segments.
   *
   * @return for example {@code "0 to 175 mm; 175 to 240 mm"}
   */
  public String segmentWords() {
    return pieces.segments().stream()
        .map(s -> number(s.from()) + " to " + s.to().format(Length.MILLIMETRE, 3))
        .collect(Collectors.joining("; "));
  }

  /**
   * Its joints.
   *
   * @return one after the other, {@code "none"} if it is one piece
   */
  public String jointWords() {
    return pieces.joints().isEmpty()
        ? "none"
        : pieces.joints().stream().map(Joint::toString).collect(Collectors.joining("; "));
  }

  private static String number(Length length) {
    String text = length.format(Length.MILLIMETRE, 3);
    return text.substring(0, text.length() - " mm".length());
  }

  @Override
  public String toString() {
    return count + " × " + name + ", " + mass + ", " + pieces.segments().size() + " segments";
  }
}
