package chargehand.method.stock;

import static chargehand.method.stock.Wants.bar;
import static chargehand.method.stock.Wants.block;
import static chargehand.method.stock.Wants.choose;
import static chargehand.method.stock.Wants.mm;
import static chargehand.method.stock.Wants.round;
import static chargehand.method.stock.Wants.with;
import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.Length;
import chargehand.method.plan.Blank;
import chargehand.method.rack.Piece;
import chargehand.method.rack.Piece.Condition;
import chargehand.method.rack.Shape;
import chargehand.part.End;
import org.junit.jupiter.api.Test;

final class BlockStockTest {
    private static Shape flat(String width, String thickness) {
        return new Shape.Flat(mm(width), mm(thickness));
    }

    @Test
    void candidates_brightFlatOfTheSection_leftAsDrawn() {
        Candidate candidate = choose(block("EN3B", "80", "50", "6"), 40, bar("P1", "EN3B", flat("50", "6"), "4000"))
                .fit()
                .getFirst();
        assertThat(candidate.asDrawn()).isTrue();
        assertThat(candidate.way()).isEqualTo(Way.SAWN);
        assertThat(candidate.raw())
                .isEqualTo(new Raw.Flat(
                        Length.mm(50),
                        Length.mm(6),
                        new Raw.Lies(Raw.Direction.LENGTH, Raw.Direction.WIDTH, Raw.Direction.THICKNESS)));
        // each 80 + 2 × (1/32 in + 0.7) = 82.9875 and a kerf of 2: (4000 + 2) / 84.9875 = 47.09
        assertThat(candidate.gives().perLength()).isEqualTo(47);
    }

    @Test
    void candidates_blackFlatOfTheSection_tooSmall() {
        Piece black = with(bar("P1", "EN3B", flat("50", "6"), "4000"), Condition.BLACK);
        Candidates candidates = choose(block("EN3B", "80", "50", "6"), 1, black);
        assertThat(candidates.fit()).isEmpty();
        assertThat(candidates.passedOver().getFirst().why())
                .contains("too small")
                .contains("1.5 mm");
    }

    @Test
    void candidates_wideFlat_blockLiesAcrossTheBar() {
        Candidate candidate = choose(block("EN3B", "78", "40", "9"), 1, bar("P2", "EN3B", flat("80", "10"), "500"))
                .fit()
                .getFirst();
        assertThat(candidate.raw())
                .isInstanceOfSatisfying(
                        Raw.Flat.class, raw -> assertThat(raw.lies().along()).isEqualTo(Raw.Direction.WIDTH));
        assertThat(candidate.blank(Length.mm(40), End.B))
                .isEqualTo(new Blank.Slab(Length.mm(80), candidate.gives().blank(), Length.mm(10)));
    }

    @Test
    void candidates_squareBar_takenAsFlat() {
        Candidates candidates =
                choose(block("EN3B", "60", "18", "12"), 1, bar("A1", "EN3B", new Shape.Polygon(4, mm("20")), "500"));
        assertThat(candidates.fit()).hasSize(1);
    }

    @Test
    void candidates_roundOrHexagonForBlock_passedOver() {
        Candidates candidates = choose(
                block("EN3B", "60", "18", "12"),
                1,
                bar("A1", "EN3B", round("50"), "500"),
                bar("A2", "EN3B", new Shape.Polygon(6, mm("50")), "500"));
        assertThat(candidates.fit()).isEmpty();
        assertThat(candidates.passedOver().get(0).why()).contains("it is round, and the part is a block");
        assertThat(candidates.passedOver().get(1).why()).contains("6 sides");
    }
}
