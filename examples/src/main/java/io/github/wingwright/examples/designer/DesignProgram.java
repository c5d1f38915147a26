// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.ConvergenceException;
import io.github.wingwright.examples.brief.BriefException;
import io.github.wingwright.examples.brief.BriefFile;
import io.github.wingwright.examples.brief.Field;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.SizingLoop;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Designs a glider from a brief and writes its folder.
 *
 * <p>Without an argument it designs the glider of the built-in brief; with one, that of the brief in the file. Exit status: 0
 * for a design, 2 for a brief that cannot be used, 1 if the folder cannot be written.
 */
public final class DesignProgram {
  private static final String BUILT_IN = "hall-glider.json";
  private static final int BAD_BRIEF = 2;
  private static final int CANNOT_WRITE = 1;

  private DesignProgram() {}

  /**
   * Runs the program.
   *
   * @param arguments nothing, or the path of a brief
   */
  public static void main(String[] arguments) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
    int status = run(arguments, Path.of(System.getProperty("wingwright.designs", "examples/target/designs")), out, err);
    if (status != 0) {
      System.exit(status);
    }
  }

  /**
   * Runs the program without ending the virtual machine.
   *
   * @param arguments nothing, or the path of a brief
   * @param designs folder in which the design's folder is made
   * @param out where the sheet goes
   * @param err where a complaint goes
   * @return the exit status
   */
  static int run(String[] arguments, Path designs, PrintStream out, PrintStream err) {
    try {
      if (arguments.length > 1) {
        throw new BriefException("at most one argument is accepted, the path of a brief; got " + arguments.length);
      }
      Field top = arguments.length == 0 ? builtIn() : BriefFile.read(path(arguments[0]));
      GliderBrief brief = GliderBrief.from(top);
      Design design = solve(top, brief);
      Map<String, String> files = files(design, brief);
      Path folder = designs.resolve(design.brief().name());
      DesignFolder.write(folder, files);
      out.println(brief.title());
      new DesignSheet(design, brief.units()).lines().forEach(out::println);
      out.println(folder + ":");
            out.println("  " + String.join(", ", files.keySet()));
      return 0;
    } catch (BriefException e) {
      err.println(e.getMessage());
      return BAD_BRIEF;
    } catch (IOException e) {
      err.println("The design cannot be written: " + e.getMessage());
      return CANNOT_WRITE;
    }
  }

  private static Path path(String argument) {
    try {
      return Path.of(argument);
    } catch (InvalidPathException e) {
      throw new BriefException("the argument must be the path of a brief in JSON, was \"" + argument + "\"", e);
    }
  }

  private static Design solve(Field top, GliderBrief brief) {
    try {
      return SizingLoop.of(brief.brief()).madeTo(brief.making().length(), brief.making().mass()).solve();
    } catch (ConvergenceException | IllegalStateException | IllegalArgumentException e) {
      BriefException refused = top.error("no design satisfies this brief: " + e.getMessage());
      refused.initCause(e);
      throw refused;
    }
  }

  private static Map<String, String> files(Design design, GliderBrief brief) throws IOException {
    DesignReport report = new DesignReport(design, brief);
    Map<String, String> files = new LinkedHashMap<>();
    files.put("report.html", report.report().toHtml());
    files.put("three-view.svg", report.threeView().document());
    files.put("fuselage-range.svg", report.fuselageRange().document());
    files.put("fuselage-region.svg", report.fuselageRegion().document());
    files.put("section.svg", report.sectionPicture().document());
    files.put("section.txt", DesignData.coordinates(design.aircraft().airframe().wing().section()));
    files.put("design.json", DesignData.json(design));
    return files;
  }

  private static Field builtIn() throws IOException {
    try (InputStream in = DesignProgram.class.getResourceAsStream(BUILT_IN)) {
      if (in == null) {
        throw new IOException("the built-in brief " + BUILT_IN + " must be on the class path");
      }
      return BriefFile.parse(BUILT_IN, new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
  }
}
