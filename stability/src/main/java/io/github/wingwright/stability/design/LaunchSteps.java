// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.design;

import io.github.wingwright.core.basis.Source;
import io.github.wingwright.core.basis.Step;
import io.github.wingwright.core.performance.ElasticLaunch;

/** The workings of the launch: a speed that the brief gives, or what its elastic gives the glider as it came out. */
final class LaunchSteps {
  private static final Source NOT_TOLD = Source.library("the brief tells none, so none moves along");

  private LaunchSteps() {}

  static Step speed(Launch launch, Step mass) {
    return launch
        .elastic()
        .map(elastic -> fromElastic(elastic, mass))
        .orElseGet(() -> Step.given("launch speed", "V_l", launch.speed(), Source.BRIEF));
  }

  private static Step fromElastic(ElasticLaunch elastic, Step mass) {
    return Step.of(
        "launch speed off the elastic",
        "V_l",
        ElasticLaunch.SPEED,
        Step.given(
            "part of the energy that reaches the glider",
            "η",
            elastic.efficiency(),
            elastic.isUsualEfficiency() ? Source.COMMON_PRACTICE : Source.BRIEF),
        Step.given("energy of the stretched elastic", "E", elastic.energy(), Source.library("area under the pull of the brief")),
        mass,
        Step.given(
            "mass of the elastic", "m_e", elastic.elasticMass(), elastic.elasticMass().isPositive() ? Source.BRIEF : NOT_TOLD));
  }
}
