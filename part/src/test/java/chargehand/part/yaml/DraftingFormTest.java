package chargehand.part.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.part.Drafting;
import chargehand.part.DrawingIssue;
import chargehand.part.Part;
import chargehand.part.Projection;
import chargehand.part.testing.PartText;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** How the drawing of a part is made out: read, written back, refused. */
final class DraftingFormTest {
    private static final String FIRST = "- {letter: A, what: first issue, date: 2026-03-02, by: M.O.}";
    private static final String SECOND =
            "- {letter: B, what: seat 1 mm deeper, date: 2026-03-14, by: J.V., at: journal}";

    private static PartText pin() {
        return PartText.mm().outside("round: 30, length: 40, name: journal");
    }

    private static PartText issued(String... entries) {
        return pin().line("issues:").line("  " + String.join("\n  ", entries));
    }

    @Test
    void read_nothingSaid_isFirstAngleIssueA() {
        Part part = FaultsOf.sound(pin());

        assertThat(part.drafting()).isEqualTo(Drafting.USUAL);
        assertThat(part.issue()).isEqualTo("A");
    }

    @Test
    void read_issues_givesTheDrawingItsLastLetter() {
        Part part = FaultsOf.sound(issued(FIRST, SECOND));

        assertThat(part.issue()).isEqualTo("B");
        assertThat(part.drafting().issues())
                .containsExactly(
                        new DrawingIssue("A", "first issue", LocalDate.of(2026, 3, 2), "M.O.", Optional.empty()),
                        new DrawingIssue(
                                "B", "seat 1 mm deeper", LocalDate.of(2026, 3, 14), "J.V.", Optional.of("journal")));
    }

    @Test
    void write_issuesAndThirdAngle_readBackEqual() {
        Part part = FaultsOf.sound(issued(FIRST, SECOND).line("projection: Third angle"));

        assertThat(part.drafting().projection()).isEqualTo(Projection.THIRD_ANGLE);
        assertThat(PartFile.read(PartFile.write(part)))
                .isInstanceOfSatisfying(
                        PartReading.Read.class, read -> assertThat(read.part()).isEqualTo(part));
    }

    @Test
    void read_aTableThatEndsBeforeTheIssueOfTheDrawing_isRefused() {
        assertThat(FaultsOf.of(issued(FIRST).line("issue: C"))).containsExactly("issues[1].letter ISSUE_NOT_LAST");
    }

    @Test
    void read_aLetterTwiceAndAFeatureThatIsNotThere_areBothRefused() {
        String again = "- {letter: A, what: again, date: 2026-03-15, by: J.V., at: spigot}";

        assertThat(FaultsOf.of(issued(FIRST, again)))
                .containsExactly("issues[2].letter ISSUE_TWICE", "issues[2].at ISSUE_AT");
    }

    @Test
    void read_aDayThatIsNone_isRefusedAtItsPlace() {
        String february = "- {letter: A, what: first issue, date: 2026-02-30, by: M.O.}";

        assertThat(FaultsOf.of(issued(february))).containsExactly("issues[1].date UNREADABLE");
    }

    @Test
    void read_otherWords_areRefusedWithWhatWouldDo() {
        String entry = "- {letter: 3, what: first issue, date: 2 March, by: the whole of the night shift}";
        List<String> faults = FaultsOf.of(issued(entry).line("projection: second angle"));

        assertThat(faults)
                .containsExactlyInAnyOrder(
                        "projection UNREADABLE",
                        "issues[1].letter UNREADABLE",
                        "issues[1].date UNREADABLE",
                        "issues[1].by UNREADABLE");
    }
}
