// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.examples.designer;

import io.github.wingwright.core.drawing.CurvePicture;
import io.github.wingwright.core.drawing.StripPicture;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.core.quantity.Speed;
import io.github.wingwright.core.quantity.Time;
import io.github.wingwright.core.report.Block;
import io.github.wingwright.core.report.Chapter;
import io.github.wingwright.stability.design.Design;
import io.github.wingwright.stability.design.FlightModes;
import io.github.wingwright.stability.dynamics.TimeResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntToDoubleFunction;

/** What the glider does after a gust, a throw that is too hard, and a throw with a low wing. */
final class ResponseChapter {
  private static final double GUST_SHARE = 0.04;
  private static final double FASTER_SHARE = 0.1;
  private static final Angle BANK = Angle.degrees(10);
  private static final Time LONG = Time.seconds(8);
  private static final Time BRIEFLY = Time.seconds(4);

  private final Design design;
  private final BriefUnits units;
  private final FlightModes modes;

  ResponseChapter(Design design, BriefUnits units) {
    this.design = design;
    this.units = units;
    this.modes = design.modes();
  }

  Chapter chapter() {
    Speed gust = modes.glide().speed().times(GUST_SHARE);
    Speed faster = modes.glide().speed().times(FASTER_SHARE);
    TimeResponse rising = modes.gust(gust, LONG);
    TimeResponse hard = modes.thrownFaster(faster, LONG);
    TimeResponse banked = modes.banked(BANK, BRIEFLY);
    return Chapter.of(
        "After a disturbance",
        new Block.Picture(
            along(rising, hard),
            String.format(
                Locale.ROOT,
                "Green: it flies into a draught that rises at %s. Grey, for comparison: it is launched %s faster than its trim."
                    + " The dashed line is where a steady glide from the launch height would end.",
                gust.format(units.speed(), 2),
                faster.format(units.speed(), 2))),
        new Block.Paragraph(gustInWords(rising)),
        new Block.Picture(
            across(banked),
            "Launched with the starboard wing "
                + BANK.format(Angle.DEGREE, 2)
                + " low: it slips towards the low wing, the dihedral lifts that wing, the fin turns the nose into the slip."),
        new Block.Paragraph(bankInWords(banked)),
        new Block.Paragraph(
            "Small motions only: the equations are straight lines through the steady glide. A stall, or a bank of more than some 20°, is"
                + " beyond them."));
  }

  private String along(TimeResponse rising, TimeResponse hard) {
    double u0 = modes.flight().speed();
    return new StripPicture(
            "In the plane of symmetry",
            "time in s",
            List.of(
                strip(
                    "airspeed in " + units.speed().symbol(),
                    "draught",
                    rising,
                    i -> units.speed().fromSi(u0 + rising.state(i, 0)),
                    "launched faster",
                    hard,
                    i -> units.speed().fromSi(u0 + hard.state(i, 0))),
                strip(
                    "pitch in °",
                    "",
                    rising,
                    i -> Math.toDegrees(rising.state(i, 3)),
                    "",
                    hard,
                    i -> Math.toDegrees(hard.state(i, 3))),
                strip(
                    "load factor",
                    "",
                    rising,
                    i -> modes.loadFactor(rising, i),
                    "",
                    hard,
                    i -> modes.loadFactor(hard, i))),
            landing())
        .draw()
        .element();
  }

  private String across(TimeResponse motion) {
    double u0 = modes.flight().speed();
    return new StripPicture(
            "Across the plane of symmetry",
            "time in s",
            List.of(
                strip("bank in °", motion, i -> Math.toDegrees(motion.state(i, 3))),
                strip("sideslip in °", motion, i -> Math.toDegrees(motion.state(i, 0) / u0)),
                strip("yaw rate in °/s", motion, i -> Math.toDegrees(motion.state(i, 2)))),
            landing())
        .draw()
        .element();
  }

  private List<StripPicture.Mark> landing() {
    double end = design.number("glide.time_s").value();
    return List.of(
        new StripPicture.Mark(String.format(Locale.ROOT, "lands after %.2g s", end), end));
  }

  private static StripPicture.Strip strip(
      String label, TimeResponse motion, IntToDoubleFunction value) {
    return new StripPicture.Strip(
        label, List.of(curve("", motion, value, CurvePicture.Style.MAIN)));
  }

  private static StripPicture.Strip strip(
      String label,
      String name,
      TimeResponse one,
      IntToDoubleFunction value,
      String otherName,
      TimeResponse other,
      IntToDoubleFunction otherValue) {
    return new StripPicture.Strip(
        label,
        List.of(
            curve(otherName, other, otherValue, CurvePicture.Style.OTHER),
            curve(name, one, value, CurvePicture.Style.MAIN)));
  }

  private static CurvePicture.Curve curve(
      String label, TimeResponse motion, IntToDoubleFunction value, CurvePicture.Style style) {
    List<Double> x = new ArrayList<>();
    List<Double> y = new ArrayList<>();
    for (int i = 0; i < motion.size(); i++) {
      x.add(motion.time(i));
      y.add(value.applyAsDouble(i));
    }
    return new CurvePicture.Curve(label, x, y, style);
  }

  private String gustInWords(TimeResponse motion) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < motion.size(); i++) {
      most = Math.max(most, modes.loadFactor(motion, i));
    }
    double usable = design.glide().usableLift();
    double lift = modes.glide().liftCoefficient() * modes.loadFactor(motion, 0);
    return String.format(
        Locale.ROOT,
        "The draught loads the wing at once with %.2f times its usual lift, C_L %.2f: %s The nose follows within half a second; what is left is"
            + " the phugoid.",
        most,
        lift,
        lift > usable
            ? "more than the wing can carry, so it stalls and the straight lines end here."
            : "within the usable " + String.format(Locale.ROOT, "%.2f.", usable));
  }

  private String bankInWords(TimeResponse motion) {
    int last = motion.size() - 1;
    double after = Math.toDegrees(motion.state(last, 3));
    double turn = 0.0;
    double end = Math.min(design.number("glide.time_s").value(), motion.time(last));
    double atEnd = 0.0;
    for (int i = 1; i <= last && motion.time(i) <= end; i++) {
      turn +=
          0.5
              * (motion.state(i, 2) + motion.state(i - 1, 2))
              * (motion.time(i) - motion.time(i - 1));
      atEnd = Math.toDegrees(motion.state(i, 3));
    }
    return String.format(
        Locale.ROOT,
        "When it lands the bank is %.1f° and the nose has turned by %.0f°; after %.0f s the bank would be %.1f°. Launch it with level wings,"
            + " and bend the fin a little against a turn that remains.",
        atEnd,
        Math.toDegrees(turn),
        motion.time(last),
        after);
  }
}
