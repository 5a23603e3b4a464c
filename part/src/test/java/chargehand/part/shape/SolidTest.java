package chargehand.part.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Part;
import chargehand.part.testing.PartGenerator;
import chargehand.part.testing.PartText;
import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import java.util.List;
import org.junit.jupiter.api.Test;

final class SolidTest {
    private static Solid solid(PartText text) {
        PartReading reading = PartFile.read(text.toString());
        assertThat(reading).as(text.toString()).isInstanceOf(PartReading.Read.class);
        Part part = ((PartReading.Read) reading).part();
        return Solid.of((Body.Turned) part.body());
    }

    private static Length mm(double mm) {
        return Length.mm(mm);
    }

    private static Station at(double z, double r) {
        return new Station(mm(z), mm(r));
    }

    @Test
    void outer_ofChamferedShoulders_runsThroughItsCorners() {
        Solid solid = solid(PartText.mm()
                .outside("round: 20, length: 30, at-a: chamfer 1", "round: 30, length: 10, at-a: chamfer 2 x 30°"));

        double height = 2 * Math.tan(Math.toRadians(30));
        assertThat(solid.outer().stations())
                .containsExactly(at(0, 9), at(1, 10), at(30, 10), at(30, 15 - height), at(32, 15), at(40, 15));
    }

    @Test
    void outer_withAFilletInAHollowCorner_touchesBothSides() {
        Profile outer = solid(PartText.mm().outside("round: 30, length: 10", "round: 20, length: 30, at-a: radius 2"))
                .outer();

        assertThat(outer.radiusAfter(mm(10))).isEqualTo(mm(12));
        assertThat(outer.radiusAfter(mm(12))).isEqualTo(mm(10));
        double middle = 12 - 2 * Math.cos(Math.PI / 4);
        assertThat(outer.radiusAfter(mm(10 + 2 - 2 * Math.sin(Math.PI / 4))).mm())
                .isCloseTo(middle, within(3e-4));
    }

    @Test
    void outer_withARoundedEnd_isAQuarterOfACircle() {
        Profile outer = solid(PartText.mm().outside("round: 20, length: 30, at-b: radius 3"))
                .outer();

        double in = 3 - 3 * Math.cos(Math.PI / 4);
        assertThat(outer.radiusBefore(mm(30))).isEqualTo(mm(7));
        assertThat(outer.radiusAfter(mm(30 - in)).mm()).isCloseTo(10 - in, within(3e-4));
    }

    @Test
    void outer_ofATaperThread_hasItsSizeAtTheGaugePlane() {
        Solid solid =
                solid(PartText.mm().outside("thread: R 1/2, length: 16, at-a: chamfer 1", "round: 30, length: 10"));

        // ISO 7-1: gauge length of R 1/2 8.2 mm, major diameter there 20.955 mm (from memory), taper 1 in 16.
        assertThat(solid.outer().radiusAfter(mm(8.2)).mm()).isCloseTo(20.955 / 2, within(1e-4));
        assertThat(solid.outer().radiusBefore(mm(16)).mm()).isCloseTo((20.955 + 7.8 / 16) / 2, within(1e-4));
    }

    @Test
    void inner_ofABlindDrilledHole_endsInItsPoint() {
        Profile inner = solid(PartText.mm().outside("round: 40, length: 60").inside("drill: 10, from: B, depth: 20"))
                .inner();

        double point = 5 / Math.tan(Math.toRadians(59));
        assertThat(inner.stations()).containsExactly(at(0, 0), at(40 - point, 0), at(40, 5), at(60, 5));
    }

    @Test
    void inner_ofSteppedBores_takesTheLarger() {
        Profile inner = solid(PartText.mm()
                        .outside("round: 40, length: 60")
                        .inside(
                                "drill: 10",
                                "counterbore: 20, from: A, depth: 15, mouth: chamfer 1",
                                "cone: 90°, from: B, mouth: 14, to: 10"))
                .inner();

        assertThat(inner.stations()).containsExactly(at(0, 11), at(1, 10), at(15, 10), at(15, 5), at(58, 5), at(60, 7));
    }

    @Test
    void mouth_belowACounterbore_opensAtItsBottom() {
        Profile inner = solid(PartText.mm()
                        .outside("round: 40, length: 60")
                        .inside("ream: 10 H7, mouth: chamfer 1", "counterbore: 20, from: A, depth: 15"))
                .inner();

        assertThat(inner.stations()).containsExactly(at(0, 10), at(15, 10), at(15, 6), at(16, 5), at(60, 5));
    }

    @Test
    void mouth_belowACone_opensAtItsBottom() {
        Profile inner = solid(PartText.mm()
                        .outside("round: 40, length: 60")
                        .inside("cone: 90°, from: A, mouth: 20, to: 14", "bore: 10, mouth: chamfer 1"))
                .inner();

        assertThat(inner.stations()).containsExactly(at(0, 10), at(3, 7), at(3, 6), at(4, 5), at(60, 5));
    }

    @Test
    void blindTappedHole_mayBeDrilledDeeperThanItsThread() {
        Solid solid = solid(PartText.mm().outside("round: 40, length: 60").inside("tap: M10, from: A, depth: 20"));

        assertThat(solid.inner().radiusAfter(mm(20))).isEqualTo(Length.ZERO);
        assertThat(solid.innerAtMost().radiusAfter(mm(27)).isPositive()).isTrue();
        assertThat(solid.hollowAtMost().radiusAfter(mm(10)).mm()).isCloseTo(5, within(1e-6));
    }

    @Test
    void tappingHoleOfItsOwn_saysHowDeep() {
        Solid solid = solid(PartText.mm()
                .outside("round: 40, length: 60")
                .inside("tap: M10, from: A, depth: 20", "drill: 8.5, from: A, depth: 24"));

        assertThat(solid.innerAtMost()).isEqualTo(solid.inner());
        assertThat(solid.inner().radiusAfter(mm(23))).isEqualTo(mm(4.25));
    }

    @Test
    void outerAtLeast_belowThreadsAndFlats_isTheirRoot() {
        Solid solid =
                solid(PartText.mm().outside("thread: M20, length: 30, at-a: chamfer 2", "hexagon: 30, length: 10"));

        // ISO 68-1: depth of an external thread 0.6134 of its pitch, 2.5 mm here.
        assertThat(solid.outerAtLeast().radiusAfter(mm(15)).mm()).isCloseTo(10 - 0.61343 * 2.5, within(1e-4));
        assertThat(solid.outerAtLeast().radiusAfter(mm(35))).isEqualTo(mm(15));
        assertThat(solid.outer().radiusAfter(mm(35)).mm()).isCloseTo(15 / Math.cos(Math.PI / 6), within(1e-6));
    }

    /** A hexagonal prism holds √3/2 of the square over its flats times its length. */
    @Test
    void volume_ofAPrism_isAsTheRuleSays() {
        assertThat(solid(PartText.mm().outside("hexagon: 30, length: 10"))
                        .volume()
                        .cubicMm())
                .isCloseTo(Math.sqrt(3) / 2 * 900 * 10, within(1e-3));
        assertThat(solid(PartText.mm().outside("square: 20, length: 10").inside("bore: 8"))
                        .volume()
                        .cubicMm())
                .isCloseTo(4000 - Math.PI * 16 * 10, within(1e-3));
    }

    @Test
    void solid_ofAnySoundPart_isHollowWithinItsOutside() {
        var generator = new PartGenerator(2);
        for (int i = 0; i < 150; i++) {
            var body = (Body.Turned) generator.turned().body();
            Solid solid = Solid.of(body);

            assertThat(solid.length()).isEqualTo(body.length());
            assertThat(solid.volume().cubicMm()).isPositive();
            assertThat(solid.inner().smaller(solid.innerAtMost()).isWithin(new Length(2), solid.inner()))
                    .isTrue();
            assertThat(solid.hollowAtMost().larger(solid.outerAtLeast()).isWithin(new Length(2), solid.outerAtLeast()))
                    .isTrue();
        }
    }

    @Test
    void solid_turnedEndForEnd_isTheMirrorImage() {
        Solid solid = solid(PartText.mm()
                .outside(
                        "round: 20, length: 30, at-a: radius 2, at-b: chamfer 1",
                        "cone: {from: 16, to: 12}, length: 20, at-a: radius 1")
                .inside("bore: 6, from: A, depth: 10, mouth: radius 1"));
        Solid turned = solid(PartText.mm()
                .outside(
                        "cone: {from: 12, to: 16}, length: 20, at-b: radius 1",
                        "round: 20, length: 30, at-a: chamfer 1, at-b: radius 2")
                .inside("bore: 6, from: B, depth: 10, mouth: radius 1"));

        assertThat(mirrored(turned.outer()).isWithin(new Length(2), solid.outer()))
                .isTrue();
        assertThat(mirrored(turned.inner()).isWithin(new Length(2), solid.inner()))
                .isTrue();
    }

    private static Profile mirrored(Profile profile) {
        List<Station> stations = profile.stations().reversed().stream()
                .map(station -> new Station(profile.end().minus(station.at()), station.radius()))
                .toList();
        return new Profile(stations);
    }

    @Test
    void inner_withARecess_isWiderThere() {
        Profile inner = solid(PartText.mm()
                        .outside("round: 50, length: 40")
                        .inside("bore: 20, name: bore")
                        .inBores("recess: 26, in: bore, at: 10, width: 4"))
                .inner();

        assertThat(inner.stations())
                .containsExactly(at(0, 10), at(10, 10), at(10, 13), at(14, 13), at(14, 10), at(40, 10));
    }

    @Test
    void outerAtLeast_ofTeeth_isTheirRoot() {
        Solid solid = solid(PartText.mm().outside("teeth: 20, module: 2, pressure-angle: 20°, length: 10"));

        assertThat(solid.outer().most(mm(0), mm(10))).isEqualTo(mm(22));
        assertThat(solid.outerAtLeast().most(mm(0), mm(10))).isEqualTo(mm(17.5));
    }

    /** A half ball of 10 mm has two thirds of the volume of the cylinder round it. */
    @Test
    void volume_ofABallEnd_isTwoThirdsOfTheCylinderRoundIt() {
        Solid solid = solid(
                PartText.mm().outside("curve: 10, from: 0, to: 20, form: convex, length: 10", "round: 20, length: 30"));

        double ball = Math.PI * 1000 * 2 / 3;
        double chords = Arc.CHORD_ERROR.mm() * 2 * Math.PI * 100;
        double bar = Math.PI * 100 * 30;
        assertThat(solid.volume().cubicMm()).isCloseTo(ball + bar, within(chords));
    }

    @Test
    void outer_ofAnArc_liesOnItsCircle() {
        for (String form : List.of("convex", "concave")) {
            Profile outer = solid(PartText.mm()
                            .outside(
                                    "curve: 25, from: 12, to: 20, form: " + form + ", length: 16",
                                    "round: 20, length: 5"))
                    .outer();
            boolean convex = form.equals("convex");
            double chord = Math.hypot(16, 4);
            double off = Math.sqrt(25 * 25 - chord * chord / 4) * (convex ? -1 : 1);
            double z = 8 - off * 4 / chord;
            double r = 8 + off * 16 / chord;

            outer.cut(mm(0), mm(16))
                    .stations()
                    .forEach(station -> assertThat(Math.hypot(
                                    station.at().mm() - z, station.radius().mm() - r))
                            .isCloseTo(25, within(1e-5)));
            assertThat(outer.radiusAfter(mm(8)).mm() > 8).isEqualTo(convex);
        }
    }

    @Test
    void outer_ofAnEdgeForWelding_hasItsDepthAndItsReach() {
        Profile outer = solid(PartText.mm().outside("round: 60, length: 80, at-b: weld V 6 x 30°"))
                .outer();

        assertThat(outer.radiusBefore(mm(80)).mm()).isCloseTo(24, within(1e-5));
        assertThat(outer.stations().get(1).at().mm()).isCloseTo(80 - 6 * Math.tan(Math.toRadians(30)), within(1e-5));
    }
}
