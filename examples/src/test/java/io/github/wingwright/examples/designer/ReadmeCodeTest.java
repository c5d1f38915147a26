// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The code that the README shows compiles as it stands there. */
class ReadmeCodeTest {
  /** Packages of the library that the blocks use. */
  private static final List<String> PACKAGES =
      List.of(
          "airfoils", "core.aerodynamics", "core.atmosphere", "core.basis", "core.geometry", "core.manufacture", "core.mass",
          "core.performance", "core.quantity", "core.sizing", "stability.comparison", "stability.design", "stability.flight",
          "stability.production");

  /** Classes whose factories the blocks call by their names alone. */
  private static final List<String> FACTORIES =
      List.of(
          "core.sizing.Considerations", "core.quantity.Length", "core.quantity.Volume", "core.quantity.Speed",
          "core.quantity.Angle", "core.quantity.Mass");

  @TempDir Path folder;

  private static final class Source extends SimpleJavaFileObject {
    private final String text;

    Source(String name, String text) {
      super(URI.create("string:///" + name + ".java"), Kind.SOURCE);
      this.text = text;
    }

    @Override
    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
      return text;
    }
  }

  @Test
  void every_block_of_java_in_the_readme_compiles() throws Exception {
    String readme = Files.readString(Path.of("..", "README.md"));
    List<String> blocks =
        Pattern.compile("```java\n(.*?)```", Pattern.DOTALL).matcher(readme).results().map(m -> m.group(1)).toList();
    assertThat(blocks).hasSizeGreaterThanOrEqualTo(3);
    List<Source> sources = new ArrayList<>();
    for (int i = 0; i < blocks.size(); i++) {
      sources.add(new Source("Block" + i, asClass("Block" + i, blocks.get(i))));
    }
    assertThat(complaints(sources)).isEmpty();
  }

  @Test
  void a_block_that_asks_for_what_is_not_there_would_be_seen() {
    assertThat(complaints(List.of(new Source("Wrong", asClass("Wrong", "Length.cubits(2);"))))).hasSize(1);
  }

  /** The sections of the last block are given by the text before it. */
  private static String asClass(String name, String block) {
    return PACKAGES.stream().map(p -> "import io.github.wingwright." + p + ".*;\n").collect(Collectors.joining())
        + FACTORIES.stream().map(c -> "import static io.github.wingwright." + c + ".*;\n").collect(Collectors.joining())
        + "import java.nio.file.Path;\n"
        + "class " + name + " { void run(AirfoilSection section, AirfoilSection plate) throws Exception {\n" + block + "\n}}\n";
  }

  private List<String> complaints(List<Source> sources) {
    DiagnosticCollector<JavaFileObject> found = new DiagnosticCollector<>();
    List<String> options =
        List.of("-proc:none", "-d", folder.toString(), "-cp", System.getProperty("java.class.path"));
    ToolProvider.getSystemJavaCompiler().getTask(null, null, found, options, null, sources).call();
    return found.getDiagnostics().stream()
        .filter(d -> d.getKind() == Diagnostic.Kind.ERROR)
        .map(Diagnostic::toString)
        .toList();
  }
}
