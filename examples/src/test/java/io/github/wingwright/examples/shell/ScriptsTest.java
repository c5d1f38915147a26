// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.shell;

import static io.github.wingwright.core.quantity.Length.metres;
import static io.github.wingwright.core.quantity.Length.millimetres;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.airfoils.ComposedSection;
import io.github.wingwright.airfoils.Naca4;
import io.github.wingwright.airfoils.viscous.ViscousMethod;
import io.github.wingwright.core.aerodynamics.EstimatedPolar;
import io.github.wingwright.core.atmosphere.AirState;
import io.github.wingwright.core.atmosphere.Atmosphere;
import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.geometry.Planform;
import io.github.wingwright.core.geometry.Wing;
import io.github.wingwright.core.mass.Materials;
import io.github.wingwright.core.performance.GlideGoal;
import io.github.wingwright.core.performance.Hall;
import io.github.wingwright.core.performance.LaunchTrajectory;
import io.github.wingwright.core.performance.Throw;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Pressure;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Temperature;
import io.github.wingwright.core.sizing.Considerations;
import io.github.wingwright.core.sizing.FuselageSizing;
import io.github.wingwright.core.sizing.WingSizing;
import io.github.wingwright.stability.PitchModel;
import io.github.wingwright.stability.TaillessTrim;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.DesignBrief;
import io.github.wingwright.stability.design.SizingLoop;
import io.github.wingwright.stability.design.TailBrief;
import io.github.wingwright.stability.flight.PitchFlight;
import io.github.wingwright.stability.lattice.LatticeCondition;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The shell exits with 0 from a script full of errors, so every script is run here, snippet by snippet. */
class ScriptsTest {
  private static final Path FOLDER = Path.of("src/main/jshell");

  /** What each script prints, by the Java API. A new script needs its line here. */
  private static final Map<String, Supplier<List<String>>> PRINTED =
      Map.of(
          "glider.jsh",
          ScriptsTest::glider,
          "section.jsh",
          ScriptsTest::section,
          "stability.jsh",
          ScriptsTest::stability,
          "tailless.jsh",
          ScriptsTest::tailless,
          "throws.jsh",
          ScriptsTest::thrown);

  private static final AirState HALL_AIR = AirState.of(Pressure.pascals(100_400), Temperature.degreesCelsius(19));

  @TempDir
  Path temporary;

  static List<String> scripts() {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.map(f -> f.getFileName().toString()).filter(n -> n.endsWith(".jsh")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> glider() {
    return design(HALL_AIR).numbers().values().stream().map(Object::toString).toList();
  }

  private static List<String> stability() {
    Design design = design(HALL_AIR);
    double angle = design.modes().angle(design.lattice());
    return Stream.of(
            design.trim(), design.finiteWing(), design.lattice().solve(LatticeCondition.at(angle)), design.modes())
        .flatMap(one -> one.toString().lines())
        .toList();
  }

  private static List<String> thrown() {
    Design design = design(Atmosphere.standard().at(metres(100)));
    Hall hall = Hall.of(metres(27), metres(7));
    LaunchTrajectory point = LaunchTrajectory.of(design.glide()).in(hall);
    PitchFlight pitch = PitchFlight.of(design).in(hall);
    List<String> lines = new ArrayList<>();
    lines.add("angle   point      with pitch");
    for (int degrees = -20; degrees <= 20; degrees += 10) {
      Throw how = new Throw(Speed.metresPerSecond(8), Angle.degrees(degrees), metres(1.6));
      lines.add(
          String.format(
              Locale.ROOT, "%4d°   %5.1f m    %s", degrees, point.thrown(how).distance().metres(), pitch.thrown(how)));
    }
    lines.add(pitch.bestAngles(GlideGoal.DISTANCE, Speed.metresPerSecond(8), metres(1.6)).toString());
    return lines;
  }

  private static List<String> tailless() {
    Naca4 section = Naca4.parse("0009");
    Planform swept = Planform.tapered(millimetres(600), millimetres(140), millimetres(90)).withSweep(0.25, Angle.degrees(25));
    Wing wing = Wing.of(swept, section).placedAt(Placement.at(millimetres(10), Length.ZERO));
    Fuselage body = new Fuselage(BodyShape.capsule(), millimetres(160), millimetres(22));
    PitchModel model = PitchModel.of(new Airframe(body, wing, List.of())).withWingSection(EstimatedPolar.of(section), 60_000);
    Length cg = model.neutralPoint().x().minus(swept.meanAerodynamicChord().times(0.08));
    TaillessTrim flat = TaillessTrim.of(model, cg, 0.5);
    Angle washout = flat.washoutMissing().orElseThrow();
    Wing twisted = new Wing(swept.withWashout(washout), section, wing.placement(), wing.incidence());
    TaillessTrim trimmed = TaillessTrim.of(model.withAirframe(new Airframe(body, twisted, List.of())), cg, 0.5);
    List<String> lines = new ArrayList<>(List.of(flat.toString()));
    flat.findings().forEach(finding -> lines.add(finding.message()));
    lines.add(washout.toString());
    lines.add(trimmed.toString());
    return lines;
  }

  private static Design design(AirState air) {
    Naca4 section = Naca4.parse("4406").withTrailingEdgeThickness(0.006);
    ComposedSection plate = ComposedSection.plate(0.02, 0.0);
    DesignBrief brief = DesignBrief.named("java")
        .air(air)
        .thrown(Speed.metresPerSecond(6.5), metres(1.5))
        .material(Materials.FOAMING_PLA)
        .wing(WingSizing.forSpan(millimetres(480))
            .aspectRatio(6.2)
            .taperRatio(0.75)
            .dihedral(Angle.degrees(12))
            .section(section))
        .wingPolar(EstimatedPolar.of(section))
        .fuselage(wing -> FuselageSizing.of(BodyShape.capsule())
            .considering(Considerations.lengthAtMost(millimetres(256)))
            .diameter(millimetres(22)))
        .tails(plate, EstimatedPolar.of(plate), new TailBrief(0.52, 3.5, 0.8), new TailBrief(0.035, 1.5, 0.7));
    return SizingLoop.of(brief).madeTo(millimetres(0.5), Mass.grams(0.1)).solve();
  }

  private static List<String> section() {
    return ViscousMethod.of(Naca4.parse("4409").withTrailingEdgeThickness(0.01))
        .polar(80_000, Angle.degrees(-1), Angle.degrees(7), Angle.degrees(1)).stream()
        .map(Object::toString)
        .toList();
  }

  private String script(String name) throws IOException {
    // What a script writes beside itself goes into a folder of the test's.
    String text = Files.readString(FOLDER.resolve(name)).replace("Path.of(\"", "Path.of(\"" + temporary + "/");
    assertThat(text.stripTrailing()).as("a script ends the shell").endsWith("\n/exit");
    return text.lines().filter(line -> !line.equals("/exit")).collect(Collectors.joining("\n"));
  }

  private static List<String> refused(JShell shell, String script) {
    List<String> refused = new ArrayList<>();
    String rest = script;
    while (!rest.isBlank()) {
      SourceCodeAnalysis.CompletionInfo next = shell.sourceCodeAnalysis().analyzeCompletion(rest);
      if (!next.completeness().isComplete()) {
        refused.add(rest + ": " + next.completeness());
        break;
      }
      for (SnippetEvent event : shell.eval(next.source())) {
        String complaints = shell.diagnostics(event.snippet()).map(d -> d.getMessage(null)).collect(Collectors.joining("; "));
        if (event.status() != Snippet.Status.VALID || event.exception() != null) {
          refused.add(next.source() + ": " + event.status() + " " + event.exception() + " " + complaints);
        }
      }
      rest = next.remaining();
    }
    return refused;
  }

  @ParameterizedTest
  @MethodSource("scripts")
  void a_script_runs_without_a_complaint_and_prints_what_the_library_gives(String name) throws IOException {
    assertThat(PRINTED).as("what the script prints").containsKey(name);
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    PrintStream before = System.out;
    try (JShell shell = JShell.builder().executionEngine("local").build()) {
      shell.addToClasspath(System.getProperty("java.class.path"));
      // The tool itself begins with these.
      for (String start : List.of("import java.io.*;", "import java.math.*;", "import java.util.*;", "import java.util.stream.*;")) {
        shell.eval(start);
      }
      System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
      assertThat(refused(shell, script(name))).isEmpty();
    } finally {
      System.setOut(before);
    }
    assertThat(printed.toString(StandardCharsets.UTF_8).lines()).containsExactlyElementsOf(PRINTED.get(name).get());
  }

  @Test
  void in_the_shell_the_modes_are_a_table_and_no_quoted_string() throws IOException {
    try (JShell shell = JShell.builder().executionEngine("local").build()) {
      shell.addToClasspath(System.getProperty("java.class.path"));
      String silent = script("stability.jsh").lines().filter(l -> !l.startsWith("System")).collect(Collectors.joining("\n"));
      assertThat(refused(shell, silent)).isEmpty();
      String shown = shell.eval("design.modes()").get(0).value();
      assertThat(shown).startsWith("motions at C_L").contains("short period", "Dutch roll").doesNotContain("\"");
      assertThat(shown.lines()).hasSize(7);
    }
  }

  @Test
  void every_script_that_is_promised_is_there() {
    assertThat(scripts()).containsExactlyInAnyOrderElementsOf(PRINTED.keySet());
  }

  @ParameterizedTest
  @ValueSource(strings = {"glider.jsh", "stability.jsh"})
  void a_glider_and_its_stability_take_ten_lines_each(String name) throws IOException {
    assertThat(Files.readAllLines(FOLDER.resolve(name)).stream()
            .filter(l -> !l.isBlank() && !l.startsWith("//") && !l.startsWith("import") && !l.startsWith("/")))
        .hasSize(10);
  }
}
