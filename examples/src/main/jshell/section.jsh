// A section and its polar at the Reynolds number of a small glider, in five lines; writes section.svg and polar.svg.
import io.github.wingwright.airfoils.*;
import io.github.wingwright.airfoils.viscous.*;
import io.github.wingwright.core.drawing.*;
import io.github.wingwright.core.quantity.*;
import java.nio.file.*;

var section = Naca4.parse("4409").withTrailingEdgeThickness(0.01);
var polar = ViscousMethod.of(section).polar(80_000, Angle.degrees(-1), Angle.degrees(7), Angle.degrees(1));
var curve = new CurvePicture.Curve("Re 80 000", polar.stream().map(p -> p.dragCoefficient()).toList(), polar.stream().map(p -> p.liftCoefficient()).toList(), CurvePicture.Style.MAIN);
Files.writeString(Path.of("section.svg"), SectionPicture.draw(section, Length.millimetres(60), Length.MILLIMETRE).document());
Files.writeString(Path.of("polar.svg"), new CurvePicture(section.name(), "drag coefficient", "lift coefficient", List.of(curve), List.of()).draw().document());

polar.forEach(p -> System.out.println(p));
/exit
