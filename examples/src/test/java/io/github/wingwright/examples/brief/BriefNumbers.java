// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.brief;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Every number of a brief in SI units, read without the reader that the programs read it with. */
public final class BriefNumbers {
  private static final Pattern NUMBER = Pattern.compile("(?<![\\w.])(-?\\d+(?:\\.\\d+)?)(?: ?([^\",}\\]\\s\\d]+))?");
  private static final double INCH = 0.0254;
  private static final Map<String, Double> SI =
      Map.ofEntries(
          Map.entry("mm", 1e-3),
          Map.entry("µm", 1e-6),
          Map.entry("in", INCH),
          Map.entry("ft", 12 * INCH),
          Map.entry("g", 1e-3),
          Map.entry("lb", 0.45359237),
          Map.entry("lbf", 0.45359237 * 9.80665),
          Map.entry("hPa", 100.0),
          Map.entry("MPa", 1e6),
          Map.entry("GPa", 1e9),
          Map.entry("kt", 1852.0 / 3600.0),
          Map.entry("cm³", 1e-6),
          Map.entry("cm²", 1e-4),
          Map.entry("dm²", 1e-2),
          Map.entry("kW", 1e3),
          Map.entry("Wh", 3600.0));

  private final List<Double> numbers = new ArrayList<>();

  /** Reads the text of a brief. */
  public BriefNumbers(String text) {
    Matcher number = NUMBER.matcher(text);
    while (number.find()) {
      double value = Double.parseDouble(number.group(1));
      String unit = number.group(2) == null ? "" : number.group(2);
      switch (unit) {
        case "°C" -> numbers.add(value + 273.15);
        case "°" -> {
          numbers.add(Math.toRadians(value));
          numbers.add(value);
        }
        case "kt" -> {
          numbers.add(value * SI.get("kt"));
          numbers.add(value);
        }
        default -> numbers.add(value * SI.getOrDefault(unit, 1.0));
      }
    }
  }

  /** Whether the brief holds a number; the height of a low wing is given with a sign. */
  public boolean holds(double value) {
    return numbers.stream().anyMatch(h -> Math.abs(Math.abs(h) - Math.abs(value)) <= 1e-12 * Math.abs(h));
  }

  /** The given steps that are said to come from the brief and do not stand there. */
  public List<Step> claimedInVain(Collection<Step> steps) {
    return claims(steps).stream().filter(step -> !holds(step.value())).toList();
  }

  /** The given steps that are said to come from the brief. */
  public static List<Step> claims(Collection<Step> steps) {
    return steps.stream()
        .filter(Step.Given.class::isInstance)
        .filter(step -> step.source().standing() == Source.Standing.BRIEF)
        .toList();
  }
}
