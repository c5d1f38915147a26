// The washout that a swept wing without a tail needs to hold its nose up. Start it from the top folder of the project:
//   mvn -q -pl examples -am compile exec:java -Dexec.mainClass=io.github.wingwright.examples.shell.Shell -Dexec.args=examples/src/main/jshell/tailless.jsh
// Where the section has reflex, less washout is missing; a wing without sweep has none to miss: washout makes no moment there.
import io.github.wingwright.airfoils.*;
import io.github.wingwright.core.aerodynamics.*;
import io.github.wingwright.core.geometry.*;
import io.github.wingwright.core.quantity.*;
import io.github.wingwright.stability.*;
import static io.github.wingwright.core.quantity.Length.*;

var section = Naca4.parse("0009");
var swept = Planform.tapered(millimetres(600), millimetres(140), millimetres(90)).withSweep(0.25, Angle.degrees(25));
var wing = Wing.of(swept, section).placedAt(Placement.at(millimetres(10), Length.ZERO));
var body = new Fuselage(BodyShape.capsule(), millimetres(160), millimetres(22));
var model = PitchModel.of(new Airframe(body, wing, List.of())).withWingSection(EstimatedPolar.of(section), 60_000);
var cg = model.neutralPoint().x().minus(swept.meanAerodynamicChord().times(0.08));    // a static margin of 8 %
var trim = TaillessTrim.of(model, cg, 0.5);
System.out.println(trim);
trim.findings().forEach(finding -> System.out.println(finding.message()));
var washout = trim.washoutMissing().orElseThrow();
System.out.println(washout);
var twisted = new Wing(swept.withWashout(washout), section, wing.placement(), wing.incidence());
System.out.println(TaillessTrim.of(model.withAirframe(new Airframe(body, twisted, List.of())), cg, 0.5));
/exit
