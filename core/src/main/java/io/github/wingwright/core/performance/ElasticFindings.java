// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.Severity;
import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.quantity.Energy;
import io.github.wingwright.core.quantity.Force;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.NamedUnit;
import io.github.wingwright.core.quantity.Speed;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What to know of an elastic before it is let go, in words. */
final class ElasticFindings {
  private ElasticFindings() {}

  static List<Finding> of(ElasticLaunch elastic, Mass glider) {
    List<Finding> findings = new ArrayList<>();
    findings.add(
        Finding.of(
            Severity.CAUTION,
            "elastic launch",
            String.format(
                Locale.ROOT,
                "The stretched elastic holds %s. Wear eye protection, all who stand near as well; never stretch or let go"
                    + " towards anyone; look over rubber and knots for cracks before each launch.",
                elastic.energy().format(Energy.JOULE, 2)),
            Source.COMMON_PRACTICE));
    findings.add(
        Finding.of(
            Severity.NOTE,
            "launch load",
            String.format(
                Locale.ROOT,
                "The elastic pulls at the hook with %s, %.0f times the weight, and the glider leaves it at %s: nose weight,"
                    + " wing and tail must be held against that much, backwards.",
                elastic.greatestPull().format(Force.NEWTON, 2),
                elastic.loadFactor(glider),
                elastic.speed(glider).format(Speed.METRE_PER_SECOND, 3)),
            Source.library("pull of the elastic over weight")));
    Mass rubber = elastic.elasticMass();
    if (rubber.isPositive() && elastic.energy().si() > ElasticLaunch.RUBBER_ENERGY * rubber.si()) {
      findings.add(tooMuch(elastic.energy(), rubber));
    }
    return Finding.inOrderOfWeight(findings);
  }

  private static Finding tooMuch(Energy energy, Mass rubber) {
    return Finding.of(
        Severity.CAUTION,
        "energy of the elastic",
        String.format(
            Locale.ROOT,
            "%s is more than rubber can store: %.0f kJ/kg is close to breaking. Take at least %s of it, or stretch it less.",
            NamedUnit.NUMBER.format(1e-3 * energy.si() / rubber.si(), 2) + " kJ/kg",
            1e-3 * ElasticLaunch.RUBBER_ENERGY,
            Mass.kilograms(energy.si() / ElasticLaunch.RUBBER_ENERGY).format(Mass.GRAM, 3)),
        Source.fromMemory("energy of natural rubber strip close to breaking", ""));
  }
}
