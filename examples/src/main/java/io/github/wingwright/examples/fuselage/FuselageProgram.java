// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.core.ConvergenceException;
import io.github.wingwright.examples.brief.BriefException;
import io.github.wingwright.examples.brief.BriefFile;
import io.github.wingwright.examples.brief.Field;
import io.github.wingwright.examples.designer.DesignFolder;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * Negotiates a fuselage from a brief and writes its folder.
 *
 * <p>The argument is the name of a built-in brief or the path of a file; without one it is the survey aeroplane. Exit
 * status: 0 for a fuselage, also for one whose considerations clash (that is a result); 2 for a brief that cannot be
 * used; 1 if the folder cannot be written.
 */
public final class FuselageProgram {
  /** The briefs that come with the program. */
  static final List<String> BUILT_IN =
      List.of(
          "hall-glider-fuselage",
          "survey-aeroplane",
          "two-seat-tourer",
          "survey-aeroplane-small-printer");

  private static final String FIRST = "survey-aeroplane";
  private static final int BAD_BRIEF = 2;
  private static final int CANNOT_WRITE = 1;

  private FuselageProgram() {}

  /**
   * Runs the program.
   *
   * @param arguments nothing, the name of a built-in brief, or the path of one
   */
  public static void main(String[] arguments) {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
    int status =
        run(
            arguments,
            Path.of(System.getProperty("wingwright.designs", "examples/target/designs")),
            out,
            err);
    if (status != 0) {
      System.exit(status);
    }
  }

  /**
   * Runs the program without ending the virtual machine.
   *
   * @param arguments nothing, the name of a built-in brief, or the path of one
   * @param designs folder in which the fuselage's folder is made
   * @param out where the sheet goes
   * @param err where a complaint goes
   * @return the exit status
   */
  static int run(String[] arguments, Path designs, PrintStream out, PrintStream err) {
    try {
      if (arguments.length > 1) {
        throw new BriefException(
            "at most one argument is accepted, the name or the path of a brief; got "
                + arguments.length);
      }
      Field top = top(arguments.length == 0 ? FIRST : arguments[0]);
      FuselageBrief brief = FuselageBrief.from(top);
      BodyStudy study = study(top, brief);
      Map<String, String> files = new FuselageReport(study).files();
      Path folder = designs.resolve(brief.name());
      DesignFolder.write(folder, files)
          .ifPresent(old -> err.println("The folder before could not be deleted; it is left as " + old + "."));
      out.println(brief.title());
      new FuselageSheet(study).lines().forEach(out::println);
      out.println(folder + ":");
      out.println("  " + String.join(", ", files.keySet()));
      return 0;
    } catch (BriefException e) {
      err.println(e.getMessage());
      return BAD_BRIEF;
    } catch (IOException e) {
      err.println("The fuselage cannot be written: " + e.getMessage());
      return CANNOT_WRITE;
    }
  }

  private static Field top(String argument) throws IOException {
    if (BUILT_IN.contains(argument)) {
      return builtIn(argument + ".json");
    }
    try {
      return BriefFile.read(Path.of(argument));
    } catch (InvalidPathException e) {
      throw new BriefException(
          "the argument must be one of "
              + String.join(", ", BUILT_IN)
              + ", or the path of a brief in JSON, was \""
              + argument
              + "\"",
          e);
    } catch (BriefException e) {
      throw argument.contains(".") || argument.contains("/")
          ? e
          : new BriefException(
              e.getMessage() + ", or one of the built-in " + String.join(", ", BUILT_IN), e);
    }
  }

  private static BodyStudy study(Field top, FuselageBrief brief) {
    try {
      return BodyStudy.of(brief);
    } catch (ConvergenceException | IllegalStateException | IllegalArgumentException e) {
      throw NoFuselage.of(top, brief, e);
    }
  }

  private static Field builtIn(String file) throws IOException {
    try (InputStream in = FuselageProgram.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IOException("the built-in brief " + file + " must be on the class path");
      }
      return BriefFile.parse(file, new String(in.readAllBytes(), StandardCharsets.UTF_8));
    }
  }
}
