package chargehand.part.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

final class ProfileTest {
    private static final Length MICROMETRE = Length.mm(0.001);

    /** Where two steep pieces cross, a position rounded to a nanometre moves the radius by more than one. */
    private static final Length ROUNDING = new Length(100);

    /** A profile from positions and radii in millimetres. */
    private static Profile profile(double... mm) {
        List<Station> stations = new ArrayList<>();
        for (int i = 0; i < mm.length; i += 2) {
            stations.add(new Station(Length.mm(mm[i]), Length.mm(mm[i + 1])));
        }
        return new Profile(stations);
    }

    private static Profile random(Random random) {
        List<Station> stations = new ArrayList<>();
        long at = 0;
        stations.add(new Station(Length.ZERO, Length.mm(random.nextInt(20))));
        for (int i = 0; i < 6; i++) {
            at += random.nextInt(3) == 0 ? 0 : 500_000 + random.nextInt(9_000_000);
            stations.add(new Station(new Length(at), Length.mm(random.nextInt(20))));
        }
        stations.add(new Station(Length.mm(60), Length.mm(random.nextInt(20))));
        return new Profile(stations);
    }

    @Test
    void radius_atAJump_dependsOnTheSide() {
        Profile stepped = profile(0, 10, 20, 10, 20, 5, 40, 5);

        assertThat(stepped.radiusBefore(Length.mm(20))).isEqualTo(Length.mm(10));
        assertThat(stepped.radiusAfter(Length.mm(20))).isEqualTo(Length.mm(5));
        assertThat(stepped.radiusBefore(Length.ZERO)).isEqualTo(Length.mm(10));
        assertThat(stepped.radiusAfter(Length.mm(40))).isEqualTo(Length.mm(5));
    }

    @Test
    void radius_onACone_liesBetween() {
        assertThat(profile(0, 10, 20, 5).radiusAfter(Length.mm(8))).isEqualTo(Length.mm(8));
    }

    @Test
    void radius_outside_isRefused() {
        assertThatThrownBy(() -> profile(0, 10, 20, 5).radiusAfter(Length.mm(21)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("outside");
    }

    @Test
    void stations_goingBack_areRefused() {
        assertThatThrownBy(() -> profile(0, 10, 20, 5, 10, 5)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void leastAndMost_takeJumpsAtTheirEnds() {
        Profile stepped = profile(0, 10, 20, 10, 20, 5, 40, 5, 40, 8, 60, 8);

        assertThat(stepped.least(Length.mm(20), Length.mm(30))).isEqualTo(Length.mm(5));
        assertThat(stepped.most(Length.mm(20), Length.mm(30))).isEqualTo(Length.mm(10));
        assertThat(stepped.most(Length.mm(25), Length.mm(35))).isEqualTo(Length.mm(5));
    }

    /** Cylinder, frustum and cone by the rules of any handbook: π r² h and π h (R² + R r + r²) / 3. */
    @Test
    void volume_ofPlainSolids_isAsTheRulesSay() {
        assertThat(profile(0, 10, 50, 10).volume().cubicMm()).isCloseTo(Math.PI * 5000, within(1e-9));
        assertThat(profile(0, 10, 30, 4).volume().cubicMm()).isCloseTo(Math.PI * 10 * (100 + 40 + 16), within(1e-9));
        assertThat(profile(0, 10, 30, 0).volume().cubicMm()).isCloseTo(Math.PI * 1000, within(1e-9));
    }

    @Test
    void volume_byThinDiscs_isTheSame() {
        var random = new Random(5);
        for (int i = 0; i < 20; i++) {
            Profile profile = random(random);

            assertThat(profile.volume().cubicMm()).isCloseTo(discs(profile), within(0.5));
        }
    }

    /** The volume by a second way: a great many thin discs. */
    private static double discs(Profile profile) {
        int count = 60_000;
        double sum = 0;
        for (int i = 0; i < count; i++) {
            double radius = profile.radiusAfter(new Length((long) ((i + 0.5) * 60_000_000 / count)))
                    .mm();
            sum += Math.PI * radius * radius * 60 / count;
        }
        return sum;
    }

    @Test
    void largerAndSmaller_atEveryPosition_areTheGreaterAndTheLesser() {
        var random = new Random(11);
        for (int i = 0; i < 50; i++) {
            Profile one = random(random);
            Profile other = random(random);
            Profile larger = one.larger(other);
            Profile smaller = one.smaller(other);
            for (int nm = 1_234_567; nm < 60_000_000; nm += 1_234_567) {
                Length at = new Length(nm);
                Length most = Length.most(one.radiusAfter(at), other.radiusAfter(at));
                Length least = Length.least(one.radiusAfter(at), other.radiusAfter(at));

                assertThat(larger.radiusAfter(at).isWithin(ROUNDING, most)).isTrue();
                assertThat(smaller.radiusAfter(at).isWithin(ROUNDING, least)).isTrue();
            }
        }
    }

    @Test
    void isWithin_itself_always() {
        var random = new Random(3);
        for (int i = 0; i < 50; i++) {
            Profile profile = random(random);

            assertThat(profile.isWithin(Length.ZERO, profile)).isTrue();
        }
    }

    @Test
    void isWithin_aShoulderAMicrometreOff_holdsToAMicrometre() {
        Profile asked = profile(0, 10, 20, 10, 20, 5, 40, 5);
        Profile made = profile(0, 10, 20.0009, 10, 20.0009, 5, 40, 5);
        Profile short2 = profile(0, 10, 19.998, 10, 19.998, 5, 40, 5);

        assertThat(asked.isWithin(MICROMETRE, made)).isTrue();
        assertThat(asked.isWithin(MICROMETRE, short2)).isFalse();
    }

    @Test
    void isWithin_aGrooveThatOnlyOneHas_fails() {
        Profile plain = profile(0, 10, 40, 10);
        Profile grooved = profile(0, 10, 20, 10, 20, 9.99, 20.0005, 9.99, 20.0005, 10, 40, 10);

        assertThat(plain.isWithin(MICROMETRE, grooved)).isFalse();
        assertThat(grooved.isWithin(MICROMETRE, plain)).isFalse();
    }

    @Test
    void isWithin_anArcInOtherChords_holds() {
        Profile fine = new Profile(new Arc(10e6, 0, 10e6).chords(Math.PI, Math.PI / 2));
        Profile coarse = new Profile(List.of(
                fine.stations().getFirst(),
                fine.stations().get(fine.stations().size() / 2),
                fine.stations().getLast()));

        assertThat(fine.isWithin(MICROMETRE, fine.larger(Profile.level(fine.start(), fine.end(), Length.ZERO))))
                .isTrue();
        assertThat(fine.isWithin(MICROMETRE, coarse)).isFalse();
    }

    @Test
    void distance_ofStepFromGroove_goesRoundTheCorner() {
        Profile hollow = profile(0, 3, 20, 3, 20, 0, 40, 0);
        Profile outside = profile(0, 10, 23, 10, 23, 7, 40, 7);

        assertThat(hollow.thinnest(outside, Length.mm(6)).orElseThrow().wall()).isEqualTo(Length.mm(5));
        assertThat(hollow.thinnest(outside, Length.mm(5))).isEmpty();
    }

    @Test
    void thinnest_ofCrossingProfiles_isNothing() {
        Profile hollow = profile(0, 1, 40, 9);

        assertThat(hollow.thinnest(profile(0, 5, 40, 5), MICROMETRE)
                        .orElseThrow()
                        .wall())
                .isEqualTo(Length.ZERO);
    }

    @Test
    void thinnest_byTryingManyPoints_isTheSame() {
        var random = new Random(17);
        for (int i = 0; i < 20; i++) {
            Profile hollow = random(random);
            Profile outside = random(random);

            double tried = points(hollow).stream()
                    .filter(point -> point.r() > 0)
                    .mapToDouble(point -> points(outside).stream()
                            .mapToDouble(
                                    other -> new Segment(point, point).distance((double) other.z(), (double) other.r()))
                            .min()
                            .orElseThrow())
                    .min()
                    .orElseThrow();
            double found = hollow.thinnest(outside, Length.mm(100))
                    .orElseThrow()
                    .wall()
                    .nanometres();
            assertThat(found).isLessThanOrEqualTo(tried).isCloseTo(tried, within(300_000.0));
        }
    }

    /** Points close together along a profile and its walls. */
    private static List<Station> points(Profile profile) {
        List<Station> points = new ArrayList<>();
        for (Segment segment : profile.segments()) {
            for (int i = 0; i <= 100; i++) {
                points.add(Station.nm(segment.zAt(i / 100.0), segment.rAt(i / 100.0)));
            }
        }
        return points;
    }
}
