// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.comparison;

import io.github.wingwright.core.basis.Finding;
import io.github.wingwright.core.basis.StepChange;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;

/** A {@link DesignComparison} as text: a line for each number that changed, and for each finding that came or went. */
public final class ComparisonTable {
  private final DesignComparison comparison;

  ComparisonTable(DesignComparison comparison) {
    this.comparison = comparison;
  }

  @Override
  public String toString() {
    StringJoiner lines = new StringJoiner("\n");
    lines.add(comparison.toString());
    for (StepChange decision : comparison.decisions()) {
      lines.add("because of " + decision.after().name() + ", " + decision.values());
    }
    for (ChangedNumber number : comparison.numbers()) {
      lines.add(
          String.format(
                  Locale.ROOT,
                  "%-40s%-34s%9s  %s",
                  number.name(),
                  number.change().values(),
                  number.percent(),
                  number.judgement().words())
              .stripTrailing());
    }
    findings(lines, "came: ", comparison.cameFindings());
    findings(lines, "went: ", comparison.wentFindings());
    return lines.toString();
  }

  private static void findings(StringJoiner lines, String head, List<Finding> findings) {
    findings.forEach(finding -> lines.add(head + finding));
  }
}
