// SPDX-License-Identifier: Apache-2.0
/**
 * The JDK's shell with the library on its class path, to try a formula or run a script:
 *
 * <pre>{@code
 * mvn -q -pl examples -am compile exec:java \
 *     -Dexec.mainClass=io.github.wingwright.examples.shell.Shell \
 *     -Dexec.args=examples/src/main/jshell/glider.jsh
 * }</pre>
 *
 * <p>Without {@code exec.args} the shell waits for input. In a script a chain that starts a line with a dot stands in
 * parentheses: the shell takes a line that could end a statement for the end of it.
 */
@NullMarked
package io.github.wingwright.examples.shell;

import org.jspecify.annotations.NullMarked;
