// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Formula;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Workings;
import io.github.wingwright.core.drawing.Svg;
import io.github.wingwright.core.geometry.TaperedPlanform;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class ReportTest {
  private static final String HOSTILE = "</p><script src=\"http://example.org\">|`*x*`</script> & \u0000\nnext";

  private final Step area = Step.given("wing reference area", "S", Area.squareMetres(0.0299), Source.BRIEF);
  private final Step aspect = Step.given("aspect ratio", "A", 7.5, Source.BRIEF);
  private final Step taper = Step.given("taper ratio", "λ", 0.625, Source.COMMON_PRACTICE);
  private final Step span = Step.of(TaperedPlanform.SPAN, area, aspect);
  private final Step root = Step.of(TaperedPlanform.ROOT_CHORD, area, span, taper);

  private Report report() {
    List<Finding> findings =
        List.of(
            Finding.of(Severity.NOTE, "light", "A note.", Source.COMMON_PRACTICE),
            Finding.of(Severity.SERIOUS, "heavy", "A limit is broken.", Source.BRIEF),
            Finding.of(Severity.CAUTION, "middling", "A guideline is left.", Source.BRIEF));
    return new Report(
        "Glider",
        "a note",
        List.of(
            Chapter.of(
                "Summary",
                new Block.Paragraph("Running text."),
                new Block.Points(List.of("one", "two")),
                new Block.Sheet(List.of(Entry.of("span", span, Length.MILLIMETRE), Entry.of(root)))),
            Chapter.of("Picture", new Block.Picture(new Svg(20.0, 10.0, "empty").element(), "a caption")),
            Chapter.of(
                "Mass", new Block.Table(List.of("part", "mass [g]"), List.of(List.of("wing|tail", "14.2"), List.of("nose", "6")))),
            Chapter.of("Findings", new Block.Findings(findings), new Block.Findings(List.of())),
            Chapter.of("Workings", new Block.Steps(Workings.of(List.of(root)))),
            Chapter.of("Workings again", new Block.Steps(Workings.of(List.of(span))))));
  }

  private static Report hostile() {
    Step step = Step.given(HOSTILE, "x_<", 1.0, new Source(Source.Standing.BRIEF, HOSTILE, ""));
    return new Report(
        HOSTILE,
        HOSTILE,
        List.of(
            Chapter.of(
                HOSTILE,
                new Block.Paragraph(HOSTILE),
                new Block.Points(List.of(HOSTILE)),
                new Block.Table(List.of(HOSTILE, "b"), List.of(List.of(HOSTILE, "1"))),
                new Block.Sheet(List.of(Entry.of(step))),
                new Block.Findings(List.of(Finding.of(Severity.NOTE, HOSTILE, HOSTILE, Source.library(HOSTILE)))),
                new Block.Picture(new Svg(20.0, 10.0, HOSTILE).element(), HOSTILE),
                new Block.Steps(Workings.of(List.of(step))))));
  }

  private static Document parse(String html) throws Exception {
    return DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(html)));
  }

  private static List<Element> elements(Document document, String name) {
    NodeList nodes = document.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  @Test
  void thePageIsWellFormedAndNeedsNothingFromElsewhere() throws Exception {
    String html = report().toHtml();
    Document document = parse(html);
    assertThat(elements(document, "h2")).extracting(Element::getTextContent).contains("Summary", "Workings");
    for (String name : List.of("script", "link", "img", "iframe", "object")) {
      assertThat(elements(document, name)).as(name).isEmpty();
    }
    String withoutNamespaces = html.replaceAll("xmlns=\"[^\"]*\"", "");
    assertThat(withoutNamespaces).doesNotContain("http:", "https:", "@import", "url(", "src=", "file:");
  }

  @Test
  void everyLinkLeadsToOnePlaceOnThePage() throws Exception {
    Document document = parse(report().toHtml());
    List<String> ids = new ArrayList<>();
    elements(document, "*").stream().map(e -> e.getAttribute("id")).filter(id -> !id.isEmpty()).forEach(ids::add);
    assertThat(ids).doesNotHaveDuplicates();
    List<Element> links = elements(document, "a");
    assertThat(links).hasSizeGreaterThan(6).allMatch(a -> ids.contains(a.getAttribute("href").substring(1)));
  }

  @Test
  void aSymbolOnTheSheetLeadsToItsStep() throws Exception {
    Document document = parse(report().toHtml());
    Element link =
        elements(document, "a").stream().filter(a -> a.getAttribute("href").startsWith("#step-")).findFirst().orElseThrow();
    assertThat(link.getTextContent()).isEqualTo("b");
    Element row =
        elements(document, "tr").stream()
            .filter(r -> ("#" + r.getAttribute("id")).equals(link.getAttribute("href")))
            .findFirst()
            .orElseThrow();
    assertThat(row.getTextContent()).startsWith("3b").contains("span", span.source().cite());
  }

  @Test
  void theSheetShowsTheValueOfTheStep() {
    assertThat(Entry.of("span", span, Length.MILLIMETRE).text()).isEqualTo(Length.MILLIMETRE.format(span.value(), 4));
    assertThat(report().toHtml()).contains(">473.6 mm</td>");
    assertThat(report().toMarkdown()).contains("| span | b | 473.6 mm |");
  }

  @Test
  void theIndexOfASymbolIsSetAsAnIndex() {
    assertThat(report().toHtml()).contains("c<sub>r</sub>");
  }

  @Test
  void findingsComeHeaviestFirst() throws Exception {
    String html = report().toHtml();
    assertThat(html.indexOf(">heavy<")).isPositive().isLessThan(html.indexOf(">middling<"));
    assertThat(html.indexOf(">middling<")).isLessThan(html.indexOf(">light<"));
    assertThat(report().toMarkdown()).containsSubsequence("heavy", "middling", "light", "Nothing to report.");
    List<String> classes = elements(parse(html), "div").stream().map(e -> e.getAttribute("class")).toList();
    assertThat(classes).containsSubsequence("finding serious", "finding caution", "finding note");
  }

  @Test
  void numbersInTablesAreSetToTheRight() {
    assertThat(report().toHtml())
        .contains("<th>part</th><th class=\"number\">mass [g]</th>")
        .contains("<td>nose</td><td class=\"number\">6</td>");
  }

  @Test
  void aNumberInACellKeepsItsUnitOnItsLineAndAWordMayFollowOnTheNext() {
    List<String> bound = List.of("a 12 mm pod", "± 2.5 %", "-5 °C to 60 °C", "8 g, 1.2 g/m²", "0.03 N·m (late)", "692 cm²");
    List<String> free = List.of("3 to 14", "2 pieces", "5 walls", "1 in 20", "4 made", "2 grey", "wing 2 m\u00e2t", "2 (mm)");
    List<List<String>> rows = Stream.concat(bound.stream(), free.stream()).map(List::of).toList();
    Report report = new Report("t", "", List.of(Chapter.of("c", new Block.Table(List.of("50 mm"), rows))));
    assertThat(report.toHtml())
        .contains(">50\u00a0mm</th>", "a 12\u00a0mm pod<", "± 2.5\u00a0%<", "5\u00a0°C to 60\u00a0°C<", "8\u00a0g, 1.2\u00a0g/m²<")
        .contains("0.03\u00a0N·m (late)<", "692\u00a0cm²<")
        .contains(free.stream().map(text -> ">" + text + "<").toList());
    assertThat(report.toMarkdown()).doesNotContain("\u00a0");
  }

  @Test
  void hostileTextIsShownAndHasNoEffect() throws Exception {
    Document document = parse(hostile().toHtml());
    assertThat(elements(document, "script")).isEmpty();
    assertThat(elements(document, "h1").get(0).getTextContent()).contains("<script src=\"http://example.org\">");
    String markdown = hostile().toMarkdown();
    assertThat(markdown.replace("\\<", "")).doesNotContain("<script");
    assertThat(markdown.lines().findFirst().orElseThrow()).startsWith("# \\</p\\>").endsWith("next");
  }

  @Test
  void rowsOfAMarkdownTableHaveAsManyCellsAsItsHead() {
    for (String markdown : List.of(report().toMarkdown(), hostile().toMarkdown())) {
      int columns = 0;
      int tables = 0;
      for (String line : markdown.lines().toList()) {
        if (line.startsWith("|")) {
          int cells = line.replace("\\\\", "").replace("\\|", "").split("\\|", -1).length - 2;
          tables += columns == 0 ? 1 : 0;
          columns = columns == 0 ? cells : columns;
          assertThat(cells).as(line).isEqualTo(columns);
        } else {
          columns = 0;
        }
      }
      assertThat(tables).isGreaterThanOrEqualTo(3);
    }
  }

  @Test
  void aRaggedTableIsRefused() {
    assertThatThrownBy(() -> new Block.Table(List.of("a", "b"), List.of(List.of("only one"))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("each row needs 2 cells, got 1");
  }

  @Test
  void theSameReportGivesTheSameBytesInEveryLocale() {
    String html = report().toHtml();
    String markdown = report().toMarkdown();
    Locale before = Locale.getDefault();
    try {
      for (String tag : List.of("de-DE", "tr-TR", "ar-EG-u-nu-arab")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(report().toHtml()).as(tag).isEqualTo(html);
        assertThat(report().toMarkdown()).as(tag).isEqualTo(markdown);
      }
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void symbols_in_running_text_get_their_index_and_names_keep_theirs() {
    Block text = new Block.Paragraph("C_L 0.5, ω_n and C_mα̇, but wing.area_m2, a_long_name and fin_2.svg");
    assertThat(new Report("t", "", List.of(Chapter.of("c", text))).toHtml())
        .contains(
            "<i>C</i><sub>L</sub> 0.5, <i>ω</i><sub>n</sub> and <i>C</i><sub>mα̇</sub>, but wing.area_m2, a_long_name and"
                + " fin_2.svg");
  }

  @Test
  void a_sheet_repeats_its_head_on_the_next_page_and_every_page_has_its_number() {
    Step step = Step.given("span", "b", 0.48, Source.BRIEF);
    String html =
        new Report("t", "", List.of(Chapter.of("c", new Block.Sheet(List.of(Entry.of(step)))))).toHtml();
    assertThat(html).containsPattern("<table>\\s*<thead>").contains("counter(page)", "table-header-group");
  }

  private static Report handout() {
    Formula twice =
        Formula.named("twice").gives("y").as("2·a").where("a", "first", -1e9, 1e9).computedBy((double a) -> 2.0 * a);
    Step a = Step.given("first", "a", 1.25, Source.BRIEF);
    Step b = Step.of("second", "b", twice, a);
    Step again = Step.given("second, read again", "b", 2.5, Source.taken("elsewhere"));
    Step c = Step.of("third", "c_d", twice, again);
    return new Report(
        "handout",
        "",
        List.of(
            Chapter.of("one", new Block.Steps(Workings.of(List.of(b)))),
            Chapter.of("two", new Block.Steps(Workings.of(List.of(c)).computed()))));
  }

  @Test
  void each_line_of_the_workings_has_a_number_and_each_input_that_of_its_line() throws Exception {
    String html = handout().toHtml();
    assertThat(html).contains("= 2·a with a = 1.25 <a class=\"reference\" href=\"#step-1\">[1]</a>");
    // Read again elsewhere it is the same number: the reader is led to the line that made it.
    assertThat(html).contains("= 2·a with a = 2.5 <a class=\"reference\" href=\"#step-2\">[2]</a>");
    assertThat(html).contains("id=\"step-3\"><td class=\"step\">3</td>");
    assertThat(handout().toMarkdown()).contains("2·a with a = 1.25 |").doesNotContain("[1]");
    parse(html);
  }

  @Test
  void the_list_of_symbols_tells_each_meaning_with_the_line_at_which_it_stands_first() throws Exception {
    Report report = handout().withSymbols();
    assertThat(report.toHtml())
        .contains(
            "<li><i>b</i> &#8211; second <a class=\"reference\" href=\"#step-2\">[2]</a></li>",
            "<li><i>c<sub>d</sub></i> &#8211; third <a class=\"reference\" href=\"#step-3\">[3]</a></li>");
    assertThat(report.toMarkdown()).contains("- a: first\n- b: second\n");
    parse(report.toHtml());
  }

  @Test
  void a_picture_that_is_about_as_high_as_wide_is_given_more_of_the_page() {
    String tall = "<svg viewBox=\"0 0 185 200.4\"></svg>";
    String wide = "<svg viewBox=\"0 0 170 112\"></svg>";
    Report report =
        new Report("pictures", "", List.of(Chapter.of("x", new Block.Picture(tall, "a"), new Block.Picture(wide, "b"))));
    assertThat(report.toHtml()).contains("<figure class=\"tall\">\n" + tall, "<figure>\n" + wide);
  }
}
