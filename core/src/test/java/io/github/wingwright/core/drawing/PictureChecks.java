// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

/** What holds for every picture. */
final class PictureChecks {
  private PictureChecks() {}

  /** Well-formed, everything on the sheet, no text upon another. */
  static SvgReader isLegible(Svg svg, String what) throws Exception {
    SvgReader reader = new SvgReader(svg);
    // Coordinates are rounded to a hundredth of a millimetre.
    Box sheet = reader.sheet().grownBy(0.02);
    for (double[] point : reader.points()) {
      boolean inside = new Box(point[0], point[1], point[0], point[1]).within(sheet);
      assertThat(inside).as("%s: point (%s, %s) lies on the sheet %s", what, point[0], point[1], sheet).isTrue();
    }
    List<SvgReader.Text> texts = reader.texts();
    for (int i = 0; i < texts.size(); i++) {
      SvgReader.Text text = texts.get(i);
      assertThat(text.box().within(sheet)).as("%s: %s lies on the sheet %s", what, text, sheet).isTrue();
      for (SvgReader.Text other : texts.subList(i + 1, texts.size())) {
        assertThat(text.box().grownBy(-0.02).overlaps(other.box())).as("%s: %s upon %s", what, text, other).isFalse();
      }
    }
    return reader;
  }

  /** The same bytes twice, and under another default locale. */
  static void isStable(Supplier<Svg> picture) {
    String first = picture.get().document();
    assertThat(picture.get().document()).isEqualTo(first);
    Locale before = Locale.getDefault();
    try {
      for (String tag : List.of("de-DE", "ar-EG-u-nu-arab", "tr-TR", "hi-IN-u-nu-deva")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(picture.get().document()).as(tag).isEqualTo(first);
      }
    } finally {
      Locale.setDefault(before);
    }
  }
}
