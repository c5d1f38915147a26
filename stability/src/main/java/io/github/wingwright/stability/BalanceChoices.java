// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability;

import io.github.wingwright.core.geometry.Airframe;
import io.github.wingwright.core.mass.Ballast;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import java.util.function.UnaryOperator;

/** What a balance was asked for so far. A specification copies it before it changes one field, so no two share it. */
final class BalanceChoices {
  final PitchModel model;
  Mass wingMass = Mass.ZERO;
  Length wingMassX = Length.ZERO;
  Mass otherMass = Mass.ZERO;
  Length otherMassX = Length.ZERO;
  Length foremost;
  Length aftmost;
  Length ballastFrom = Length.ZERO;
  Length ballastTo = Length.ZERO;
  Mass mostBallast = Mass.ZERO;
  UnaryOperator<Airframe> refit = airframe -> airframe;

  BalanceChoices(PitchModel model) {
    this.model = model;
    foremost = model.airframe().wing().placement().x();
    aftmost = foremost;
  }

  BalanceChoices(BalanceChoices other) {
    model = other.model;
    wingMass = other.wingMass;
    wingMassX = other.wingMassX;
    otherMass = other.otherMass;
    otherMassX = other.otherMassX;
    foremost = other.foremost;
    aftmost = other.aftmost;
    ballastFrom = other.ballastFrom;
    ballastTo = other.ballastTo;
    mostBallast = other.mostBallast;
    refit = other.refit;
  }

  /** The end of the room for ballast at which least does, for a move of the centre of gravity. */
  Length ballastPlace(double centre, double target) {
    double front = Ballast.ballastMass(1.0, centre, target, ballastFrom.si());
    double rear = Ballast.ballastMass(1.0, centre, target, ballastTo.si());
    boolean frontHelps = front > 0.0;
    boolean rearHelps = rear > 0.0;
    return rearHelps && (!frontHelps || rear < front) ? ballastTo : ballastFrom;
  }
}
