// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class LayoutTest {
  @Test
  void widthsAreThoseOfTheTable() {
    // Ten figures of 556 thousandths.
    assertThat(TextWidth.of("0123456789", 10.0, false)).isCloseTo(55.6, within(1e-12));
    assertThat(TextWidth.of("Ill", 1000.0, false)).isCloseTo(278.0 + 222.0 + 222.0, within(1e-9));
    assertThat(TextWidth.of("wide", 3.0, true)).isGreaterThan(TextWidth.of("wide", 3.0, false));
  }

  @Test
  void wrappedTextKeepsTheWidthAndLosesNoWordUntilItIsCut() {
    Lettering lettering = Lettering.start(3.5);
    String text = "a line of several words that must be broken somewhere to fit";
    List<String> lines = TextWidth.wrap(text, 30.0, lettering, 9);
    assertThat(lines).hasSizeGreaterThan(2).allMatch(l -> lettering.width(l) <= 30.0);
    assertThat(String.join(" ", lines)).isEqualTo(text);
    List<String> cut = TextWidth.wrap(text, 30.0, lettering, 2);
    assertThat(cut).hasSize(2).allMatch(l -> lettering.width(l) <= 30.0);
    assertThat(cut.get(1)).endsWith("…");
  }

  @Test
  void aWordWiderThanTheLineIsCut() {
    Lettering lettering = Lettering.start(3.5);
    assertThat(TextWidth.wrap("x".repeat(200), 30.0, lettering, 3)).allMatch(l -> lettering.width(l) <= 30.0);
    assertThat(TextWidth.wrap("", 30.0, lettering, 3)).containsExactly("");
  }

  @Test
  void aLineThroughABoxIsSeenAndOneBesideItIsNot() {
    Box box = new Box(0.0, 0.0, 10.0, 5.0);
    assertThat(box.crossedBy(-5.0, 2.0, 15.0, 3.0)).isTrue();
    assertThat(box.crossedBy(2.0, 2.0, 3.0, 3.0)).isTrue();
    assertThat(box.crossedBy(5.0, -5.0, 5.0, 20.0)).isTrue();
    assertThat(box.crossedBy(-5.0, 6.0, 15.0, 7.0)).isFalse();
    assertThat(box.crossedBy(-3.0, 3.0, 3.0, -3.1)).isFalse();
    assertThat(box.crossedBy(-5.0, 2.0, -1.0, 3.0)).isFalse();
  }

  @Test
  void ticksAreRoundAndInsideTheAxis() {
    assertThat(new Axis(0.0, 10.0, 0.0, 100.0).ticks(5)).containsExactly(0.0, 2.0, 4.0, 6.0, 8.0, 10.0);
    assertThat(new Axis(-1.05, 1.05, 0.0, 100.0).ticks(4)).containsExactly(-1.0, 0.0, 1.0);
  }

  @Test
  void figuresOfTicksTellNeighboursApart() {
    List<Axis.Tick> ticks = new Axis(100_000.0, 100_004.0, 0.0, 100.0).labelledTicks(Lettering.middle(3.1));
    assertThat(ticks.stream().map(Axis.Tick::label).distinct().count()).isEqualTo(ticks.size());
    assertThat(ticks).hasSizeGreaterThan(1);
  }

  @Test
  void aFigureStandsInsideIfItFitsAndShorterDimensionsStandNearer() {
    Sketch sketch = new Sketch();
    new DimensionStack(DimensionLine.Direction.HORIZONTAL, 0.0, 1.0)
        .add(0.0, 100.0, 0.0, 0.0, "100")
        .add(0.0, 20.0, 0.0, 0.0, "20")
        .add(20.0, 50.0, 0.0, 0.0, "30")
        .draw(sketch);
    // Two rows: the chain 20, 30 at 7 mm, the whole at 14 mm, its extension lines 1.2 mm further.
    assertThat(sketch.bounds().bottom()).isCloseTo(15.2, within(1e-12));
    assertThat(sketch.bounds().left()).isCloseTo(0.0, within(1e-12));
    assertThat(sketch.bounds().right()).isCloseTo(100.0, within(1e-12));
    assertThat(new DimensionLine(0.0, 4.0, 0.0, 0.0, "4000").figureFitsInside()).isFalse();
  }

  @Test
  void endsOfADimensionMayComeInEitherOrder() {
    DimensionLine line = new DimensionLine(5.0, 1.0, 7.0, 8.0, "4");
    assertThat(line).isEqualTo(new DimensionLine(1.0, 5.0, 8.0, 7.0, "4"));
  }
}
