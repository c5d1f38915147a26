// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class RootPictureTest {
  private static final RootPicture USUAL =
      new RootPicture(
          "motions across the plane of symmetry",
          List.of(
              new RootPicture.Root("roll", -22.0, 0.0, false),
              new RootPicture.Root("", -21.0, 0.0, true),
              new RootPicture.Root("Dutch roll", -0.7, 8.5, false),
              new RootPicture.Root("without roll", -1.2, 7.2, true),
              new RootPicture.Root("spiral", -0.02, 0.0, false)));

  @Test
  void motionsAreNamedAndTheSlowOnesShownEnlarged() throws Exception {
    assertThat(PictureChecks.isLegible(USUAL.draw(), "usual").words())
        .contains("roll", "Dutch roll", "spiral", "without roll", "near the origin, enlarged", "ζ 0.7");
  }

  @Test
  void rootsOfOneSizeNeedNoSecondMap() throws Exception {
    RootPicture one = new RootPicture("one", List.of(new RootPicture.Root("swing", -1.0, 2.0, false), new RootPicture.Root("creep", -2.0, 0.0, false)));
    assertThat(PictureChecks.isLegible(one.draw(), "one").words()).contains("swing", "creep").doesNotContain("near the origin, enlarged");
  }

  @Test
  void rootsAnywhereAreLegible() throws Exception {
    for (long seed = 1; seed <= 200; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      List<RootPicture.Root> roots = new ArrayList<>();
      int count = random.nextInt(1, 8);
      for (int i = 0; i < count; i++) {
        double size = Math.pow(10.0, random.nextDouble(-3.0, 3.0));
        double angle = random.nextBoolean() ? Math.PI * random.nextInt(0, 2) : random.nextDouble(0.0, Math.PI);
        roots.add(new RootPicture.Root("motion " + i, size * Math.cos(angle), Math.abs(size * Math.sin(angle)), random.nextBoolean()));
      }
      PictureChecks.isLegible(new RootPicture("seed " + seed, roots).draw(), "seed " + seed);
    }
  }

  @Test
  void theOriginItselfCanBeShown() throws Exception {
    PictureChecks.isLegible(new RootPicture("still", List.of(new RootPicture.Root("neutral", 0.0, 0.0, false))).draw(), "origin");
  }

  @Test
  void whatCannotBeDrawnIsRefused() {
    assertThatThrownBy(() -> new RootPicture("t", List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a map needs at least one root, got none");
    assertThatThrownBy(() -> new RootPicture.Root("r", 1.0, -2.0, false))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("root must be finite with an imaginary part of 0 or more, was 1.0 + -2.0i");
  }

  @Test
  void theSameRootsGiveTheSameBytesInEveryLocale() {
    PictureChecks.isStable(USUAL::draw);
  }
}
