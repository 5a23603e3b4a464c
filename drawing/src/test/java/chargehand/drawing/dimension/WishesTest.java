package chargehand.drawing.dimension;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.drawing.SampleParts;
import chargehand.drawing.checking.FaultKind;
import chargehand.drawing.checking.SheetCheck;
import chargehand.drawing.checking.SheetFault;
import chargehand.drawing.sheet.DrawnSheet;
import chargehand.drawing.sheet.DrawnView;
import chargehand.drawing.sheet.Heading;
import chargehand.drawing.sheet.PartDrawing;
import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.FaceAt;
import chargehand.part.LengthWish;
import chargehand.part.LengthWish.Giving;
import chargehand.part.LengthWish.LengthSide;
import chargehand.part.LengthWish.Tier;
import chargehand.part.Part;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Lengths as somebody wants them. Faces of the spindle of our drawing rules are numbered 0 to 6: at 0, 25, 28, 40, 52, 90 and
 * 120 mm. That its 80 from 40 to 120 follows from 40 and 120 is the worked example of those rules; that the lengths left must
 * make a tree is Dori, Communications of the ACM 35(10), 1992.
 */
final class WishesTest {
    private static final Part SPINDLE = SampleParts.spindle();

    private static LengthWish between(Part part, int from, int to) {
        Body.Turned body = (Body.Turned) part.body();
        return LengthWish.none(FaceAt.of(body, from), FaceAt.of(body, to));
    }

    private static Part wished(LengthWish... wishes) {
        return SPINDLE.with(SPINDLE.drafting().with(List.of(wishes)));
    }

    private static List<String> says(List<GivenLengths.Given> lengths) {
        return lengths.stream()
                .map(length -> length.from() + "-" + length.to() + " " + length.says())
                .toList();
    }

    @Test
    void of_anAddedLengthThatFollows_namesTheCircleTheLooserFirst() {
        GivenLengths given = GivenLengths.of(wished(between(SPINDLE, 3, 6).with(Giving.PLAIN)));

        assertThat(given.circles()).singleElement().satisfies(circle -> {
            assertThat(circle.wanted().says()).isEqualTo("(80)");
            assertThat(says(circle.others())).containsExactly("0-6 120", "0-3 40");
        });
        assertThat(says(given.lengths())).contains("3-6 (80)");
    }

    @Test
    void of_anAddedLengthInPlaceOfABracketedOne_isGiven() {
        GivenLengths given = GivenLengths.of(wished(
                between(SPINDLE, 3, 6).with(Giving.PLAIN),
                between(SPINDLE, 0, 3).with(Giving.BRACKETED)));

        assertThat(given.circles()).isEmpty();
        assertThat(says(given.lengths()))
                .containsExactlyInAnyOrder("0-3 (40)", "0-6 120", "1-2 3", "1-3 15", "3-4 12", "3-6 80", "5-6 30");
    }

    @Test
    void of_aBracketedLength_givesItsFacesAnotherPlace() {
        GivenLengths given = GivenLengths.of(wished(between(SPINDLE, 5, 6).with(Giving.BRACKETED)));

        assertThat(says(given.lengths())).contains("5-6 (30)", "3-5 50");
    }

    @Test
    void of_aLengthLeftOut_doesNotShowIt() {
        GivenLengths given = GivenLengths.of(wished(between(SPINDLE, 0, 6).with(Giving.LEFT_OUT)));

        assertThat(says(given.lengths())).doesNotContain("0-6 120").contains("3-5 50");
    }

    @Test
    void sheet_aLengthOnTheOtherSide_standsThere() {
        assertThat(height(SPINDLE, "15")).isPositive();
        assertThat(height(wished(between(SPINDLE, 1, 3).with(LengthSide.ABOVE)), "15"))
                .isNegative();
    }

    @Test
    void sheet_aLengthFartherOut_standsBeyondAllOthers() {
        Part farther = wished(between(SPINDLE, 3, 4).with(Tier.FARTHER));

        assertThat(height(SPINDLE, "12")).isLessThan(height(SPINDLE, "120"));
        assertThat(height(farther, "12")).isGreaterThan(height(farther, "120"));
    }

    @Test
    void sheet_aLengthNearer_standsBeforeAllOthers() {
        Part nearer = wished(between(SPINDLE, 0, 6).with(Tier.NEARER));

        assertThat(height(nearer, "120")).isLessThan(height(nearer, "12"));
    }

    /** How far below the axis of the side view a length's line lies (mm). */
    private static double height(Part part, String says) {
        DrawnView side = side(part);
        return side.view().placed().stream()
                .filter(placing -> placing.says().equals(says))
                .flatMap(placing -> placing.tips().stream())
                .mapToDouble(tip -> tip.y())
                .findFirst()
                .orElseThrow();
    }

    private static DrawnView side(Part part) {
        return sheet(part).views().stream()
                .filter(view -> view.shows() == DrawnView.Shows.SIDE)
                .findFirst()
                .orElseThrow();
    }

    private static DrawnSheet sheet(Part part) {
        return PartDrawing.sheet(part, Heading.BLANK);
    }

    @ParameterizedTest
    @MethodSource("chargehand.drawing.SampleParts#turned")
    void of_anyWishesOnAnyPart_placesEveryFaceOnceAndNoneTwice(Part part) {
        Random random = new Random(7);
        for (int round = 0; round < 40; round++) {
            Part wished = part.with(part.drafting().with(some(part, random)));
            FaceTree tree = new FaceTree();
            TreeSet<Length> faces = new TreeSet<>();
            Body.Turned body = (Body.Turned) part.body();
            for (GivenLengths.Given length : GivenLengths.of(wished).lengths()) {
                faces.add(body.start(length.from()));
                faces.add(body.start(length.to()));
                if (!length.bracketed()) {
                    assertThat(tree.join(body.start(length.from()), body.start(length.to())))
                            .as("%s of %s", length, wished.drafting())
                            .isTrue();
                }
            }
            assertThat(faces).hasSize(body.outside().size() + 1);
            assertThat(tree.isWhole(faces.size())).isTrue();
        }
    }

    @ParameterizedTest
    @MethodSource("chargehand.drawing.SampleParts#turned")
    void sheet_anyWishes_readsCompleteAndNothingTwice(Part part) {
        Part wished = part.with(part.drafting().with(some(part, new Random(11))));

        assertThat(SheetCheck.of(sheet(wished)))
                .extracting(SheetFault::kind)
                .doesNotContainAnyElementsOf(EnumSet.of(
                        FaultKind.SIZE_MISSING, FaultKind.SIZE_TWICE, FaultKind.NOT_THE_PARTS, FaultKind.NOT_TO_SCALE));
    }

    /** Up to four wishes about different lengths, none of which limits stand on. */
    private static List<LengthWish> some(Part part, Random random) {
        int faces = ((Body.Turned) part.body()).outside().size() + 1;
        TreeSet<Integer> taken = new TreeSet<>();
        List<LengthWish> wishes = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            int from = random.nextInt(faces - 1);
            int to = from + 1 + random.nextInt(faces - 1 - from);
            if (taken.add(from * faces + to)) {
                LengthWish wish = between(part, from, to);
                boolean limits = to == from + 1
                        && ((Body.Turned) part.body())
                                .outside()
                                .get(from)
                                .stretch()
                                .length()
                                .isToleranced();
                Giving giving = random.nextBoolean() ? Giving.BRACKETED : Giving.LEFT_OUT;
                wishes.add(wish.with(limits || random.nextBoolean() ? Giving.PLAIN : giving));
            }
        }
        return wishes;
    }
}
