package chargehand.method.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.method.aim.Aim;
import chargehand.method.kit.yaml.DemoKit;
import chargehand.part.Body;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import chargehand.part.shape.Station;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * The section of the replay's solid at the end against JTS, a general-purpose geometry library: volumes by Pappus's theorem
 * (area times the way of its centroid), and what the section and the drawing's do not share. Arcs are the project's chords,
 * within a fifth of a micrometre of the arc.
 */
final class SectionTest {
    private static final GeometryFactory FLAT = new GeometryFactory();

    /** JTS reckons in doubles, the profiles in whole nanometres: as a share of the volume within the outside. */
    private static final double NEAR_SHARE = 1e-9;

    /** What the replay allows all along the outline. */
    private static final double ALLOWED_MM = Deviation.ALLOWED.mm();

    static List<Good> turned() {
        Stream<Good> written =
                Stream.of(SmallWork.values()).map(work -> new Good(work.name(), work.drawn(), work.method()));
        Stream<Good> demos = DemoMethods.ALL.stream().map(demo -> new Good(demo.name(), demo.part(), demo.method()));
        return Stream.concat(written, demos)
                .filter(good -> good.part().body() instanceof Body.Turned)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("turned")
    void volume_everyStep_isPappus(Good good) {
        for (Proof.Stage stage : proof(good).stages()) {
            for (Proof.Step step : stage.steps()) {
                TurnedWork work = (TurnedWork) step.after();
                double volume = work.with(Features.NONE).volume().cubicMm();
                double pappus = pappus(work.outer()) - pappus(work.inner());
                assertThat(volume).isCloseTo(pappus, within(NEAR_SHARE * pappus(work.outer())));
            }
        }
    }

    /** The hollow may go as deep as tools need, the outside not. */
    @ParameterizedTest
    @MethodSource("turned")
    void section_atTheEnd_isTheDrawings(Good good) {
        Proof proof = proof(good);
        TurnedWork made =
                (TurnedWork) proof.stages().getLast().steps().getLast().after();
        Solid wanted = Solid.of((Body.Turned) Aim.at(good.part()).body());
        Geometry outside = section(made.outer());
        Geometry asked = section(wanted.outer());
        assertThat(outside.symDifference(asked).getArea()).isLessThanOrEqualTo(asked.getLength() * ALLOWED_MM);
        Geometry hollow = section(made.inner());
        assertThat(section(wanted.inner()).difference(hollow).getArea())
                .isLessThanOrEqualTo(asked.getLength() * ALLOWED_MM);
        assertThat(hollow.difference(section(wanted.innerAtMost())).getArea())
                .isLessThanOrEqualTo(asked.getLength() * ALLOWED_MM);
    }

    private static Proof proof(Good good) {
        return Replay.of(good.part(), good.method(), DemoKit.kit());
    }

    /** What lies between a profile and the axis; nothing where the profile lies on it. */
    private static Geometry section(Profile profile) {
        if (profile.stations().stream().allMatch(station -> station.radius().isZero())) {
            return FLAT.createPolygon();
        }
        var ring = new ArrayList<Coordinate>();
        ring.add(new Coordinate(profile.start().mm(), 0));
        for (Station station : profile.stations()) {
            ring.add(new Coordinate(station.at().mm(), station.radius().mm()));
        }
        ring.add(new Coordinate(profile.end().mm(), 0));
        ring.add(ring.getFirst());
        return FLAT.createPolygon(ring.toArray(Coordinate[]::new)).buffer(0);
    }

    private static double pappus(Profile profile) {
        Geometry section = section(profile);
        return section.isEmpty() ? 0 : 2 * Math.PI * section.getCentroid().getY() * section.getArea();
    }
}
