// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.core.basis.Consideration;
import io.github.wingwright.core.basis.Decision;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.basis.Strength;
import io.github.wingwright.core.geometry.BodyShape;
import io.github.wingwright.core.sizing.BodyShell;
import io.github.wingwright.core.sizing.Considerations;
import io.github.wingwright.core.sizing.FuselageSizing;
import io.github.wingwright.examples.brief.Field;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Reads the considerations of a brief. Each may carry {@code "strength"}, {@code "set_aside_because"} or {@code
 * "provisional_until"}. They keep the library's own names, in the units of the brief.
 */
final class ConsiderationReader {
  private final Field fields;
  private final BodyShape shape;
  private final Units units;
  private final Map<String, Function<Field, Rule>> readers = new LinkedHashMap<>();
  private final LayoutRules layout;
  private final Map<String, String> rules = new LinkedHashMap<>();
  private final Map<String, Field> entries = new LinkedHashMap<>();
  private final List<Step> known = new ArrayList<>();

  private FuselageSizing sizing = FuselageSizing.of(BodyShape.capsule());

  ConsiderationReader(
      Field fields,
      BodyShape shape,
      Units units,
      FuselageBrief.WingPlace wing,
      BodyShell shell,
      Optional<Inside> inside,
      Optional<FuselageBrief.Pilot> pilot,
      Optional<FuselageBrief.Wheels> wheels) {
    this.fields = fields;
    this.shape = shape;
    this.units = units;
    SizeRules size = new SizeRules(wing, inside, known);
    layout = new LayoutRules(wing, inside, pilot, wheels, known);
    StrengthRules strength = new StrengthRules(shell);
    readers.put("longest_part", size::longestPart);
    readers.put("machine", size::machine);
    readers.put("length", size::length);
    readers.put("diameter", size::diameter);
    readers.put("fineness", size::fineness);
    readers.put("contents", size::contents);
    readers.put("volume", size::volume);
    readers.put("wing_thickness", size::wingThickness);
    readers.put("wing_through", layout::wingThrough);
    readers.put("saddle", layout::saddle);
    readers.put("vision", layout::vision);
    readers.put("rotation", layout::rotation);
    readers.put("tip_back", layout::tipBack);
    readers.put("closure", layout::closure);
    readers.put("tail_arm", layout::tailArm);
    readers.put("balance", layout::balance);
    readers.put("tail_load", strength::tailLoad);
    readers.put("nose_impact", strength::noseImpact);
    readers.put("nose_radius", strength::noseRadius);
  }

  Asked read(FuselageSizing plain) {
    sizing = plain;
    readers.forEach(this::add);
    fields.refuseTheRest();
    return new Asked(sizing, rules, entries, layout.overNose(), layout.rotation(), known);
  }

  private void add(String key, Function<Field, Rule> reader) {
    Optional<Field> given = fields.optional(key);
    if (given.isEmpty()) {
      return;
    }
    Field field = given.get();
    Rule rule = field.as(reader);
    Optional<Strength> strength = field.optional("strength").map(ConsiderationReader::strength);
    Optional<String> aside = field.optional("set_aside_because").map(Field::text);
    Optional<String> until = field.optional("provisional_until").map(Field::text);
    if (aside.isPresent() && until.isPresent()) {
      throw field.error("can be set aside or provisional, not both");
    }
    field.refuseTheRest();
    // Called by its own name as the reader of the brief would say it: so every page and picture speaks in these units.
    Consideration own = rule.consideration().on(shape);
    String name = own.nameIn(units.all());
    Consideration called = rated(Considerations.called(name, own), strength);
    rules.put(name, rule.formula());
    entries.put(name, field);
    Decision decision =
        aside
            .map(Decision::notApplicable)
            .orElseGet(() -> until.map(Decision::provisional).orElse(Decision.chosen()));
    sizing =
        switch (decision.kind()) {
          case CHOSEN -> sizing.considering(called);
          case PROVISIONAL -> sizing.provisionally(called, decision.reason());
          case NOT_APPLICABLE -> sizing.settingAside(called, decision.reason());
        };
  }

  private static Strength strength(Field field) {
    Strength strength = field.choice(Strength.class);
    if (strength == Strength.TARGET) {
      throw field.error("must be limit or guideline, was \"target\"");
    }
    return strength;
  }

  private static Consideration rated(Consideration consideration, Optional<Strength> strength) {
    if (strength.isEmpty()) {
      return consideration;
    }
    return strength.get() == Strength.LIMIT
        ? Considerations.asLimit(consideration)
        : Considerations.asGuideline(consideration);
  }
}
