// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.fuselage;

import io.github.wingwright.examples.brief.BriefException;
import io.github.wingwright.examples.brief.Field;

/** Why no fuselage follows from a brief that can be read, at the entry that has to change. */
final class NoFuselage {
  private static final String WHY = "no fuselage follows from this brief: ";

  private NoFuselage() {}

  static BriefException of(Field top, FuselageBrief brief, RuntimeException refusal) {
    BriefException told = told(top, brief, refusal);
    told.initCause(refusal);
    return told;
  }

  private static BriefException told(Field top, FuselageBrief brief, RuntimeException refusal) {
    Field considerations = top.required("considerations");
    Field choice = top.required("choice");
    if (brief.choice().length().isEmpty() && !boundsLength(brief)) {
      return considerations.error(
          WHY + "the length must be fixed or bounded: add \"longest_part\", \"machine\" or a \"length\" at most,"
              + " or give the choice a length; was neither");
    }
    if (refusal instanceof IllegalStateException
        && brief.choice().rule() == FuselageBrief.Choice.Rule.NEAREST_TO_TARGETS
        && choice.optional("by").isPresent()) {
      return choice.required("by").error(
          WHY + "nearest_to_targets needs a target: add \"wing_thickness\" to the considerations, or choose by another rule; had none");
    }
    return choice.optional("length").or(() -> choice.optional("diameter")).orElse(choice).error(WHY + refusal.getMessage());
  }

  private static boolean boundsLength(FuselageBrief brief) {
    try {
      brief.sizing().diameterRange();
      return true;
    } catch (IllegalStateException unbounded) {
      return false;
    }
  }
}
