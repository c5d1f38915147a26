// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.ConvergenceException;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.report.Chapter;
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
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Designs a glider from a brief and writes its folder.
 *
 * <p>Without an argument it designs the glider of the built-in brief; with one, that of the brief in the file; with two, both,
 * and prints what changed from the first to the second, whose folder it writes. Test flights are read from a file beside the
 * brief. Exit status: 0 for a design, 2 for a brief that cannot be used, 1 if the folder cannot be written.
 */
public final class DesignProgram {
  private static final String BUILT_IN = "hall-glider.json";
  private static final String BUILT_IN_FLIGHTS = "hall-glider.flights.json";

  private static final int BAD_BRIEF = 2;
  private static final int WIDTH = 96;
  private static final int CANNOT_WRITE = 1;

  private DesignProgram() {}

  /**
   * Runs the program.
   *
   * @param arguments nothing, the path of a brief, or those of two briefs
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
   * @param arguments nothing, the path of a brief, or those of two briefs
   * @param designs folder in which the design's folder is made
   * @param out where the sheet goes
   * @param err where a complaint goes
   * @return the exit status
   */
  static int run(String[] arguments, Path designs, PrintStream out, PrintStream err) {
    try {
      if (arguments.length > 2) {
        throw new BriefException("at most two arguments are accepted, the paths of briefs; got " + arguments.length);
      }
      Sheet sheet = arguments.length == 0 ? builtIn() : Sheet.of(path(arguments[arguments.length - 1]));
      Design design = sheet.design();
      List<Chapter> further = new ArrayList<>();
      List<String> difference = new ArrayList<>();
      ForkJoinTask<Map<String, byte[]>> meanwhile = ForkJoinPool.commonPool().submit(() -> PartFiles.of(design, sheet.brief()));
      FlightChapter flight = new FlightChapter(design, sheet.brief());
      if (arguments.length == 2) {
        compare(Sheet.of(path(arguments[0])), sheet, design, flight.thrown(), further, difference);
      }
      Map<String, String> files = files(design, sheet, further, flight);
      Path folder = designs.resolve(design.brief().name());
      Map<String, byte[]> parts = meanwhile.join();
      DesignFolder.write(folder, files, parts)
          .ifPresent(old -> err.println("The folder before could not be deleted; it is left as " + old + "."));
      out.println(sheet.brief().title());
      new DesignSheet(design, sheet.brief().units()).lines(flight.lines()).forEach(out::println);
      difference.forEach(out::println);
      out.println(folder + ":");
      listing(Stream.concat(files.keySet().stream(), parts.keySet().stream())).forEach(out::println);
      return 0;
    } catch (BriefException e) {
      err.println(e.getMessage());
      return BAD_BRIEF;
    } catch (IOException e) {
      err.println("The design cannot be written: " + e.getMessage());
      return CANNOT_WRITE;
    }
  }

  /** The files by name, those of a folder by the folder's, in lines of a terminal's width. */
  private static List<String> listing(Stream<String> paths) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(" ");
    for (String name : paths.map(path -> path.replaceFirst("/.*", "/")).distinct().toList()) {
      if (line.length() + name.length() > WIDTH) {
        lines.add(line.toString());
        line = new StringBuilder(" ");
      }
      line.append(' ').append(name);
    }
    lines.add(line.toString());
    return lines;
  }

  private static Path path(String argument) {
    try {
      return Path.of(argument);
    } catch (InvalidPathException e) {
      throw new BriefException("the argument must be the path of a brief in JSON, was \"" + argument + "\"", e);
    }
  }

  /** A brief with its file and the flights beside it. */
  private record Sheet(Field top, GliderBrief brief, Optional<FlightTests> flights) {
    static Sheet of(Path file) {
      Field top = BriefFile.read(file);
      return new Sheet(top, GliderBrief.from(top), FlightTests.beside(file));
    }

    Design design() {
      try {
        return slotted(
            flyable(SizingLoop.of(brief.brief()).madeTo(brief.making().length(), brief.making().mass()).solve()));
      } catch (ConvergenceException | IllegalStateException | IllegalArgumentException e) {
        throw NoDesign.of(top, e);
      }
    }

    /** Slots for the tails that take a third of the body or more leave nothing to hold them. */
    private Design slotted(Design design) {
      Length plate = brief.brief().tailThickness();
      Length body = design.sizedFuselage().value().diameter();
      if (plate.times(3.0).compareTo(body) > 0) {
        Field tails = top.required("tails");
        throw tails
            .optional("thickness")
            .orElse(tails)
            .error(
                "thickness must be at most a third of the body's diameter of "
                    + body
                    + ", because the slots for the tails would cut the body in two; was "
                    + plate);
      }
      return design;
    }

    /** A tail that must stand steeper than any of the methods knows is no tail; the lattice would refuse it. */
    private Design flyable(Design design) {
      Angle tail = design.trim().tailIncidence();
      if (!(Math.abs(tail.si()) < Math.PI / 4)) {
        throw NoDesign.unbalanced(
            top,
            design,
            "to trim it the tail would have to stand at "
                + tail.format(Angle.DEGREE, 2)
                + ", and 45° is the most that can be reckoned; it balances too far "
                + (tail.si() < 0.0
                    ? "forward for this tail: enlarge the tail, move what is carried aft, or ask for a smaller static margin"
                    : "aft: move what is carried forward"));
      }
      return design;
    }
  }

  private static void compare(
      Sheet first, Sheet second, Design design, FlownThrow thrown, List<Chapter> further, List<String> lines) {
    BriefUnits units = second.brief().units();
    String name = first.brief().brief().name();
    String other = second.brief().brief().name();
    boolean same = name.equals(other);
    Design before = first.design();
    FlownComparison flown = new FlownComparison(new FlownThrow(before, first.brief().hall()), thrown, design.brief().goal(), units);
    ComparisonChapter changed =
        new ComparisonChapter(before, design, same ? name + ", first brief" : name, same ? other + ", second brief" : other, units)
            .with(flown);
    Map<String, String> wishes = ComparisonChapter.wishes(first.top().flat(), second.top().flat());
    further.add(changed.chapter(wishes));
    lines.addAll(changed.lines(wishes));
  }

  private static Map<String, String> files(
      Design design, Sheet sheet, List<Chapter> comparison, FlightChapter flight) throws IOException {
    GliderBrief brief = sheet.brief();
    PrintChapter printing = new PrintChapter(design, brief);
    List<Supplier<Chapter>> further = new ArrayList<>();
    comparison.forEach(chapter -> further.add(() -> chapter));
    further.add(printing::chapter);
    sheet.flights().ifPresent(f -> further.add(() -> new FlightTestChapter(design, brief, f).chapter()));
    DesignReport report = new DesignReport(design, brief, further, flight);
    Map<String, String> files = new LinkedHashMap<>();
    files.put("report.html", report.report().toHtml());
    files.put("three-view.svg", report.threeView().document());
    files.put("fuselage-range.svg", report.fuselageRange().document());
    files.put("fuselage-region.svg", report.fuselageRegion().document());
    files.put("section.svg", report.sectionPicture().document());
    files.put("flight.svg", report.flightPicture().document());
    files.put("section.txt", DesignData.coordinates(design.aircraft().airframe().wing().section()));
    files.put("design.json", DesignData.json(design));
    files.put("BUILD.md", new BuildPage(design, brief, printing.plan()).markdown());
    return files;
  }

  private static Sheet builtIn() throws IOException {
    Field top = resource(BUILT_IN);
    return new Sheet(top, GliderBrief.from(top), Optional.of(FlightTests.from(resource(BUILT_IN_FLIGHTS))));
  }

  private static Field resource(String name) throws IOException {
    try (InputStream in = DesignProgram.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IOException("the built-in brief " + name + " must be on the class path");
      }
      return BriefFile.parse(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
  }
}
