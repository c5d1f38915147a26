// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.sizing;

import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Density;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.WingLoading;
import java.util.Optional;
import java.util.OptionalDouble;

/** What was said about the size of a wing. */
record WingInputs(
    Optional<Length> span,
    Optional<Area> area,
    OptionalDouble aspectRatio,
    Optional<WingLoading> loading,
    Optional<Mass> mass,
    Optional<SpeedAtLift> speed) {
  static final WingInputs NONE =
      new WingInputs(
          Optional.empty(),
          Optional.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  record SpeedAtLift(Speed speed, double liftCoefficient, Density density) {}

  WingInputs withSpan(Length value) {
    return new WingInputs(Optional.of(value), area, aspectRatio, loading, mass, speed);
  }

  WingInputs withArea(Area value) {
    return new WingInputs(span, Optional.of(value), aspectRatio, loading, mass, speed);
  }

  WingInputs withAspectRatio(double value) {
    return new WingInputs(span, area, OptionalDouble.of(value), loading, mass, speed);
  }

  WingInputs withLoading(WingLoading value) {
    return new WingInputs(span, area, aspectRatio, Optional.of(value), mass, speed);
  }

  WingInputs withMass(Mass value) {
    return new WingInputs(span, area, aspectRatio, loading, Optional.of(value), speed);
  }

  WingInputs withSpeed(SpeedAtLift value) {
    return new WingInputs(span, area, aspectRatio, loading, mass, Optional.of(value));
  }
}
