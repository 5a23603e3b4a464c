package chargehand.trade.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.trade.Ask;
import chargehand.trade.PublishedRow;
import org.junit.jupiter.api.Test;

class ExpandSumTest {
    @Test
    void expand_shaftInTheCold_shrinksAsComputed() {
        // The row takes 10.5 millionths, the table 11.7 for carbon steel: the same rule, so in that proportion.
        PublishedRow row = PublishedRow.of("press-fits.json", "shrink_fit_cool").getFirst();
        Ask ask = Ask.of(
                "expand",
                "size",
                row.text("d"),
                "material",
                "EN8",
                "from",
                row.text("cool_from"),
                "to",
                row.text("cool_to"));

        assertThat(-ask.mm("change") * row.number("alpha") / 11.7e-6).isCloseTo(row.want("shrink_mm"), within(2e-6));
    }

    @Test
    void expand_thereAndBack_comesBackToTheSize() {
        Ask there = Ask.of("expand", "size", "100 mm", "material", "LG2", "from", "20", "to", "80");
        Ask back = Ask.of("expand", "size", there.mm("size") + " mm", "material", "LG2", "from", "80", "to", "20");

        // The rule is linear in the size it starts from, so the way back differs by the square of the growth.
        assertThat(back.mm("size")).isCloseTo(100, within(100 * Math.pow(18e-6 * 60, 2) + 1e-6));
    }

    @Test
    void expand_twiceAsWarm_growsTwiceAsMuch() {
        Ask once = Ask.of("expand", "size", "250 mm", "material", "aluminium", "to", "60 °C");
        Ask twice = Ask.of("expand", "size", "250 mm", "material", "aluminium", "to", "100 °C");

        assertThat(twice.mm("change")).isCloseTo(2 * once.mm("change"), within(2e-6));
    }

    @Test
    void expand_hot_warnsOfBurns() {
        assertThat(Ask.of("expand", "size", "50", "material", "EN8", "to", "190")
                        .cautions())
                .anyMatch(say -> say.contains("burns"))
                .anyMatch(say -> say.contains("only a guide"));
    }

    @Test
    void expand_wronglyAsked_isRefusedBesideItsField() {
        Ask.of("expand", "size", "50", "material", "EN8").isRefusedAt("to", "needed");
        Ask.of("expand", "size", "50", "material", "EN8", "to", "1200").isRefusedAt("to", "600 °C");
    }
}
