// A complete glider in ten lines: the brief, the loop, its numbers. Start it from the top folder of the project:
//   mvn -q -pl examples -am compile exec:java -Dexec.mainClass=io.github.wingwright.examples.shell.Shell -Dexec.args=examples/src/main/jshell/glider.jsh
import io.github.wingwright.airfoils.*;
import io.github.wingwright.core.aerodynamics.*;
import io.github.wingwright.core.atmosphere.*;
import io.github.wingwright.core.geometry.*;
import io.github.wingwright.core.mass.*;
import io.github.wingwright.core.quantity.*;
import io.github.wingwright.core.sizing.*;
import io.github.wingwright.stability.design.*;
import static io.github.wingwright.core.quantity.Length.*;

var section = Naca4.parse("4406").withTrailingEdgeThickness(0.006);
var plate = ComposedSection.plate(0.02, 0.0);
var hall = AirState.of(Pressure.pascals(100_400), Temperature.degreesCelsius(19));
var wing = WingSizing.forSpan(millimetres(480)).aspectRatio(6.2).taperRatio(0.75).dihedral(Angle.degrees(12)).section(section);
var body = FuselageSizing.of(BodyShape.capsule()).considering(Considerations.lengthAtMost(millimetres(256)));
var brief = DesignBrief.named("ten-lines").air(hall).thrown(Speed.metresPerSecond(6.5), metres(1.5)).material(Materials.FOAMING_PLA);
brief = brief.wing(wing).wingPolar(EstimatedPolar.of(section)).fuselage(w -> body.diameter(millimetres(22))).staticMargin(0.15);
brief = brief.tails(plate, EstimatedPolar.of(plate), new TailBrief(0.52, 3.5, 0.8), new TailBrief(0.035, 1.5, 0.7));
var design = SizingLoop.of(brief).madeTo(millimetres(0.5), Mass.grams(0.1)).solve();
design.numbers().values().forEach(step -> System.out.println(step));
/exit
