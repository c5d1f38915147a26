// Trim, finite wing, lattice and motions of a glider in ten lines. Start it from the top folder of the project:
//   mvn -q -pl examples -am compile exec:java -Dexec.mainClass=io.github.wingwright.examples.shell.Shell -Dexec.args=examples/src/main/jshell/stability.jsh
// In the shell itself, typing design.modes() shows the table.
import io.github.wingwright.airfoils.*;
import io.github.wingwright.core.aerodynamics.*;
import io.github.wingwright.core.atmosphere.*;
import io.github.wingwright.core.geometry.*;
import io.github.wingwright.core.mass.*;
import io.github.wingwright.core.quantity.*;
import io.github.wingwright.core.sizing.*;
import io.github.wingwright.stability.design.*;
import io.github.wingwright.stability.lattice.*;
import static io.github.wingwright.core.quantity.Length.*;

var section = Naca4.parse("4406").withTrailingEdgeThickness(0.006);
var plate = ComposedSection.plate(0.02, 0.0);
var wing = WingSizing.forSpan(millimetres(480)).aspectRatio(6.2).taperRatio(0.75).dihedral(Angle.degrees(12)).section(section);
var body = FuselageSizing.of(BodyShape.capsule()).considering(Considerations.lengthAtMost(millimetres(256))).diameter(millimetres(22));
var brief = DesignBrief.named("ten-lines").air(AirState.of(Pressure.pascals(100_400), Temperature.degreesCelsius(19))).thrown(Speed.metresPerSecond(6.5), metres(1.5)).material(Materials.FOAMING_PLA).wing(wing).wingPolar(EstimatedPolar.of(section)).fuselage(w -> body);
var design = SizingLoop.of(brief.tails(plate, EstimatedPolar.of(plate), new TailBrief(0.52, 3.5, 0.8), new TailBrief(0.035, 1.5, 0.7))).madeTo(millimetres(0.5), Mass.grams(0.1)).solve();
System.out.println(design.trim());
System.out.println(design.finiteWing());
System.out.println(design.lattice().solve(LatticeCondition.at(design.modes().angle(design.lattice()))));
System.out.println(design.modes());
/exit
