// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.manufacture.Part;
import io.github.wingwright.core.manufacture.PrintBed;
import io.github.wingwright.core.manufacture.StlFile;
import io.github.wingwright.core.manufacture.Template;
import io.github.wingwright.core.manufacture.ThreeMfFile;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.production.GliderParts;
import io.github.wingwright.stability.production.PrintPlan;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** The files from which the parts are made: what lies on each bed, all in one package, each part alone, full-size drawings, ribs as listings. */
final class PartFiles {
  /** Chordal tolerance of the meshes: a tenth of a printed line. */
  static final Length TOLERANCE = Length.millimetres(0.05);

  private static final String PRINT_LIST = "print-list.csv";
  private static final int POINTS = 121;

  private PartFiles() {}

  /**
   * Path and bytes of each file; if a part cannot be made, one text that says why.
   *
   * @param design the design
   * @param brief the brief, which says the title and the machine for which long parts are split
   */
  static Map<String, byte[]> of(Design design, GliderBrief brief) {
    Map<String, byte[]> files = new LinkedHashMap<>();
    PrintPlan plan = PrintPlan.of(design, brief.printing().machine());
    try {
      GliderParts parts = GliderParts.of(design, TOLERANCE);
      List<Part> pieces = pieces(parts, plan, files);
      List<PrintBed> beds = files.isEmpty() ? beds(parts, plan, files) : List.of();
      files.put("glider.3mf", ThreeMfFile.titled(brief.title()).with(pieces).laidOn(plan.list().machine()).bytes());
      for (int i = 0; i < beds.size(); i++) {
        files.put(bed(i), beds.get(i).file(brief.title() + ", bed " + (i + 1) + " of " + beds.size()).bytes());
      }
      for (Part part : pieces) {
        files.put(path(part), StlFile.bytes(part));
      }
      // Shims as they are made: one that lies at a slant has a shorter box.
      Stream<Part> shims = parts.parts().stream().filter(PartsInHand::isShim);
      List<Part> listed = Stream.concat(pieces.stream().filter(part -> !PartsInHand.isShim(part)), shims).toList();
      files.put(PRINT_LIST, text(new PrintListFile(plan.list(), listed, beds).csv()));
      for (Template template : parts.templates()) {
        String name = "templates/" + fileName(template.title());
        files.put(name + ".svg", template.svg().getBytes(StandardCharsets.UTF_8));
        files.put(name + ".pdf", template.pdf());
      }
      Wing wing = design.aircraft().airframe().wing();
      files.put("templates/rib-root.txt", listing(wing, Length.ZERO));
      files.put("templates/rib-tip.txt", listing(wing, wing.planform().span().times(0.5)));
    } catch (IllegalStateException | IllegalArgumentException e) {
      files.clear();
      files.put("parts/cannot-be-made.txt", text(e.getMessage() + "\n"));
      files.put(PRINT_LIST, text(new PrintListFile(plan.list(), List.of(), List.of()).csv()));
    }
    return files;
  }

  /** The parts as the machine can make them and as they lie in it; whole, with a text that says why, where a joint finds no room. */
  private static List<Part> pieces(GliderParts parts, PrintPlan plan, Map<String, byte[]> files) {
    try {
      return parts.laid(plan.list());
    } catch (IllegalStateException e) {
      String words = "The parts are whole; cut for this machine they would need a joint that finds no room: " + e.getMessage();
      files.put("parts/not-cut.txt", text(words + "\n"));
      return parts.parts();
    }
  }

  /** The beds to print; none, with a text that says why, where a part goes on no bed. */
  private static List<PrintBed> beds(GliderParts parts, PrintPlan plan, Map<String, byte[]> files) {
    try {
      return parts.beds(plan.list());
    } catch (IllegalStateException e) {
      files.put("beds/too-large.txt", text("The parts do not go on the bed: " + e.getMessage() + "\n"));
      return List.of();
    }
  }

  /** Where a bed lies in the folder. */
  static String bed(int index) {
    return "beds/bed-" + (index + 1) + ".3mf";
  }

  private static byte[] text(String words) {
    return words.getBytes(StandardCharsets.UTF_8);
  }

  /** Where a part alone lies in the folder. */
  static String path(Part part) {
    return "parts/" + fileName(part.name()) + ".stl";
  }

  /** {@code "wing, starboard half"} becomes {@code wing-starboard-half}, {@code "shim of 0.5°"} {@code shim-of-0.5-deg}. */
  static String fileName(String name) {
    return name.toLowerCase(Locale.ROOT).replace("°", "-deg").replaceAll("[^a-z0-9.]+", "-");
  }

  /** A rib in millimetres, from the trailing edge over the upper side round the nose. */
  private static byte[] listing(Wing wing, Length station) {
    double[] x = new double[POINTS];
    double[] y = new double[POINTS];
    wing.section().outline(x, y);
    double chord = wing.planform().chordAt(station).millimetres();
    StringBuilder text = new StringBuilder();
    text.append(wing.section().name()).append(", chord ").append(chord).append(" mm, x and y in mm\n");
    for (int i = 0; i < POINTS; i++) {
      text.append(String.format(Locale.ROOT, "%9.3f %9.3f\n", chord * x[i], chord * y[i] + 0.0));
    }
    return text(text.toString());
  }
}
