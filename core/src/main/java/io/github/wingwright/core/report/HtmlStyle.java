// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.report;

/** How the page looks: one column, as an engineering note is set, on screen and on paper. */
final class HtmlStyle {
  /** The style sheet. It names no font that would have to be fetched. */
  static final String SHEET =
      """
      :root { --ink: #1d2b36; --soft: #5b6b76; --rule: #d5dbdf; --accent: #00695f; --warm: #b5451b; --amber: #b98a14; }
      * { box-sizing: border-box; }
      body { font: 17px/1.55 Georgia, 'Times New Roman', 'Liberation Serif', serif; color: var(--ink); background: #f4f5f3; margin: 0; }
      main { max-width: 62rem; margin: 0 auto; padding: 2.5rem 3rem 4rem; background: #fff; }
      h1 { font-size: 2rem; line-height: 1.2; margin: 0 0 .3rem; overflow-wrap: anywhere; }
      h2 { font-size: 1.35rem; line-height: 1.25; margin: 2.8rem 0 .8rem; padding-bottom: .25rem; border-bottom: 2px solid var(--accent); overflow-wrap: anywhere; }
      h2, tr, figure, .finding { scroll-margin-top: 1rem; }
      p, ul { max-width: 42rem; margin: .7rem 0; overflow-wrap: anywhere; }
      ul { padding-left: 1.3rem; }
      li { margin: .2rem 0; }
      .subtitle { color: var(--soft); margin: 0 0 1.6rem; }
      nav { columns: 14rem; column-gap: 2rem; padding: .7rem 0; border-top: 1px solid var(--rule); border-bottom: 1px solid var(--rule); }
      nav, table, figcaption, .finding { font-family: Helvetica, Arial, 'Liberation Sans', sans-serif; }
      nav a { font-size: .88rem; line-height: 1.7; color: var(--accent); text-decoration: none; display: block; break-inside: avoid; }
      nav a:hover, td a:hover { text-decoration: underline; }
      .wide { overflow-x: auto; margin: 1rem 0 1.2rem; }
      table { border-collapse: collapse; font-size: .88rem; line-height: 1.4; min-width: 50%; }
      th { text-align: left; border-bottom: 1.5px solid var(--ink); padding: .3rem 1.4rem .3rem 0; }
      td { border-bottom: 1px solid var(--rule); padding: .3rem 1.4rem .3rem 0; vertical-align: top; }
      tr > :last-child { padding-right: .2rem; }
      .number { text-align: right; white-space: nowrap; font-variant-numeric: tabular-nums; }
      td.symbol, td.symbol a { font: italic 1.05em Georgia, 'Times New Roman', 'Liberation Serif', serif; white-space: nowrap; }
      td.symbol a { color: var(--accent); text-decoration: none; }
      sub { font-size: .75em; line-height: 0; }
      .source { color: var(--soft); font-size: .92em; }
      figure { margin: 1.2rem 0 1.6rem; }
      figure svg { display: block; max-width: 100%; height: auto; border: 1px solid var(--rule); }
      figcaption { color: var(--soft); font-size: .88rem; margin-top: .4rem; }
      .finding { border-left: 5px solid var(--rule); padding: .45rem 1rem; margin: .8rem 0; max-width: 46rem; font-size: .92rem; }
      .finding.serious { border-color: var(--warm); background: #fbeee7; }
      .finding.caution { border-color: var(--amber); background: #fcf7e8; }
      .finding p { margin: .1rem 0; }
      .weight { text-transform: uppercase; letter-spacing: .06em; font-size: .78em; color: var(--soft); margin-right: .5em; }
      .steps { width: 100%; }
      td.step, a.reference { color: var(--soft); font-size: .85em; text-decoration: none; white-space: nowrap; }
      .symbols { columns: 26rem; column-gap: 2rem; max-width: none; list-style: none; padding: 0; font-size: .88rem; line-height: 1.4; }
      .symbols li { break-inside: avoid; }
      .steps th:nth-child(1) { width: 2.6rem; }
      .steps th:nth-child(2) { width: 4.6rem; }
      .steps th:nth-child(3) { width: 9rem; }
      .steps td { padding-top: .5rem; padding-bottom: .5rem; }
      .formula { font: .95em/1.5 'DejaVu Sans Mono', Menlo, Consolas, monospace; margin: .15rem 0; overflow-wrap: anywhere; }
      tr:target td { background: #d3ebe6; }
      .top { text-align: right; font-size: .8rem; max-width: none; margin: 1rem 0 0; }
      .top a { color: var(--soft); text-decoration: none; }
      @media (max-width: 56rem) { main { padding: 1.5rem 1.5rem 3rem; } }
      @media print {
        @page { margin: 18mm 16mm; @bottom-right { content: counter(page) ' of ' counter(pages); font: 8pt Helvetica, Arial, sans-serif; } }
        html { font-size: 12pt; }
        body { background: #fff; font-size: 10pt; line-height: 1.4; }
        main { padding: 0; max-width: none; }
        .top { display: none; }
        p, ul { max-width: none; margin: .4rem 0; orphans: 3; widows: 3; }
        h1, h2, p:has(+ .wide), p:has(+ ul) { break-after: avoid; }
        h2 { margin-top: 1.6rem; }
        .wide { overflow: visible; margin: .6rem 0 .8rem; }
        table { font-size: 8pt; line-height: 1.3; max-width: 100%; }
        th, td { padding: .15rem .6rem .15rem 0; }
        th.number { white-space: normal; }
        .steps td { padding-top: .15rem; padding-bottom: .15rem; }
        .formula { margin: 0; line-height: 1.35; }
        .steps th:nth-child(1) { width: 1.7rem; }
        .steps th:nth-child(2) { width: 3rem; }
        .steps th:nth-child(3) { width: 6rem; }
        .symbols { columns: 2; font-size: 8pt; }
        nav { columns: 3; padding: .4rem 0; }
        nav a, figcaption { font-size: 8.5pt; line-height: 1.5; }
        .finding { max-width: none; margin: .5rem 0; padding: .3rem .8rem; font-size: 8.5pt; }
        tr, figure, .finding, li { break-inside: avoid; }
        /* Short tables stay whole; a longer one parts between rows, with two of them at least on either page. */
        .wide:not(:has(tbody > tr:nth-child(9))):not(:has(.steps tr:nth-child(6))) { break-inside: avoid; }
        tbody > tr:first-child, tbody > tr:nth-last-child(2) { break-after: avoid; }
        thead { display: table-header-group; }
        figure { margin: .6rem 0 .8rem; }
        figure svg { width: auto; max-width: 100%; max-height: 90mm; }
        figure.tall svg { max-height: 145mm; }
        .finding, tr:target td { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
      }
      """;

  private HtmlStyle() {}
}
