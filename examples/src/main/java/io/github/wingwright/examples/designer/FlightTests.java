// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Mass;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Time;
import io.github.wingwright.examples.brief.BriefFile;
import io.github.wingwright.examples.brief.Field;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.flighttest.Behaviour;
import io.github.wingwright.stability.flighttest.FlightEvaluation;
import io.github.wingwright.stability.flighttest.FlightTest;
import io.github.wingwright.stability.flighttest.Measured;
import io.github.wingwright.stability.flighttest.WeighedPart;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Test flights as they stand in a file beside the brief: {@code glider.flights.json} beside {@code glider.json}.
 *
 * @param note what the file says about them; that they are invented, if they are
 * @param weighed parts on the scales
 * @param balancePoint where it balances, if that was tried
 * @param flights the flights
 * @param top the file's top object, for complaints about what only the design can judge
 */
record FlightTests(
    String note, List<WeighedPart> weighed, Optional<Measured> balancePoint, List<FlightTest> flights, Field top) {
  private static final String ENDING = ".json";
  private static final String FLIGHTS = ".flights.json";

  /** The file of flights beside a brief, empty if there is none. */
  static Optional<FlightTests> beside(Path brief) {
    String name = String.valueOf(brief.getFileName());
    if (!name.endsWith(ENDING)) {
      return Optional.empty();
    }
    Path file = brief.resolveSibling(name.substring(0, name.length() - ENDING.length()) + FLIGHTS);
    return Files.isRegularFile(file) ? Optional.of(from(BriefFile.read(file))) : Optional.empty();
  }

  /**
   * Reads flights.
   *
   * @param top the file's top object
   * @return the flights
   * @throws io.github.wingwright.examples.brief.BriefException if they cannot be used; the message says where and why
   */
  static FlightTests from(Field top) {
    String note = top.required("note").text();
    Field u = top.required("uncertainty");
    Accuracy accuracy =
        new Accuracy(
            u.required("distance").quantity(Length.KIND, "1 mm", "10 m"),
            u.required("height").quantity(Length.KIND, "1 mm", "10 m"),
            u.required("time").quantity(Time.KIND, "1 ms", "10 s"),
            u.required("speed").quantity(Speed.KIND, "0.01 m/s", "10 m/s"),
            u.required("mass").quantity(Mass.KIND, "1 mg", "1 kg"),
            u.required("balance_point").quantity(Length.KIND, "0.01 mm", "1 m"));
    u.refuseTheRest();
    List<WeighedPart> weighed = new ArrayList<>();
    for (Field part : top.optional("weighed").map(Field::items).orElse(List.of())) {
      Mass mass = part.required("mass").quantity(Mass.KIND, "0 g", "1000 kg");
      weighed.add(new WeighedPart(part.required("part").text(), Measured.of(mass, accuracy.mass)));
      part.refuseTheRest();
    }
    Optional<Measured> balance =
        top.optional("balance_point")
            .map(f -> Measured.of(f.quantity(Length.KIND, "0 mm", "100 m"), accuracy.balance));
    List<FlightTest> flights = new ArrayList<>();
    for (Field flight : top.required("flights").items()) {
      flights.add(flight.as(f -> flight(f, accuracy)));
    }
    top.refuseTheRest();
    return new FlightTests(note, List.copyOf(weighed), balance, List.copyOf(flights), top);
  }

  /** How well everything was measured: two out of three lie within it. */
  private record Accuracy(Length distance, Length height, Time time, Speed speed, Mass mass, Length balance) {}

  private static FlightTest flight(Field field, Accuracy accuracy) {
    Length distance = field.required("distance").quantity(Length.KIND, "0.1 m", "1000 m");
    Length height = field.required("height").quantity(Length.KIND, "0.1 m", "200 m");
    FlightTest flight =
        FlightTest.named(
            field.required("name").text(),
            Measured.of(distance, accuracy.distance),
            Measured.of(height, accuracy.height));
    Optional<Field> time = field.optional("time");
    if (time.isPresent()) {
      flight = flight.in(Measured.of(time.get().quantity(Time.KIND, "0.1 s", "1000 s"), accuracy.time));
    }
    Optional<Field> speed = field.optional("launch_speed");
    if (speed.isPresent()) {
      flight = flight.thrownAt(Measured.of(speed.get().quantity(Speed.KIND, "0 m/s", "60 m/s"), accuracy.speed));
    }
    Optional<Field> radius = field.optional("turn_radius");
    if (radius.isPresent()) {
      Length r = radius.get().quantity(Length.KIND, "0.5 m", "500 m");
      flight = flight.turningAt(Measured.of(r, r.times(0.2)));
    }
    Set<Behaviour> seen = EnumSet.noneOf(Behaviour.class);
    for (Field what : field.optional("seen").map(Field::items).orElse(List.of())) {
      seen.add(what.choice(Behaviour.class));
    }
    field.refuseTheRest();
    return flight.seen(seen);
  }

  /** The flights against the design. */
  FlightEvaluation evaluate(Design design) {
    return top.as(
        f ->
            balancePoint.isPresent()
                ? FlightEvaluation.of(design, weighed, balancePoint.get(), flights)
                : FlightEvaluation.of(design, weighed, flights));
  }
}
