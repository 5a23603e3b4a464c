package chargehand.part.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.part.Body;
import chargehand.part.End;
import chargehand.part.FaceAt;
import chargehand.part.LengthWish;
import chargehand.part.Part;
import chargehand.part.testing.PartGenerator;
import chargehand.part.testing.PartText;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What is wanted of lengths on a drawing: read, written back, put into a file, refused at its place. */
final class LengthWishFormTest {
    private static PartText pin(String... wishes) {
        PartText text = PartText.mm()
                .outside(
                        "round: 30, length: 8, name: head",
                        "round: 20, length: 40, name: shank",
                        "round: 15, length: 12 ±0.05, name: spigot");
        return wishes.length == 0 ? text : text.line("lengths:").line("  " + String.join("\n  ", wishes));
    }

    private static LengthWish wish(String from, End one, String to, End other) {
        return LengthWish.none(new FaceAt(from, one), new FaceAt(to, other));
    }

    @Test
    void read_wishes_givesThemAsWritten() {
        Part part = FaultsOf.sound(pin(
                "- {from: 'head, A', to: 'shank, b', give: In brackets}",
                "- {from: 'shank, A', to: 'spigot, B', side: above, tier: farther}"));

        assertThat(part.drafting().lengths())
                .containsExactly(
                        wish("head", End.A, "shank", End.B).with(LengthWish.Giving.BRACKETED),
                        wish("shank", End.A, "spigot", End.B)
                                .with(LengthWish.LengthSide.ABOVE)
                                .with(LengthWish.Tier.FARTHER));
    }

    @Test
    void read_aSectionThatIsNotThere_isRefusedWithThoseThatAre() {
        assertThat(FaultsOf.of(pin("- {from: 'collar, A', to: 'shank, B', give: plain}")))
                .containsExactly("lengths[1].from LENGTH_FACE");
    }

    @Test
    void read_oneFaceByTwoNames_isNoLength() {
        assertThat(FaultsOf.of(pin("- {from: 'head, B', to: 'shank, A', give: plain}")))
                .containsExactly("lengths[1].to LENGTH_NONE");
    }

    @Test
    void read_oneLengthByOtherNames_isRefusedTheSecondTime() {
        assertThat(FaultsOf.of(pin(
                        "- {from: 'head, A', to: 'shank, B', side: above}",
                        "- {from: 'spigot, A', to: 'head, A', give: plain}")))
                .containsExactly("lengths[2] LENGTH_TWICE");
    }

    @Test
    void read_limitsInBracketsOrLeftOut_areRefused() {
        assertThat(FaultsOf.of(pin("- {from: 'spigot, A', to: 'spigot, B', give: in brackets}")))
                .containsExactly("lengths[1].give LENGTH_LIMITS");
        assertThat(FaultsOf.of(pin("- {from: 'spigot, A', to: 'spigot, B', give: left out}")))
                .containsExactly("lengths[1].give LENGTH_LIMITS");
        assertThat(FaultsOf.sound(pin("- {from: 'spigot, A', to: 'spigot, B', side: above}"))
                        .drafting()
                        .lengths())
                .hasSize(1);
    }

    @Test
    void read_otherWords_areRefusedWithWhatWouldDo() {
        assertThat(FaultsOf.of(pin("- {from: head, to: 'shank, C', give: perhaps, side: left, tier: 3}")))
                .containsExactlyInAnyOrder(
                        "lengths[1].from UNREADABLE",
                        "lengths[1].to UNREADABLE",
                        "lengths[1].give UNREADABLE",
                        "lengths[1].side UNREADABLE",
                        "lengths[1].tier UNREADABLE");
        assertThat(FaultsOf.of(pin("- {from: 'head, A', to: 'shank, B'}"))).containsExactly("lengths[1] UNREADABLE");
    }

    @Test
    void read_ofABlock_isRefused() {
        PartText block = PartText.mm()
                .line("block: {length: 60, width: 40, thickness: 10}")
                .line("lengths:")
                .line("  - {from: 'head, A', to: 'shank, B', give: plain}");

        assertThat(FaultsOf.of(block)).containsExactly("lengths LENGTH_UNWANTED");
    }

    @Test
    void with_otherWishes_leavesEveryOtherLineAsItWas() {
        String text = "# the head first\n" + pin() + "# at the end\n";
        Part part = FaultsOf.sound(pin());
        List<LengthWish> wishes = List.of(wish("head", End.A, "shank", End.B).with(LengthWish.Giving.BRACKETED));

        String with = PartFile.with(text, part, wishes);
        String without = PartFile.with(with, part.with(part.drafting().with(wishes)), List.of());

        assertThat(with).startsWith(text).contains("give: in brackets");
        assertThat(without).isEqualTo(text);
    }

    @Test
    void with_wishesInTheMiddleOfAFile_replacesThemThere() {
        String text = pin("- {from: 'head, A', to: 'shank, B', give: plain}", "# as the customer asked")
                .toString();
        Part part = FaultsOf.sound(pin("- {from: 'head, A', to: 'shank, B', give: plain}"));
        List<LengthWish> wishes = List.of(wish("head", End.A, "spigot", End.B).with(LengthWish.Tier.NEARER));

        String with = PartFile.with(text, part, wishes);

        assertThat(with).contains("# as the customer asked").doesNotContain("plain");
        assertThat(with.indexOf("lengths:")).isLessThan(with.indexOf("outside:"));
        assertThat(PartFile.read(with))
                .isInstanceOfSatisfying(
                        PartReading.Read.class,
                        read -> assertThat(read.part().drafting().lengths()).isEqualTo(wishes));
    }

    @Test
    void with_andWrite_anyPart_readBackEqual() {
        var generator = new PartGenerator(41, PartGenerator.Range.ALL);
        var random = new Random(42);
        for (int i = 0; i < 200; i++) {
            Part part = generator.turned();
            Body.Turned body = (Body.Turned) part.body();
            LengthWish wish = LengthWish.none(
                    FaceAt.of(body, 0),
                    FaceAt.of(body, 1 + random.nextInt(body.outside().size())));
            Part wished = part.with(part.drafting()
                    .with(List.of(wish.with(LengthWish.Giving.PLAIN)
                            .with(random.nextBoolean() ? LengthWish.LengthSide.ABOVE : LengthWish.LengthSide.BELOW))));
            String text = PartFile.write(part);

            for (String written : List.of(
                    PartFile.write(wished),
                    PartFile.with(text, part, wished.drafting().lengths()))) {
                assertThat(PartFile.read(written))
                        .as(written)
                        .isInstanceOfSatisfying(
                                PartReading.Read.class,
                                read -> assertThat(read.part()).isEqualTo(wished));
            }
        }
    }
}
