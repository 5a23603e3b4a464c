package chargehand.method.stock;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Method.PassedOver;
import chargehand.part.Part;
import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the demo rack offers for the demo parts. */
final class DemoStockTest {
    private static Candidates choose(String name, int count) {
        PartReading reading = PartFile.read(DemoKit.part(name));
        assertThat(reading).isInstanceOf(PartReading.Read.class);
        Part part = ((PartReading.Read) reading).part();
        return StockChooser.candidates(part, count, DemoKit.soundRack(), CuttingUp.with(DemoKit.kit()));
    }

    @ParameterizedTest
    @CsvSource({
        "union, 1, R1",
        "gland-stud, 24, A6",
        "bearing-bush, 1, R3",
        "ram, 1, B6",
        "roller-pin, 4, A11",
        "shim, 40, P3",
        "sluice-spindle, 1, B3",
        "metric-stud, 1, A8",
    })
    void candidates_demoPart_bestPiece(String part, int count, String best) {
        Candidates candidates = choose(part, count);
        assertThat(candidates.fit()).isNotEmpty();
        assertThat(candidates.fit().getFirst().piece().name()).isEqualTo(best);
        assertThat(candidates.passedOver()).hasSizeGreaterThan(20);
    }

    @Test
    void candidates_unionForSteam_brassAndUnknownPassedOver() {
        assertThat(choose("union", 1).passedOver())
                .filteredOn(
                        passed -> passed.piece().equals("C9") || passed.piece().equals("C7"))
                .extracting(PassedOver::why)
                .containsExactly(
                        "brass CZ121, 1 1/16 hexagon, rack C, bottom: it is brass CZ121, and gunmetal LG2 is asked for.",
                        "brass, unknown, 1 1/2 round, rack C, bottom: nobody knows its material, and for steam it must be"
                                + " known.");
    }

    @Test
    void candidates_unionBar_alsoOffered() {
        assertThat(choose("union", 1).fit())
                .extracting(each -> each.piece().name())
                .contains("C2", "C1");
    }
}
