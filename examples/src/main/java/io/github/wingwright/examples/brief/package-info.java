// SPDX-License-Identifier: Apache-2.0
/**
 * Reads a brief: JSON in which every quantity is text with its unit.
 *
 * <p>A value remembers its place in the file, so that whatever is wrong with it is reported with line and column, with the
 * path of the field, and with what is accepted. A field that nobody asks for is an error too: a misspelt field would
 * otherwise pass for one that was left out.
 */
@NullMarked
package io.github.wingwright.examples.brief;

import org.jspecify.annotations.NullMarked;
