package chargehand.trade.bolt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import chargehand.trade.Ask;
import chargehand.trade.PublishedRow;
import chargehand.trade.sum.Figure;
import chargehand.trade.thread.ScrewThread;
import chargehand.trade.thread.ThreadLimits;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class BoltSumTest {
    private static final String ROWS = "strength.json";

    /** The rows start from the tensile area as printed, to three figures. */
    private static final Percentage AREA_OF_THREE_FIGURES = withinPercentage(0.3);

    static List<PublishedRow> areas() {
        return PublishedRow.of(ROWS, "stress_area");
    }

    static List<PublishedRow> breaking() {
        return PublishedRow.of(ROWS, "min_uts_load");
    }

    static List<PublishedRow> proofs() {
        return PublishedRow.of(ROWS, "proof_load");
    }

    static List<PublishedRow> torques() {
        return PublishedRow.of(ROWS, "preload_75_proof");
    }

    static List<PublishedRow> engagements() {
        return PublishedRow.of(ROWS, "thread_engagement");
    }

    private static Ask bolt(PublishedRow row) {
        return Ask.of("bolt", "thread", row.text("thread"), "grade", row.text("cls"));
    }

    @ParameterizedTest
    @MethodSource("areas")
    void area_ofMetricThread_isThatOfTheStandard(PublishedRow row) {
        assertThat(new BoltStrength(ScrewThread.parse(row.text("thread"))).tensileAreaMm2())
                .isCloseTo(row.want("As_mm2"), row.within("As_mm2"));
    }

    @ParameterizedTest
    @MethodSource("breaking")
    void breaking_ofGrade_isThatOfTheStandard(PublishedRow row) {
        assertThat(bolt(row).newtons("breaking")).isCloseTo(row.want("F_N"), row.within("F_N"));
    }

    @ParameterizedTest
    @MethodSource("proofs")
    void capacity_ofGrade_isTheProofLoadOfTheStandard(PublishedRow row) {
        assertThat(bolt(row).newtons("capacity")).isCloseTo(row.want("F_N"), row.within("F_N"));
    }

    @ParameterizedTest
    @MethodSource("torques")
    void torque_ofThreeQuartersOfProof_isAsReckoned(PublishedRow row) {
        Ask ask = bolt(row);

        assertThat(ask.newtons("preload")).isCloseTo(row.want("F_N"), AREA_OF_THREE_FIGURES);
        assertThat(ask.newtonMetres("torque")).isCloseTo(row.want("T_Nm_K02"), AREA_OF_THREE_FIGURES);
    }

    /** FED-STD-H28 with the limits of class 2A and 2B, as the rows state them. */
    @ParameterizedTest
    @MethodSource("engagements")
    void engagement_ofUnifiedThread_isThatOfTheStandard(PublishedRow row) {
        Ask ask = Ask.of("bolt", "thread", row.text("thread"), "grade", "8.8");

        assertThat(((Figure.OfArea) ask.figure("tensileArea")).area().squareInches())
                .isCloseTo(row.number("At_in2"), within(5e-5));
        assertThat(ask.in("engagement")).isCloseTo(row.want("Le_in"), withinPercentage(0.5));
    }

    @Test
    void engagement_inWeakerNut_isDeeper() {
        Ask steel = Ask.of("bolt", "thread", "M12", "grade", "8.8");
        Ask iron = Ask.of("bolt", "thread", "M12", "grade", "8.8", "nutMaterial", "cast iron");
        Ask soft = Ask.of("bolt", "thread", "M12", "grade", "8.8", "nutMaterial", "LG2");

        assertThat(iron.length("engagement")).isGreaterThan(steel.length("engagement"));
        assertThat(soft.length("engagement")).isGreaterThan(iron.length("engagement"));
    }

    /** A square thread half a pitch wide, by hand: Le = 2 As / (π D1 / 2), no flank to widen it. */
    @Test
    void engagement_ofSquareThread_isByHand() {
        ScrewThread square = ScrewThread.parse("1-5 square");
        double area = new BoltStrength(square).tensileAreaMm2();

        assertThat(Ask.of("bolt", "thread", "1-5 square", "grade", "8.8").mm("engagement"))
                .isCloseTo(4 * area / (Math.PI * square.minorInternal().mm()), within(1e-5));
    }

    /** As deep as practice has it, half to once the diameter in a nut of the same strength; and a nut's own height is 0.8. */
    @ParameterizedTest
    @CsvSource({"1/2 BSW", "1/4 BSF", "2 BA", "G 3/8", "Tr 30x6", "3/4-6 Acme", "M12"})
    void engagement_ofEveryForm_isAboutHalfTheDiameterAndMore(String thread) {
        Ask ask = Ask.of("bolt", "thread", thread, "grade", "8.8");

        assertThat(ask.mm("engagement") / ScrewThread.parse(thread).major().mm())
                .isBetween(0.4, 1.0);
        assertThat(ask.cautions().stream().anyMatch(say -> say.contains("printed for 60°")))
                .isEqualTo(!thread.startsWith("M"));
    }

    /** The two shear areas against the thread's outline cut into slices: the width of metal at a diameter. */
    @ParameterizedTest
    @CsvSource({"1/2 BSW, 55", "2 BA, 47.5", "Tr 30x6, 30"})
    void shearArea_ofOtherFlanks_isTheWidthOfTheThreadThere(String designation, double degrees) {
        ScrewThread thread = ScrewThread.parse(designation);
        double pitch = thread.pitch().inMm();
        double bore = ThreadLimits.find(thread)
                .orElseThrow()
                .internal()
                .orElseThrow()
                .minor()
                .most()
                .orElseThrow()
                .mm();
        double effective = ThreadLimits.find(thread)
                .orElseThrow()
                .external()
                .orElseThrow()
                .effective()
                .least()
                .orElseThrow()
                .mm();
        // Where the flanks stand half a pitch apart, and from there out by the tangent on either side.
        double wider = (effective - bore) / 2 * Math.tan(Math.toRadians(degrees / 2)) * 2;

        assertThat(new BoltStrength(thread).boltShearAreaMm2())
                .isCloseTo(Math.PI * bore * (pitch / 2 + wider) / pitch, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"1/2 BSW", "1/4 BSF", "2 BA", "M10", "3/8-16 UNC"})
    void bolt_ofEverySeries_bearsLessThanItsMajorDiameter(String thread) {
        var strength = new BoltStrength(ScrewThread.parse(thread));
        double full = Math.PI / 4 * Math.pow(ScrewThread.parse(thread).major().mm(), 2);

        assertThat(strength.tensileAreaMm2() / full).isBetween(0.6, 0.9);
    }

    @Test
    void bolt_load_isJudgedByTheProofLoad() {
        Ask ask = Ask.of("bolt", "thread", "M12", "grade", "8.8", "load", "100 kN");

        assertThat(ask.number("factor")).isCloseTo(ask.newtons("capacity") / 100_000, within(1e-9));
        assertThat(ask.cautions()).anyMatch(say -> say.contains("more than the bolt bears"));
    }

    @Test
    void bolt_wronglyAsked_isRefusedBesideItsField() {
        Ask.of("bolt", "thread", "M12").isRefusedAt("grade", "grade or the material");
        Ask.of("bolt", "thread", "M12", "grade", "cheese").isRefusedAt("grade", "8.8");
        Ask.of("bolt", "thread", "M12", "grade", "8.8", "preload", "150").isRefusedAt("preload", "100 %");
        Ask.of("bolt", "thread", "rope", "grade", "8.8").isRefusedAt("thread", "");
    }

    @Test
    void stripping_twiceTheThread_takesTwiceThePull() {
        Ask once = Ask.of("bolt", "thread", "M10", "grade", "8.8", "engaged", "6 mm");
        Ask twice = Ask.of("bolt", "thread", "M10", "grade", "8.8", "engaged", "12 mm");
        Ask soft = Ask.of("bolt", "thread", "M10", "grade", "8.8", "nutMaterial", "LG2", "engaged", "12 mm");

        assertThat(twice.newtons("strippingLoad")).isCloseTo(2 * once.newtons("strippingLoad"), within(1e-6));
        assertThat(soft.newtons("strippingLoad")).isLessThan(twice.newtons("strippingLoad"));
        assertThat(once.has("engagement")).isTrue();
        assertThat(soft.cautions()).anyMatch(say -> say.contains("strips before"));
        assertThat(Ask.of("bolt", "thread", "M10", "grade", "8.8", "engaged", "20 mm")
                        .cautions())
                .noneMatch(say -> say.contains("strips before"));
        Ask.of("bolt", "thread", "M10", "grade", "8.8", "engaged", "0 mm").isRefusedAt("engaged", "more than nothing");
    }
}
