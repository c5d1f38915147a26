// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.wingwright.core.basis.Interval;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.geometry.Fuselage;
import io.github.wingwright.core.geometry.Placement;
import io.github.wingwright.core.manufacture.BodySolid;
import io.github.wingwright.core.manufacture.BuildVolume;
import io.github.wingwright.core.manufacture.Lay;
import io.github.wingwright.core.manufacture.Part;
import io.github.wingwright.core.manufacture.Segmentation;
import io.github.wingwright.core.manufacture.SlenderPart;
import io.github.wingwright.core.mass.MassItem;
import io.github.wingwright.core.mass.MassStatement;
import io.github.wingwright.core.mass.Materials;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.sizing.Contents;
import io.github.wingwright.core.sizing.Thing;
import io.github.wingwright.testing.NullDoors;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class NullIsRefusedTest {
  /** What samples of plain numbers cannot make. */
  private static List<Object> samples() {
    Fuselage body = new Fuselage(BodyShape.capsule(), Length.millimetres(250), Length.millimetres(22));
    BuildVolume machine = BuildVolume.box(Length.millimetres(180), Length.millimetres(180), Length.millimetres(180));
    SlenderPart part = SlenderPart.body(body, Materials.PLA, Length.millimetres(0.8), x -> 0.1);
    return List.of(
        Interval.between(5, 12),
        MassStatement.of(MassItem.of("nose", Mass.grams(12), Placement.at(Length.millimetres(5), Length.ZERO))),
        Part.of("body", BodySolid.of(body).mesh(Length.millimetres(0.5))),
        BodySolid.of(body).mesh(Length.millimetres(0.5)),
        part,
        Segmentation.of(part, machine, Set.of(Lay.values())),
        Contents.of(Thing.box("battery", Length.millimetres(30), Length.millimetres(10), Length.millimetres(8), Mass.grams(9))));
  }

  @Test
  void nothing_is_refused_by_name_where_it_is_given() {
    NullDoors doors = NullDoors.of(samples(), "io.github.wingwright.core");
    assertThat(doors.tried()).isGreaterThan(1400);
    assertThat(doors.open()).isEmpty();
  }
}
