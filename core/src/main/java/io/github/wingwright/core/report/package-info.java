// SPDX-License-Identifier: Apache-2.0
/**
 * Shows results: as one self-contained page of HTML, or as Markdown.
 *
 * <h2>What is here</h2>
 *
 * <table>
 * <caption>Types</caption>
 * <tr><th>type</th><th>is</th></tr>
 * <tr><td>{@link io.github.wingwright.core.report.Report}</td><td>a title and chapters; it writes itself</td></tr>
 * <tr><td>{@link io.github.wingwright.core.report.Chapter}</td><td>a heading, such as "Balance", and its blocks</td></tr>
 * <tr><td>{@link io.github.wingwright.core.report.Block}</td>
 *     <td>a paragraph, points, a table, a sheet, a picture, findings, workings, or their symbols</td></tr>
 * <tr><td>{@link io.github.wingwright.core.report.Entry}</td>
 *     <td>one number of a sheet, such as "root chord 77.71 mm", with the step that computes it</td></tr>
 * <tr><td>{@link io.github.wingwright.core.report.ConsiderationWorkings}</td>
 *     <td>how each consideration comes to its margin, as a handout</td></tr>
 * </table>
 *
 * <h2>How it is meant</h2>
 *
 * <p>The package knows steps, findings and pictures and no aircraft: what to show is decided where the design is known.
 * Every number on a sheet is an entry, and every entry holds the step that computes it, so a sheet cannot show a number that
 * was not computed. Where the workings stand in the same report, the symbol on the sheet is a link to its line there. Lines of
 * workings are numbered through the report, and each input of a line says the number of the line that it comes from.
 * Findings come heaviest first, whatever order they were given in.
 *
 * <p>The page is set as an engineering note: one column, running text in lines of a length that reads well, tables and
 * pictures as wide as they need, and a print form without the navigation. It names no font, script or picture outside
 * itself. It is well-formed XML, so other programs can take it apart.
 *
 * <h2>What stays the same</h2>
 *
 * <p>The same report gives the same bytes, whatever the locale. Whatever stands in a title, a label or a cell is shown as it
 * is: markup in it has no effect. A picture is trusted, because it is an element already: give it only what
 * {@code core.drawing} or another careful writer made. Null is refused.
 */
@NullMarked
package io.github.wingwright.core.report;

import org.jspecify.annotations.NullMarked;
