package chargehand.drawing.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.drawing.SampleParts;
import chargehand.drawing.Turning;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.End;
import chargehand.part.Part;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import chargehand.part.shape.Station;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The length of all hatching times its pitch is the area that is cut: reckoned here another way. */
final class HatchingTest {
    private static final double PITCH = 2.5;
    private static final double NEAR = 0.06;

    @Test
    void of_aSquareWithAHole_leavesTheHoleOut() {
        List<Point> square = List.of(at(0, 0), at(100, 0), at(100, 100), at(0, 100));
        List<Point> hole = List.of(at(30, 30), at(70, 30), at(70, 70), at(30, 70));

        assertThat(area(Hatching.steep().within(List.of(square, hole)))).isCloseTo(10_000 - 1_600, within(150.0));
    }

    @ParameterizedTest
    @MethodSource("hollow")
    void of_aHalfSection_coversTheCutMaterial(Part part) {
        Body.Turned body = (Body.Turned) part.body();
        Solid solid = Solid.of(new Body.Turned(body.outside(), body.inside(), List.of()));
        View view = SideView.of(new Look(solid, AxialScale.of(2), Cut.HALF));
        double cut = 4 * (area(Flats.seen(solid, Side.BELOW)) - area(solid.innerAtMost()));

        assertThat(area(view.marks())).isCloseTo(cut, within(NEAR * cut));
    }

    static List<Part> hollow() {
        return List.of(SampleParts.union(), SampleParts.bush(), SampleParts.pin(), SampleParts.hub());
    }

    private static Point at(double x, double y) {
        return Point.of(x, y);
    }

    private static double area(List<Mark> marks) {
        return PITCH
                * marks.stream()
                        .filter(mark -> mark instanceof Mark.Line line && line.style() == LineStyle.HATCH)
                        .map(Mark.Line.class::cast)
                        .mapToDouble(line -> line.from().distance(line.to()))
                        .sum();
    }

    /** The area between a profile and the axis (mm²), by trapezia. */
    private static double area(Profile profile) {
        double area = 0;
        List<Station> stations = profile.stations();
        for (int i = 1; i < stations.size(); i++) {
            Length along = stations.get(i).at().minus(stations.get(i - 1).at());
            area += along.mm()
                    * (stations.get(i).radius().mm()
                            + stations.get(i - 1).radius().mm())
                    / 2;
        }
        return area;
    }

    /** A seat of 90° lies at 45°, along ordinary hatching: such a part is hatched at 30°. */
    @Test
    void of_aPartWithASeatAt45Degrees_isHatchedFlatter() {
        Turning t = Turning.mm("seat");
        Solid seat = Solid.of(t.round("ring", "60", "30")
                .drilled("bore", End.A, "20")
                .bore(new Bore.Coned("seat", End.B, t.through(), t.size("40"), Angle.degrees(90), t.size("20")))
                .body());
        View view = SideView.of(new Look(seat, AxialScale.of(1), Cut.HALF));

        assertThat(Drawn.of(view.marks(), LineStyle.HATCH).lines())
                .isNotEmpty()
                .allSatisfy(line -> assertThat(Math.toDegrees(Math.atan2(
                                line.from().y() - line.to().y(),
                                line.to().x() - line.from().x())))
                        .isCloseTo(30, within(1e-6)));
    }
}
