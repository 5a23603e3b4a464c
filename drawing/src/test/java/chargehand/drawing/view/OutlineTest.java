package chargehand.drawing.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.drawing.DemoParts;
import chargehand.drawing.RandomParts;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Segment;
import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.Body;
import chargehand.part.Part;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What is drawn is the model's solid times the scale, for the demo's parts, the samples and parts made up by chance. */
final class OutlineTest {
    private static final int BY_CHANCE = 30;

    /** How far a thinned contour may stray, and a place between two nanometres (mm on paper). */
    private static final double STRAY = 0.03;

    private static final double SCALE = 2;

    /** From line to line of hatching (mm). */
    private static final double PITCH = 2.5;

    private static final List<Solid> SOLIDS = solids();

    private static List<Solid> solids() {
        return Stream.concat(DemoParts.andSamples().stream(), RandomParts.of(BY_CHANCE).stream())
                .map(Part::body)
                .filter(Body.Turned.class::isInstance)
                .map(body -> Solid.of((Body.Turned) body))
                .toList();
    }

    static List<Solid> all() {
        return SOLIDS;
    }

    @ParameterizedTest
    @EnumSource(Cut.class)
    void of_anyPart_hasTheOutlineOfItsSolid(Cut cut) {
        for (Solid solid : SOLIDS) {
            Look look = new Look(solid, AxialScale.of(SCALE), cut);
            Drawn wide = Drawn.of(SideView.of(look).marks(), LineStyle.WIDE);
            for (double at : places(solid)) {
                Length here = Length.mm(at);
                List<Double> heights = wide.heightsAt(look.scale().x(here));
                double above =
                        SCALE * Flats.seen(solid, Side.ABOVE).radiusBefore(here).mm();
                double below =
                        SCALE * Flats.seen(solid, Side.BELOW).radiusBefore(here).mm();
                assertThat(heights).as("%s at %s", solid, at).isNotEmpty();
                assertThat(heights.getLast()).isCloseTo(above, within(STRAY));
                assertThat(heights.getFirst()).isCloseTo(-below, within(STRAY));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Cut.class,
            names = {"HALF", "FULL"})
    void of_anyBoredPart_hasTheWallsOfItsHollow(Cut cut) {
        for (Solid solid : SOLIDS) {
            Look look = new Look(solid, AxialScale.of(SCALE), cut);
            Drawn wide = Drawn.of(SideView.of(look).marks(), LineStyle.WIDE);
            for (double at : places(solid)) {
                Length here = Length.mm(at);
                double wall = SCALE * solid.innerAtMost().radiusBefore(here).mm();
                if (wall > STRAY) {
                    List<Double> heights = wide.heightsAt(look.scale().x(here));
                    assertThat(heights).anyMatch(height -> Math.abs(height + wall) < STRAY);
                    assertThat(cut == Cut.HALF || heights.stream().anyMatch(height -> Math.abs(height - wall) < STRAY))
                            .isTrue();
                }
            }
        }
    }

    /** Second method: the hatching's length times its pitch is the area that is cut, as integrated from the profiles. */
    @ParameterizedTest
    @MethodSource("all")
    void of_anyPartCutByHalf_isHatchedOverItsMaterial(Solid solid) {
        Solid plain =
                new Solid(solid.outer(), solid.inner(), solid.innerAtMost(), solid.threads(), solid.flats(), List.of());
        Look look = new Look(plain, AxialScale.of(SCALE), Cut.HALF);
        double lines = Drawn.of(SideView.of(look).marks(), LineStyle.HATCH).lines().stream()
                .mapToDouble(Segment::length)
                .sum();
        double area = SCALE * SCALE * (area(Flats.seen(solid, Side.BELOW)) - area(solid.innerAtMost()));
        double round = 2
                * SCALE
                * (solid.length().mm()
                        + solid.outer().most(Length.ZERO, solid.length()).mm());

        assertThat(lines * PITCH).isCloseTo(area, within(PITCH * round / 2));
    }

    private static double area(Profile profile) {
        double area = 0;
        for (int i = 1; i < profile.stations().size(); i++) {
            var before = profile.stations().get(i - 1);
            var after = profile.stations().get(i);
            area += after.at().minus(before.at()).mm()
                    * before.radius().plus(after.radius()).half().mm();
        }
        return area;
    }

    /** Places along a part away from its corners and from what is cut across it. */
    private static List<Double> places(Solid solid) {
        return Stream.iterate(0.313, at -> at < solid.length().mm(), at -> at + 1.237)
                .filter(at -> solid.across().stream().noneMatch(feature -> isNear(feature, at)))
                .filter(at -> Stream.concat(solid.outer().stations().stream(), solid.innerAtMost().stations().stream())
                        .noneMatch(station -> Math.abs(station.at().mm() - at) < 0.05))
                .toList();
    }

    private static boolean isNear(Across feature, double at) {
        return at >= feature.begins().mm() - 0.1 && at <= feature.ends().mm() + 0.1;
    }
}
