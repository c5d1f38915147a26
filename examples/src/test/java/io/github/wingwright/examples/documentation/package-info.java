// SPDX-License-Identifier: Apache-2.0
/** Tests that the documents say what the programs do. */
@NullMarked
package io.github.wingwright.examples.documentation;

import org.jspecify.annotations.NullMarked;
