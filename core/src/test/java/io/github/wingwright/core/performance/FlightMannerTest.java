// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.core.performance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Area;
import io.github.wingwright.core.quantity.Length;
import io.github.wingwright.core.quantity.Speed;
import org.junit.jupiter.api.Test;

class FlightMannerTest {
  private static final LaunchTrajectory PAPER = Flights.trimmed(4.9, 0.2);

  private static final LaunchTrajectory FREE = Flights.trimmed(5.0, 0.0);

  private static Flight flown(FlightModel model, double speed, double degrees, double height) {
    return model.thrown(new Throw(Speed.metresPerSecond(speed), Angle.degrees(degrees), Length.metres(height)));
  }

  @Test
  void a_flight_is_told_by_what_it_did() {
    Hall hall = Hall.of(Length.metres(20), Length.metres(4));
    assertThat(flown(PAPER, 4.9, -11, 2).manner()).isEqualTo(FlightManner.GLIDES);
    assertThat(flown(PAPER, 4.9, -70, 0.5).manner()).as("steeply down").isEqualTo(FlightManner.DIVES);
    assertThat(flown(PAPER.in(hall), 7, 40, 3).manner()).isEqualTo(FlightManner.MEETS_CEILING);
    assertThat(flown(PAPER.in(Hall.of(Length.metres(5), Length.metres(4))), 4.9, 0, 3).manner()).isEqualTo(FlightManner.MEETS_WALL);
    LaunchTrajectory beyond =
        LaunchTrajectory.of(new Flights.Parabola(0.02, 0.1), Area.squareMetres(0.01), Flights.MASS, Flights.AIR, 1.5);
    assertThat(flown(beyond, 4, 0, 2).manner()).isEqualTo(FlightManner.STALLS);
  }

  /** Without drag a point with V² > 3·V_0² loops (Lanchester's curves; Etkin and Reid, from memory). */
  @Test
  void a_point_without_drag_turns_over_beyond_the_cusp_and_not_before() {
    double cusp = Math.sqrt(3.0) * 5.0;
    assertThat(flown(FREE, 1.01 * cusp, 0, 30).manner()).isEqualTo(FlightManner.TURNS_OVER);
    assertThat(flown(FREE, 0.99 * cusp, 0, 30).manner()).isEqualTo(FlightManner.GLIDES);
  }

  @Test
  void on_plain_numbers_it_is_the_same_flight() {
    double[] into = new double[4];
    for (double speed = 3; speed < 12; speed += 0.7) {
      for (double degrees = -80; degrees <= 80; degrees += 16) {
        Flight flight = flown(PAPER, speed, degrees, 2);
        PAPER.fly(speed, Math.toRadians(degrees), 2, into);
        assertThat(into[0]).isCloseTo(flight.distance().si(), within(1e-12));
        assertThat(FlightManner.numbered(into[3])).isEqualTo(flight.manner());
      }
    }
    assertThatIllegalArgumentException().isThrownBy(() -> FlightManner.numbered(1.5)).withMessageContaining("was 1.5");
  }

  @Test
  void a_dive_and_a_loop_are_found_with_what_to_change() {
    assertThat(flown(PAPER, 4.9, -70, 0.5).findings())
        .anySatisfy(f -> {
          assertThat(f.subject()).isEqualTo("dive");
          assertThat(f.message()).contains("steep at").contains("more decalage");
        });
    assertThat(flown(FREE, 9, 0, 30).findings())
        .anySatisfy(f -> assertThat(f.message()).startsWith("It goes upside down on its way."));
    // √3 of 5 m/s is 8.66.
    assertThat(FREE.advice(new Throw(Speed.metresPerSecond(9), Angle.ZERO, Length.metres(30))))
        .anySatisfy(f -> assertThat(f.message()).containsPattern("At 8\\.[56]\\d? m/s and this angle it stays upright\\."));
  }
}
