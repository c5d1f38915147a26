// Throws a glider at several angles, as a point and with pitch, and prints how far it goes.
import io.github.wingwright.airfoils.*;
import io.github.wingwright.core.aerodynamics.*;
import io.github.wingwright.core.atmosphere.*;
import io.github.wingwright.core.geometry.*;
import io.github.wingwright.core.mass.*;
import io.github.wingwright.core.performance.*;
import io.github.wingwright.core.quantity.*;
import io.github.wingwright.core.sizing.*;
import io.github.wingwright.stability.design.*;
import io.github.wingwright.stability.flight.*;
import static io.github.wingwright.core.quantity.Length.*;

var section = Naca4.parse("4406").withTrailingEdgeThickness(0.006);
var plate = ComposedSection.plate(0.02, 0.0);
var wing = WingSizing.forSpan(millimetres(480)).aspectRatio(6.2).taperRatio(0.75).dihedral(Angle.degrees(12)).section(section);
var body = FuselageSizing.of(BodyShape.capsule()).considering(Considerations.lengthAtMost(millimetres(256)));
var brief = DesignBrief.named("throws").air(Atmosphere.standard().at(metres(100))).thrown(Speed.metresPerSecond(8), metres(1.6)).material(Materials.FOAMING_PLA);
brief = brief.wing(wing).wingPolar(EstimatedPolar.of(section)).fuselage(w -> body.diameter(millimetres(22))).staticMargin(0.15);
brief = brief.tails(plate, EstimatedPolar.of(plate), new TailBrief(0.52, 3.5, 0.8), new TailBrief(0.035, 1.5, 0.7));
var design = SizingLoop.of(brief).madeTo(millimetres(0.5), Mass.grams(0.1)).solve();

var hall = Hall.of(metres(27), metres(7));
var point = LaunchTrajectory.of(design.glide()).in(hall);
var pitch = PitchFlight.of(design).in(hall);
var level = Throw.level(Speed.metresPerSecond(8), metres(1.6));

System.out.println("angle   point      with pitch");
for (int degrees = -20; degrees <= 20; degrees += 10) { var how = level.at(Angle.degrees(degrees)); System.out.printf(Locale.ROOT, "%4d°   %5.1f m    %s%n", degrees, point.thrown(how).distance().metres(), pitch.thrown(how)); }
System.out.println(pitch.bestAngles(GlideGoal.DISTANCE, level.speed(), level.height()));
/exit
