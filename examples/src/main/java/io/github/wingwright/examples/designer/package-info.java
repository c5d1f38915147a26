// SPDX-License-Identifier: Apache-2.0
/** The program that turns a brief into a design: a folder with the report, the drawings and the data. */
@NullMarked
package io.github.wingwright.examples.designer;

import org.jspecify.annotations.NullMarked;
