package chargehand.part.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import chargehand.part.check.PartRemark;
import chargehand.part.testing.PartText;
import chargehand.part.yaml.tree.Fault;
import chargehand.part.yaml.tree.ReadingFault;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is refused about a file before it is asked what it means. */
final class LayoutFaultsTest {
    private static final String HEAD = "part: Pin\nunit: mm\nmaterial: EN8\ngeneral: ±0.1\n";

    @ParameterizedTest
    @ValueSource(strings = {"", "   \n\n", "# nothing but a remark\n"})
    void file_withNothingInIt_isRefused(String text) {
        assertThat(FaultsOf.of(text)).containsExactly(" NOTHING_WRITTEN");
    }

    @Test
    void file_ofAList_isRefused() {
        assertThat(FaultsOf.of("- part: Pin\n")).containsExactly(" WRONG_KIND");
    }

    @Test
    void file_longerThanAnyPart_isRefused() {
        assertThat(FaultsOf.of("#".repeat(200_001))).containsExactly(" TOO_LONG");
    }

    @Test
    void file_nestedWithoutEnd_isRefused() {
        assertThat(FaultsOf.list(HEAD + "notes: " + "[".repeat(50_000)))
                .extracting(Fault::code)
                .containsExactly(ReadingFault.TOO_DEEP);
    }

    @Test
    void secondDocument_isRefused() {
        assertThat(FaultsOf.of(PartText.mm().outside("round: 20, length: 30") + "---\npart: Other\n"))
                .containsExactly(" NOT_PLAIN");
    }

    @Test
    void anchorsAndReferences_areRefused() {
        assertThat(FaultsOf.of(HEAD + "outside: &all\n  - round: 20\n    length: 30\ninside: *all\n"))
                .contains("outside NOT_PLAIN", "inside NOT_PLAIN");
    }

    @Test
    void tag_isRefused() {
        assertThat(FaultsOf.of(HEAD + "outside:\n  - round: !!int 20\n    length: 30\n"))
                .containsExactly("outside[1].round NOT_PLAIN");
    }

    @Test
    void key_writtenTwice_isRefusedWhereItStandsAgain() {
        List<Fault> faults = FaultsOf.list(HEAD + "outside:\n  - round: 20\n    length: 30\n    round: 21\n");

        assertThat(faults).singleElement().satisfies(fault -> {
            assertThat(fault.path()).isEqualTo("outside[1].round");
            assertThat(fault.code()).isEqualTo(ReadingFault.KEY_TWICE);
            assertThat(fault.line()).isEqualTo(8);
            assertThat(fault.column()).isEqualTo(5);
            assertThat(fault.say()).contains("line 6");
        });
    }

    @Test
    void tab_beforeAKey_isRefusedInPlainWords() {
        assertThat(FaultsOf.list(HEAD + "outside:\n\t- round: 20\n"))
                .singleElement()
                .satisfies(fault -> {
                    assertThat(fault.code()).isEqualTo(ReadingFault.LAYOUT);
                    assertThat(fault.line()).isEqualTo(6);
                    assertThat(fault.say()).contains("spaces");
                });
    }

    @Test
    void character_thatNoTextHolds_isRefused() {
        assertThat(FaultsOf.list("part: Pin\nnotes: a\u0007b\n"))
                .singleElement()
                .satisfies(fault -> {
                    assertThat(fault.code()).isEqualTo(ReadingFault.LAYOUT);
                    assertThat(fault.line()).isEqualTo(2);
                });
    }

    @Test
    void quote_neverClosed_isRefused() {
        assertThat(FaultsOf.of(HEAD + "notes:\n  - \"open\n")).containsExactly(" LAYOUT");
    }

    @Test
    void unknownKey_isRefusedNamingTheNearOne() {
        List<Fault> faults = FaultsOf.list(HEAD + "outside:\n  - round: 20\n    lenght: 30\n");

        assertThat(faults).extracting(Fault::code).containsExactly(ReadingFault.KEY_MISSING, ReadingFault.KEY_UNKNOWN);
        assertThat(faults.getLast().say()).isEqualTo("'lenght' is not known here. Perhaps length is meant.");
    }

    @Test
    void unknownKind_isRefusedNamingTheNearOne() {
        List<Fault> faults = FaultsOf.list(HEAD + "outside:\n  - roudn: 20\n    length: 30\n");

        assertThat(faults).singleElement().satisfies(fault -> {
            assertThat(fault.path()).isEqualTo("outside[1].roudn");
            assertThat(fault.say()).contains("round");
        });
    }

    @Test
    void entry_ofNoKind_isToldTheKinds() {
        assertThat(FaultsOf.list(HEAD + "outside:\n  - length: 30\n"))
                .singleElement()
                .satisfies(fault -> {
                    assertThat(fault.code()).isEqualTo(ReadingFault.KEY_MISSING);
                    assertThat(fault.say()).contains("round").contains("thread").contains("hexagon");
                });
    }

    @Test
    void entry_ofTwoKinds_isRefused() {
        assertThat(FaultsOf.of(PartText.mm().outside("round: 20, hexagon: 18, length: 30")))
                .containsExactly("outside[1].hexagon KEYS_CLASH");
    }

    @Test
    void keysOfThePart_thatMustBeThere_areAskedForAtOnce() {
        assertThat(FaultsOf.list("drawing: KH-1\n"))
                .extracting(Fault::code)
                .containsOnly(ReadingFault.KEY_MISSING)
                .hasSize(5);
    }

    @Test
    void blockAndOutside_together_areRefused() {
        assertThat(FaultsOf.of(PartText.mm()
                        .line("block: {length: 60, width: 40, thickness: 20}")
                        .outside("round: 20, length: 30")))
                .containsExactly("block KEYS_CLASH");
    }

    @Test
    void listWhereAValueIsWanted_isRefused() {
        assertThat(FaultsOf.of(PartText.mm().outside("round: [20], length: 30")))
                .containsExactly("outside[1].round WRONG_KIND");
    }

    @Test
    void valueWhereAListIsWanted_isRefused() {
        assertThat(FaultsOf.of(HEAD + "outside: round 20\n")).contains("outside WRONG_KIND");
    }

    @Test
    void valueBeginningWithAHash_isToldToStandInQuotes() {
        assertThat(FaultsOf.list(HEAD + "outside:\n  - round: #7\n    length: 30\n"))
                .singleElement()
                .satisfies(fault -> {
                    assertThat(fault.code()).isEqualTo(ReadingFault.NOTHING_WRITTEN);
                    assertThat(fault.say()).contains("quotes");
                });
    }

    @Test
    void everyUnreadableValue_isToldAtOnce() {
        assertThat(FaultsOf.of(PartText.mm()
                        .line("texture: smooth")
                        .outside("round: wide, length: 30", "thread: M, length: 3x, at-a: chamfered")
                        .inside("drill: 5, depth: 10", "cone: 180°, from: C, mouth: 10, to: 5")
                        .across("hole: 3, at: 5, through: maybe")))
                .containsExactly(
                        "texture UNREADABLE",
                        "outside[1].round UNREADABLE",
                        "outside[2].thread UNREADABLE",
                        "outside[2].length UNREADABLE",
                        "outside[2].at-a UNREADABLE",
                        "inside[1] KEY_MISSING",
                        "inside[2].cone UNREADABLE",
                        "inside[2].from UNREADABLE",
                        "across[1].through UNREADABLE");
    }

    @Test
    void throughAndDepth_together_areRefused() {
        assertThat(FaultsOf.of(PartText.mm()
                        .outside("round: 20, length: 30")
                        .inside("drill: 5, from: A, depth: 10, through: true")))
                .containsExactly("inside[1].depth KEYS_CLASH");
    }

    @Test
    void featureThatCannotStand_isToldBesideAnotherThatCannotBeRead() {
        assertThat(FaultsOf.of(PartText.mm().outside("round: wide, length: 30", "hexagon: 20, corners: 19, length: 5")))
                .containsExactly("outside[1].round UNREADABLE", "outside[2].hexagon CORNERS_WITHIN_FLATS");
    }

    @Test
    void material_unknownToTheTables_isRemarkedOn() {
        String text = PartText.mm().outside("round: 20, length: 30").toString().replace("EN8", "unobtainium");

        assertThat(PartFile.read(text))
                .isInstanceOfSatisfying(
                        PartReading.Read.class,
                        read -> assertThat(read.remarks())
                                .extracting(Remark::path, Remark::code, Remark::line)
                                .containsExactly(tuple("material", PartRemark.MATERIAL_UNKNOWN, 3)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\uFEFF%s", "%%YAML 1.2\n---\n%s", "# union\n\n%s...\n"})
    void file_withWhatOtherProgramsAdd_isRead(String frame) {
        String text = PartText.mm().outside("round: 20, length: 30").toString();

        assertThat(FaultsOf.of(String.format(Locale.ROOT, frame, text))).isEmpty();
        assertThat(FaultsOf.of(text.replace("\n", "\r\n"))).isEmpty();
    }

    @Test
    void file_ofAsManyFeaturesAsAPartHas_stands() {
        var text = PartText.mm();
        for (int i = 0; i < 100; i++) {
            text.outside("round: " + (4000 + i % 2 * 2000) + ", length: 80, at-a: radius 30, at-b: radius 30");
        }
        for (int i = 0; i < 30; i++) {
            text.inside("bore: " + (1000 + 10 * i) + ", from: A, depth: " + (7900 - 40 * i) + ", mouth: radius 3");
        }

        assertThat(FaultsOf.of(text)).isEmpty();
    }
}
