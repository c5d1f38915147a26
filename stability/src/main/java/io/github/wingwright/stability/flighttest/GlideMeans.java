// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.stability.flighttest;

import io.github.wingwright.core.aerodynamics.DragLaw;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * What several steady glides say together.
 *
 * <p>Lift to drag is averaged as its reciprocal, which errs to both sides alike; each flight counts by how well it was
 * measured, not by what was read; and the mass, which all flights share, does not get more certain by flying more.
 */
final class GlideMeans {
  private final List<GlideReading> readings;
  private final List<GlideReading> typical;
  private final DragLaw reckoned;
  private final double viscosity;

  GlideMeans(List<GlideReading> readings, DragLaw reckoned, double viscosity) {
    this.readings = readings;
    this.reckoned = reckoned;
    this.viscosity = viscosity;
    double flight = readings.stream().mapToDouble(r -> r.speed().value()).average().orElse(1.0);
    double launched =
        readings.stream().filter(GlideReading::thrown).mapToDouble(r -> r.launch().value()).average().orElse(flight);
    typical = readings.stream().map(r -> r.atSpeeds(flight, launched)).toList();
  }

  /** Values as read, uncertainties without their noise. */
  private Optional<Measured> mean(List<Measured> values, Function<GlideReading, Measured> measure) {
    return values.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Measured.mean(
                IntStream.range(0, values.size())
                    .mapToObj(i -> new Measured(values.get(i).value(), measure.apply(typical.get(i)).uncertainty()))
                    .toList()));
  }

  private Optional<Measured> mean(Function<GlideReading, Measured> measure) {
    return mean(readings.stream().map(measure).toList(), measure);
  }

  Optional<Measured> liftToDrag() {
    return mean(GlideReading::slope).map(slope -> Measured.propagated(v -> 1.0 / v[0], slope));
  }

  Optional<Measured> sinkRate() {
    return mean(GlideReading::sinkRate);
  }

  /** Drag beyond what was reckoned, of each flight, without the mass that all share. */
  List<Measured> excess() {
    return readings.stream().map(r -> excessWeighing(r, r.mass().value())).toList();
  }

  private Measured excessWeighing(GlideReading reading, double mass) {
    return reading.weighing(mass).excess(reckoned, viscosity);
  }

  Optional<Measured> meanExcess() {
    if (readings.isEmpty()) {
      return Optional.empty();
    }
    Measured mass = readings.get(0).mass();
    Measured own = excessWeighing(mass.value());
    double shared =
        0.5 * (excessWeighing(mass.value() + mass.uncertainty()).value() - excessWeighing(mass.value() - mass.uncertainty()).value());
    return Optional.of(new Measured(own.value(), Math.hypot(own.uncertainty(), shared)));
  }

  private Measured excessWeighing(double mass) {
    return mean(r -> excessWeighing(r, mass)).orElseThrow();
  }
}
