// SPDX-License-Identifier: Apache-2.0
/**
 * Shows results: as one self-contained page of HTML, as Markdown, as plain text.
 *
 * <p>A {@link io.github.wingwright.core.report.Report} is a title and chapters; a chapter is a heading and
 * {@link io.github.wingwright.core.report.Block blocks}: a paragraph, a table, a sheet of
 * {@link io.github.wingwright.core.report.Entry entries}, a picture, findings, workings. The package knows steps, findings
 * and pictures and no aircraft: what to show is decided where the design is known.
 *
 * <p>Every number on a sheet is an entry, and every entry holds the step that computes it: the sheet shows the number, the
 * workings show where it comes from.
 */
@NullMarked
package io.github.wingwright.core.report;

import org.jspecify.annotations.NullMarked;
