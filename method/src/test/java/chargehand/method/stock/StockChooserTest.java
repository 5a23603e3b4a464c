package chargehand.method.stock;

import static chargehand.method.stock.Wants.bar;
import static chargehand.method.stock.Wants.choose;
import static chargehand.method.stock.Wants.hexagon;
import static chargehand.method.stock.Wants.mm;
import static chargehand.method.stock.Wants.round;
import static chargehand.method.stock.Wants.thread;
import static chargehand.method.stock.Wants.times;
import static chargehand.method.stock.Wants.turned;
import static chargehand.method.stock.Wants.with;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Length;
import chargehand.measure.Written;
import chargehand.method.plan.Blank;
import chargehand.method.plan.Method.PassedOver;
import chargehand.method.rack.Piece;
import chargehand.method.rack.Piece.Condition;
import chargehand.method.rack.Rack;
import chargehand.method.rack.Shape;
import chargehand.part.End;
import chargehand.part.Part;
import chargehand.part.Tie;
import java.util.List;
import org.junit.jupiter.api.Test;

final class StockChooserTest {
    private static final Part PIN = turned("EN8", "", round("24", "60"));

    private static String onlyReason(Candidates candidates) {
        assertThat(candidates.fit()).isEmpty();
        assertThat(candidates.passedOver()).hasSize(1);
        return candidates.passedOver().getFirst().why();
    }

    private static List<String> names(Candidates candidates) {
        return candidates.fit().stream()
                .map(each -> each.piece().name())
                .distinct()
                .toList();
    }

    private static Candidate way(Candidates candidates, Way way) {
        return candidates.fit().stream()
                .filter(each -> each.way() == way)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void candidates_thickEnough_everyWayOffered() {
        Candidates candidates = choose(PIN, 1, bar("A1", "EN8", round("25"), "500"));
        assertThat(candidates.fit())
                .extracting(Candidate::way)
                .containsExactlyInAnyOrder(Way.FROM_BAR, Way.SAWN, Way.SAWN_WITH_STUB);
        assertThat(candidates.fit()).allSatisfy(each -> {
            assertThat(each.raw()).isEqualTo(new Raw.Round(Length.mm(25)));
            assertThat(each.match()).isEqualTo(Candidate.Match.SAME);
            assertThat(each.working()).hasSizeGreaterThanOrEqualTo(4);
            assertThat(each.asDrawn()).isFalse();
        });
        assertThat(candidates.passedOver()).isEmpty();
    }

    @Test
    void candidates_tooThin_saysByHowMuch() {
        String why = onlyReason(choose(PIN, 1, bar("A1", "EN8", round("24.2"), "500")));
        assertThat(why)
                .contains("too thin")
                .contains("24.2 mm")
                .contains("24.5 mm")
                .contains("0.25 mm");
    }

    @Test
    void candidates_blackBar_losesMoreThanBright() {
        Piece black = with(bar("A1", "EN8", round("26"), "500"), Condition.BLACK);
        assertThat(onlyReason(choose(PIN, 1, black))).contains("27 mm");
        assertThat(choose(PIN, 1, bar("A1", "EN8", round("26"), "500")).fit()).isNotEmpty();
    }

    @Test
    void candidates_otherMaterial_saysWhich() {
        String why = onlyReason(choose(PIN, 1, bar("A1", "CZ121", round("25"), "500")));
        assertThat(why).contains("it is CZ121, and EN8 is asked for");
    }

    @Test
    void candidates_flatForTurnedPart_passedOver() {
        Shape flat = new Shape.Flat(mm("50"), mm("30"));
        assertThat(onlyReason(choose(PIN, 1, bar("A1", "EN8", flat, "500")))).contains("it is flat");
    }

    @Test
    void candidates_tooShort_saysWhatOnePieceTakes() {
        String why = onlyReason(choose(PIN, 1, bar("A1", "EN8", round("25"), "60")));
        assertThat(why)
                .contains("EN8, 25 mm round, rack: it is too short")
                .contains("60 mm is left")
                .contains("at least 62.988 mm");
    }

    @Test
    void candidates_offcutBesideBar_offcutFirst() {
        Piece longBar = bar("A1", "EN8", round("25"), "3000");
        Piece offcut = bar("R1", "EN8", round("25"), "110");
        assertThat(names(choose(PIN, 1, longBar, offcut))).containsExactly("R1", "A1");
    }

    @Test
    void candidates_nearerSize_first() {
        Piece fat = bar("A1", "EN8", round("38"), "3000");
        Piece near = bar("A2", "EN8", round("25"), "3000");
        assertThat(names(choose(PIN, 1, fat, near))).containsExactly("A2", "A1");
        Candidates both = choose(PIN, 1, fat, near);
        assertThat(both.fit().getFirst().gives().turnedAway())
                .isLessThan(both.fit().getLast().gives().turnedAway());
    }

    @Test
    void candidates_batchFromBar_kerfAndGripCounted() {
        // each 60 + 2 × 1/32 in + 3 parting = 64.5875 mm; 28 mm stay in the jaws
        Length each = Length.mm(60).plus(Length.inch(2, 32)).plus(SmallShop.PARTING);
        Length held = SmallShop.JAWS.plus(Length.mm(3));
        Length justEnough = each.times(24).plus(held);
        Piece enough = bar("A1", "EN8", round("25"), justEnough.mm() + "");
        Yield gives = way(choose(PIN, 24, enough), Way.FROM_BAR).gives();
        assertThat(gives.perLength()).isEqualTo(24);
        assertThat(gives.lengths()).isEqualTo(1);
        assertThat(gives.perPiece()).isEqualTo(each);
        assertThat(gives.left()).isEqualTo(held);
    }

    @Test
    void candidates_threeOfAThousandFromThreeThousand_notOneBar() {
        Part shaft = turned("EN8", "", round("24", "1000"));
        String why = onlyReason(choose(shaft, 3, bar("A1", "EN8", round("25"), "3000")));
        assertThat(why).contains("it gives only 2 of 3");
        Candidates two = choose(shaft, 3, times(bar("A1", "EN8", round("25"), "3000"), 2));
        assertThat(way(two, Way.SAWN).gives().lengths()).isEqualTo(2);
    }

    @Test
    void candidates_thickerThanSpindle_notFromBar() {
        Part disc = turned("EN8", "", round("55", "20"));
        Candidates candidates = choose(disc, 1, bar("A1", "EN8", round("60"), "500"));
        assertThat(candidates.fit()).extracting(Candidate::way).containsExactlyInAnyOrder(Way.SAWN, Way.SAWN_WITH_STUB);
    }

    @Test
    void candidates_partingToolTooShallow_onlyBareBlanks() {
        Part disc = turned("EN8", "", round("80", "20"));
        Candidates candidates = choose(disc, 1, bar("A1", "EN8", round("85"), "500"));
        assertThat(candidates.fit()).extracting(Candidate::way).containsExactly(Way.SAWN);
    }

    @Test
    void candidates_noSawAndTooThickForSpindle_passedOver() {
        Part disc = turned("EN8", "", round("55", "20"));
        Rack rack = new Rack(List.of(bar("A1", "EN8", round("60"), "500")));
        Candidates candidates = StockChooser.candidates(disc, 1, rack, SmallShop.withoutSaw());
        assertThat(onlyReason(candidates)).contains("neither goes through a lathe's spindle");
    }

    @Test
    void candidates_shortPiecesSawn_endStaysInTheVice() {
        Part washer = turned("EN8", "", round("24", "5"));
        Candidate sawn = way(choose(washer, 1, bar("A1", "EN8", round("25"), "100")), Way.SAWN);
        assertThat(sawn.allowances().held()).isEqualTo(SmallShop.saw().shortestHeld());
    }

    @Test
    void candidates_hexagonBarOfTheSize_flatsStayAsDrawn() {
        Part union = turned("LG2", "", round("16", "20"), hexagon("25", "12"), round("16", "20"));
        Piece bar = bar("C1", "LG2", new Shape.Polygon(6, mm("25")), "500");
        Candidates candidates = choose(union, 1, bar);
        assertThat(candidates.fit()).isNotEmpty().allSatisfy(each -> {
            assertThat(each.asDrawn()).isTrue();
            assertThat(each.cautions()).anyMatch(caution -> caution.contains("measure it"));
        });
        assertThat(choose(union, 1, with(bar, Condition.CAST)).fit()).isEmpty();
    }

    @Test
    void candidates_hexagonBarBesideRound_hexagonFirst() {
        Part union = turned("LG2", "", round("16", "20"), hexagon("25", "12"), round("16", "20"));
        Piece hexagon = bar("C1", "LG2", new Shape.Polygon(6, mm("25")), "500");
        Piece thick = bar("C2", "LG2", round("32"), "500");
        assertThat(names(choose(union, 1, thick, hexagon))).containsExactly("C1", "C2");
    }

    @Test
    void candidates_brightBarOfTheSize_staysAsDrawnUnlessTied() {
        Part stud = turned("EN8", "", round("16", "20"), round("25", "40"));
        Piece bar = bar("A1", "EN8", round("25"), "500");
        assertThat(choose(stud, 1, bar).fit()).isNotEmpty().allMatch(Candidate::asDrawn);
        Part tied = Wants.tied(stud, new Tie("round 16", "round 25", mm("0.02")));
        assertThat(onlyReason(choose(tied, 1, bar))).contains("too thin");
        assertThat(onlyReason(choose(stud, 1, with(bar, Condition.BLACK)))).contains("too thin");
    }

    @Test
    void candidates_studFromBarOfItsSize_screwedAsDrawn() {
        Part stud = turned("EN8", "", thread("M20", "6g", "30"), round("20", "35"), thread("M20", "6g", "45"));
        Candidates candidates = choose(stud, 1, bar("A1", "EN8", round("20"), "500"));
        assertThat(candidates.fit()).isNotEmpty().allSatisfy(each -> {
            assertThat(each.asDrawn()).isTrue();
            // M20 6g: major 19.958 at the most (ISO 965-1: es = -42 µm for g at 2.5 mm pitch)
            assertThat(each.cautions()).anyMatch(caution -> caution.contains("19.958 mm") && caution.contains("skim"));
        });
    }

    @Test
    void candidates_none_whyForEachPieceTheRightMaterialFirst() {
        Candidates candidates =
                choose(PIN, 1, bar("Z", "CZ121", round("25"), "500"), bar("A", "EN8", round("20"), "500"));
        assertThat(candidates.passedOver()).extracting(PassedOver::piece).containsExactly("A", "Z");
    }

    @Test
    void candidates_noParts_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> choose(PIN, 0)).withMessageContaining("at least one");
    }

    @Test
    void candidates_priceKnown_worthOfWhatIsLeft() {
        Candidate candidate = way(choose(PIN, 1, bar("A1", "EN8", round("25"), "1000")), Way.SAWN);
        // π/4 · 25² mm² · left · 7850 kg/m³ (EN8, handbook density) · 2.0 a kilogram
        double kilograms = Math.PI / 4 * 625 * candidate.gives().left().mm() * 7850e-9;
        assertThat(candidate.gives().worthLeft())
                .hasValueSatisfying(worth -> assertThat(worth).isCloseTo(2 * kilograms, within(1e-9)));
    }

    @Test
    void blank_fromBar_partBetweenFacingAndJaws() {
        Candidate candidate = way(choose(PIN, 1, bar("A1", "EN8", round("25"), "500")), Way.FROM_BAR);
        Length facing = Length.inch(1, 32);
        Length beyond = facing.plus(SmallShop.PARTING).plus(Length.mm(3)).plus(SmallShop.JAWS);
        Written length = mm("60");
        assertThat(candidate.blank(length.length(), End.B))
                .isEqualTo(new Blank.RoundBar(facing.negated(), length.length().plus(beyond), Length.mm(25), true));
        assertThat(candidate.blank(length.length(), End.A))
                .isEqualTo(new Blank.RoundBar(beyond.negated(), length.length().plus(facing), Length.mm(25), true));
    }
}
