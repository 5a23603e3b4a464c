package chargehand.method.stock;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.Length;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The arithmetic of cutting up, beside worked examples computed from n·(l + 2a) + (n − 1)·kerf. */
final class AllowancesTest {
    private static final long SEED = 20260103;
    private static final int CASES = 2000;

    private static Allowances sawn(double facing, double kerf) {
        return new Allowances(Length.mm(facing), Length.mm(kerf), Length.ZERO, Length.ZERO);
    }

    /** Three pieces of 1000 do not come out of one bar of 3000: with two kerfs of 3 they need 3006. */
    @Test
    void piecesIn_threeThousandWithKerf_twoPieces() {
        assertThat(sawn(0, 3).piecesIn(Length.mm(3000), Length.mm(1000))).isEqualTo(2);
        assertThat(sawn(0, 3).piecesIn(Length.mm(3006), Length.mm(1000))).isEqualTo(3);
    }

    @ParameterizedTest
    @CsvSource({
        // stock, part, facing, kerf, pieces (computed, n·(l + 2a) + (n − 1)·kerf)
        "494, 120, 1, 2, 4",
        "493.9, 120, 1, 2, 3",
        "3050, 610, 0, 2, 4",
        "3058, 610, 0, 2, 5",
        "119, 120, 0, 2, 0",
        "120, 120, 0, 2, 1",
    })
    void piecesIn_sawnBar_asWorked(double stock, double part, double facing, double kerf, int pieces) {
        assertThat(sawn(facing, kerf).piecesIn(Length.mm(stock), Length.mm(part)))
                .isEqualTo(pieces);
    }

    @Test
    void piecesIn_partedFromBar_lastIsPartedFromTheGrip() {
        Allowances parted = new Allowances(Length.mm(1), Length.mm(3), Length.ZERO, Length.mm(28));
        // 24 pieces of 85 + 2 + 3 = 90 and 28 in the jaws
        assertThat(parted.piecesIn(Length.mm(24 * 90 + 28), Length.mm(85))).isEqualTo(24);
        assertThat(parted.piecesIn(Length.mm(24 * 90 + 27.9), Length.mm(85))).isEqualTo(23);
    }

    /** Second method: saw one piece after another off the bar until the next does not fit. */
    @Test
    void piecesIn_anyBar_asSawnOneByOne() {
        Random random = new Random(SEED);
        for (int i = 0; i < CASES; i++) {
            Length stock = new Length(random.nextInt(1, 3_000_000) * 1000L);
            Length part = new Length(random.nextInt(1, 500_000) * 1000L);
            Length held = random.nextBoolean() ? Length.ZERO : new Length(random.nextInt(1, 80_000) * 1000L);
            Allowances add = new Allowances(
                    new Length(random.nextInt(0, 2_000) * 1000L),
                    new Length(random.nextInt(500, 5_000) * 1000L),
                    Length.ZERO,
                    held);
            assertThat(add.piecesIn(stock, part)).isEqualTo(oneByOne(add, stock, part));
        }
    }

    private static int oneByOne(Allowances add, Length stock, Length part) {
        int pieces = 0;
        Length left = stock;
        Length needed = add.blank(part)
                .plus(add.held().isZero() ? Length.ZERO : add.slot().plus(add.held()));
        while (!left.isLessThan(needed)) {
            pieces++;
            left = left.minus(add.perPiece(part));
        }
        return pieces;
    }
}
