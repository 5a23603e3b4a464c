package chargehand.trade.stock;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.trade.Ask;
import chargehand.trade.PublishedRow;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class AllowanceSumTest {
    private static final String ROWS = "stock.json";

    /** Handbook ranges (from memory): what is used must lie within them for usual sizes. */
    private static List<Double> range(String item) {
        return PublishedRow.of(ROWS, "allowance").stream()
                .filter(row -> row.text("item").equals(item))
                .map(row -> ((List<?>) row.wanted("range"))
                        .stream().map(number -> ((Number) number).doubleValue()).toList())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void allowance_usualSizes_liesWithinTheHandbookRanges() {
        List<Double> black = range("black bar cleanup on diameter mm");
        List<Double> sawnEnd = range("facing sawn end, each face mm");
        List<Double> parting = range("parting tool width mm");
        for (int diameter = 10; diameter <= 100; diameter += 5) {
            Allowance allowance = Allowance.of(StockForm.BLACK_BAR, Length.mm(diameter));
            assertThat(allowance.perSide().mm() * 2).isBetween(black.getFirst(), black.getLast());
            assertThat(allowance.faceEach().mm()).isBetween(sawnEnd.getFirst(), sawnEnd.getLast());
            assertThat(Allowance.partingWidth(Length.mm(diameter)).mm())
                    .isBetween(parting.getFirst(), parting.getLast());
        }
    }

    @ParameterizedTest
    @EnumSource(StockForm.class)
    void allowance_largerWork_neverGetsLess(StockForm form) {
        Allowance before = Allowance.of(form, Length.mm(1));
        for (int diameter = 2; diameter <= 1000; diameter++) {
            Allowance after = Allowance.of(form, Length.mm(diameter));
            assertThat(after.perSide()).isGreaterThanOrEqualTo(before.perSide());
            assertThat(after.faceEach()).isGreaterThanOrEqualTo(before.faceEach());
            before = after;
        }
    }

    @Test
    void allowance_blackBar_addsUpByHand() {
        Ask ask = Ask.of("allowance", "form", "black bar", "diameter", "50 mm", "length", "120 mm");

        assertThat(ask.mm("stockDiameter")).isEqualTo(53);
        // 120 + 2 × 1.5 faced + 3 parted + 50 gripped
        assertThat(ask.mm("stockLength")).isEqualTo(176);
        assertThat(ask.mm("barMetric")).isEqualTo(55);
        assertThat(ask.in("barInch")).isEqualTo(2.125);
    }

    @Test
    void allowance_casting_isABlankWithoutGrip() {
        Ask ask = Ask.of("allowance", "form", "casting", "diameter", "80", "length", "40", "faces", "1");

        assertThat(ask.mm("stockLength")).isEqualTo(43);
        assertThat(ask.has("barMetric")).isFalse();
        assertThat(ask.cautions()).anyMatch(say -> say.contains("skin"));
    }

    @Test
    void barSizes_next_isNeverSmaller() {
        for (LengthUnit unit : LengthUnit.values()) {
            for (double mm = 1; mm < 300; mm += 0.7) {
                Length least = Length.mm(mm);
                BarSizes.next(least, unit).ifPresent(size -> assertThat(size).isGreaterThanOrEqualTo(least));
            }
            assertThat(BarSizes.list(unit)).isSorted().doesNotHaveDuplicates();
        }
    }

    @Test
    void allowance_wronglyAsked_isRefusedBesideItsField() {
        Ask.of("allowance", "diameter", "50").isRefusedAt("form", "needed");
        Ask.of("allowance", "form", "cheese", "diameter", "50").isRefusedAt("form", "black bar");
        Ask.of("allowance", "form", "sawn", "diameter", "0").isRefusedAt("diameter", "more than nothing");
        Ask.of("allowance", "form", "sawn", "diameter", "50", "faces", "3").isRefusedAt("faces", "2");
    }
}
