// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import static io.github.wingwright.core.drawing.SampleAirframes.mm;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.quantity.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class SectionPictureTest {
  @Test
  void thinThickCamberedAndBluntSectionsAreLegible() throws Exception {
    for (double thickness : new double[] {0.02, 0.04, 0.09, 0.18}) {
      for (double camber : new double[] {-0.02, 0.0, 0.03, 0.09}) {
        for (double edge : new double[] {0.0, 0.002, 0.02}) {
          SampleSection section = new SampleSection(thickness, camber, edge);
          PictureChecks.isLegible(SectionPicture.draw(section, mm(53.2), Length.MILLIMETRE), section.toString());
        }
      }
    }
  }

  @Test
  void figuresAreThoseOfTheChordItIsMadeAt() throws Exception {
    SampleSection section = new SampleSection(0.06, 0.04, 0.005);
    List<String> words = new SvgReader(SectionPicture.draw(section, mm(50), Length.MILLIMETRE)).words();
    assertThat(words)
        .containsExactlyInAnyOrder(
            "sample section",
            "thickness 3 mm (6 %) at 33.3 % of the chord",
            "chord 50 mm",
            "camber 2 mm (4 %)",
            "trailing edge 0.25 mm (0.5 %)");
  }

  @Test
  void aSymmetricSectionWithASharpEdgeIsCalledSo() throws Exception {
    SvgReader reader = new SvgReader(SectionPicture.draw(new SampleSection(0.09, 0.0, 0.0), mm(50), Length.MILLIMETRE));
    assertThat(reader.words()).contains("symmetric", "sharp trailing edge");
  }

  @Test
  void theSameSectionGivesTheSameBytesInEveryLocale() {
    PictureChecks.isStable(() -> SectionPicture.draw(new SampleSection(0.09, 0.04, 0.01), mm(53.2), Length.MILLIMETRE));
  }
}
