// SPDX-License-Identifier: Apache-2.0
package io.github.wingwright.airfoils.viscous;

import io.github.wingwright.airfoils.Naca4;
import io.github.wingwright.airfoils.TrailingEdge;
import io.github.wingwright.airfoils.potential.PanelMethod;
import io.github.wingwright.airfoils.potential.PanelMethodTest;
import io.github.wingwright.airfoils.potential.RefinedFlow;
import io.github.wingwright.core.quantity.Angle;
import io.github.wingwright.testing.PublishedValues;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Writes the validation page of airfoils; a test holds the page against a new computation. */
final class ValidationPage {
  private ValidationPage() {}

  /**
   * Writes the page to a file.
   *
   * @param arguments the file
   */
  public static void main(String[] arguments) throws IOException {
    Files.writeString(Path.of(arguments[0]), text(), StandardCharsets.UTF_8);
  }

  static String text() {
    StringBuilder page = new StringBuilder();
    page.append("# How true are the sections?\n\n"
        + "This page is computed: `ValidationPage` in the tests writes it, and a test compares it with a new"
        + " computation. How to write it again stands at the end.\n\n");
    potential(page);
    drag(page);
    zeroLift(page);
    page.append(REMARKS);
    return page.toString();
  }

  private static void potential(StringBuilder page) {
    page.append("## Potential flow\n\n"
        + "Closed 4-digit sections at 4°, against an independent conformal mapping (about 10⁻⁸).\n\n"
        + "| section | lift | error, 200 panels | error, extrapolated | moment error, 200 panels | false drag |\n"
        + "|---|---|---|---|---|---|\n");
    double angle = Math.toRadians(4);
    for (PublishedValues.Row row : PublishedValues.beside(PanelMethodTest.class, "sections.csv")) {
      Naca4 section = Naca4.parse(row.text("section")).withTrailingEdge(TrailingEdge.CLOSED);
      PanelMethod flow = PanelMethod.of(section, 200);
      double lift = row.number("lift_4");
      page.append(String.format(Locale.ROOT, "| %s | %.6f | %.1e | %.0e | %.1e | %.1e |%n", row.text("section"), lift,
          flow.liftCoefficient(angle) - lift,
          Math.abs(RefinedFlow.of(section, 200, Angle.degrees(4)).liftCoefficient() - lift),
          flow.momentAboutQuarterChord(angle) - row.number("moment_4"), flow.at(Angle.degrees(4)).pressureDrag()));
    }
  }

  private static void drag(StringBuilder page) {
    page.append("\n## Drag at equal lift\n\n"
        + "Tunnel P: Selig, Donovan and Fraser, Airfoils at Low Speeds, 1989. Tunnel I: Selig and others, Summary of"
        + " Low-Speed Airfoil Data, volume 1, 1995. Both have a test section of 3 by 4 ft and measured drag in the"
        + " wake; the model of the 6 % cambered section is the same. The two differ by 5 to 12 % in drag at 10⁵ and"
        + " above, and by 20 to 30 % at 6·10⁴: a method that is closer than that is lucky.\n\n"
        + "| section | tunnel | Reynolds number | lift | drag measured | drag computed | error |\n"
        + "|---|---|---|---|---|---|---|\n");
    for (PublishedValues.Row row : PublishedValues.beside(ViscousMethodTest.class, "measured-drag.csv")) {
      double computed = ViscousMethodTest.dragAt(
          ViscousMethodTest.polar(row.text("section"), row.number("reynolds")), row.number("lift"));
      page.append(String.format(Locale.ROOT, "| %s | %s | %.0f | %.3f | %.4f | %.4f | %+.0f %% |%n",
          row.text("section"), row.text("tunnel"), row.number("reynolds"), row.number("lift"),
          row.number("drag"), computed, 100 * (computed / row.number("drag") - 1)));
    }
  }

  private static void zeroLift(StringBuilder page) {
    page.append("\n## Lift at a given angle, 6 % camber, 9 % thick\n\n"
        + "Measured lift near 0.2° and zero-lift angle in tunnel I and P.\n\n"
        + "| Reynolds number | lift at 0°, computed | lift near 0.2°, measured (P) | zero lift, measured (I) |\n"
        + "|---|---|---|---|\n");
    double[][] measured = {{61400, 0.438, -2.67}, {102600, 0.549, -3.62}, {200100, 0.639, -5.08}};
    for (double[] m : measured) {
      List<ViscousPoint> polar = ViscousMethodTest.polar("6409", m[0]);
      ViscousPoint zero = polar.stream()
          .filter(p -> Math.abs(p.angleOfAttack().degrees()) < 1e-6).findFirst().orElseThrow();
      page.append(String.format(Locale.ROOT, "| %.0f | %.3f | %.3f | %.2f° |%n", m[0], zero.liftCoefficient(), m[1], m[2]));
    }
    double potential = PanelMethod.of(Naca4.parse("6409").withTrailingEdge(TrailingEdge.CLOSED), 200)
        .liftCoefficient(Angle.ZERO.radians());
    page.append(String.format(Locale.ROOT, "| potential flow | %.3f | | |%n", potential));
  }

  private static final String REMARKS = "\n## What this means\n\n"
      + "Goals: 15 % in drag at 2·10⁵ and 30 % at 10⁵ for attached points, the correct side of the collapse at 6·10⁴,"
      + " thin cambered plates ahead of thick sections below 7·10⁴. They are met, but for points of tunnel I at 2·10⁵"
      + " that lie 15 to 19 % above. Further goal: within the spread of the tunnels, 12 % at 10⁵ and above, 30 % at"
      + " 6·10⁴. The settings of the method (the share of young turbulence, the amplification exponent 9, the spacing of"
      + " points at the trailing edge) were chosen with the drag of these same sections in sight, so the table shows how"
      + " well it can be made to fit and is no blind test.\n\n"
      + "Against all points of the two data sets below 92 % of the greatest lift (for the symmetric section, the"
      + " positive angles), when this page was first written, root mean square of the error in drag at equal lift:\n\n"
      + "| section, tunnel | 6·10⁴ | 8·10⁴ | 10⁵ | 1.5·10⁵ | 2·10⁵ | 3·10⁵ |\n"
      + "|---|---|---|---|---|---|---|\n"
      + "| 0009, P | 8 % | | 5 % | 9 % | 9 % | 11 % |\n"
      + "| 6 % camber, 9 % thick, P | 14 % | 19 % | 6 % | 19 % | 10 % | |\n"
      + "| 6 % camber, 9 % thick, I | 25 % | | 6 % | | 15 % | |\n\n"
      + "So the further goal is met at 6·10⁴ and 10⁵ and in tunnel P at 2·10⁵; it is missed at 1.5·10⁵, where the"
      + " lower layer of the cambered section at low lift is computed to separate, and was measured not to, and against tunnel I at 2·10⁵ (15 %). At 8·10⁴ the layer is computed to stay separated a few degrees longer than measured. Drag is too"
      + " low by 20 to 30 % within 15 % of the greatest lift.\n\n"
      + "Lift at a given angle is too high by 0.1 to 0.2 on the cambered section, and its slope too high by a sixth:"
      + " about half of the measured shift of the zero-lift angle is reproduced. Use drag at equal lift, and give"
      + " decalage as a range.\n\n"
      + "Hysteresis: at 6·10⁴ the method jumps from separated to attached near 9°, the tunnels between 9° and 11° on the way up."
      + " Where the lift of a polar jumps, the method goes back and says at which points it finds a second solution; such loops"
      + " are a degree wide, as in the tunnel (attached to 9.7° on the way down).\n\n"
      + "## To write this page again\n\n"
      + "    mvn -q -pl airfoils -am verify -Dtest=ValidationPageTest -Dsurefire.failIfNoSpecifiedTests=false"
      + " -Dwingwright.validation=write\n";
}
