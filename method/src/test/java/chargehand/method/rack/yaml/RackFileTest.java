package chargehand.method.rack.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.Length;
import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.kit.yaml.Mutations;
import chargehand.method.rack.Piece;
import chargehand.method.rack.Shape;
import chargehand.part.yaml.tree.Fault;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class RackFileTest {
    private static final long SEED = 20260108;
    private static final int CASES = 500;
    private static final String RACK = """
            rack: test rack
            unit: in
            pieces:
              - name: A1
                place: top
                material: EN8
                sure: certified
                round: 1 1/4
                length: 3 ft
                condition: black
              - name: A2
                place: top
                material: EN8
                sure: taken for
                flat: {width: 50 mm, thickness: .25}
                length: 12
                count: 3
                condition: bright
                price: 2,5
                note: from the old crane
            """;

    private static List<Fault> faults(String text) {
        return switch (RackFile.read(text)) {
            case RackRead.Sound sound -> List.of();
            case RackRead.Refused(var faults) -> faults;
        };
    }

    @Test
    void read_soundFile_everyValue() {
        RackRead read = RackFile.read(RACK);
        assertThat(read).isInstanceOf(RackRead.Sound.class);
        List<Piece> pieces = ((RackRead.Sound) read).rack().pieces();
        assertThat(pieces.get(0).shape())
                .isInstanceOfSatisfying(
                        Shape.Round.class,
                        round -> assertThat(round.diameter().length()).isEqualTo(Length.inch(5, 4)));
        assertThat(pieces.get(0).length().length()).isEqualTo(Length.in(36));
        assertThat(pieces.get(0).count()).isEqualTo(1);
        assertThat(pieces.get(0).price()).isEmpty();
        assertThat(pieces.get(1).sure()).isEqualTo(Piece.Sureness.TAKEN_FOR);
        assertThat(pieces.get(1).says()).isEqualTo("EN8, 50 mm × .25 in flat, top");
        assertThat(pieces.get(1).price()).hasValue(2.5);
        assertThat(pieces.get(1).count()).isEqualTo(3);
        assertThat(pieces.get(1).note()).isEqualTo("from the old crane");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                // from | to | path | code | the sentence holds
                "round: 1 1/4 | roond: 1 1/4 | pieces[1].roond | KEY_UNKNOWN | Perhaps round is meant",
                "round: 1 1/4 | round: thick | pieces[1].round | UNREADABLE | 'thick' is not a length",
                "round: 1 1/4 | round: 0 | pieces[1].round | UNREADABLE | more than nought",
                "length: 3 ft | length: -3 ft | pieces[1].length | UNREADABLE | more than nought",
                "sure: certified | sure: quite | pieces[1].sure | UNREADABLE | certified, marked, taken for or unknown",
                "condition: black | condition: blue | pieces[1].condition | UNREADABLE | black, bright, cast or reclaimed",
                "name: A2 | name: a1 | pieces[2].name | NAME_TWICE | stands in line 4 already",
                "count: 3 | count: 0 | pieces[2].count | UNREADABLE | from 1 to 10000",
                "price: 2,5 | price: dear | pieces[2].price | UNREADABLE | 'dear'",
                "price: 2,5 | price: -2 | pieces[2].price | UNREADABLE | no price",
                "thickness: .25 | thickness: thin | pieces[2].flat.thickness | UNREADABLE | 'thin' is not a length",
                "unit: in | unit: ft | unit | UNREADABLE | write mm or in",
                "rack: test rack | shelf: test rack | ~~ | KEY_MISSING | 'rack' is missing",
            })
    void read_oneFault_placeAndSentence(String from, String to, String path, String code, String says) {
        assertThat(RACK).contains(from);
        List<Fault> faults = faults(RACK.replace(from, to));
        assertThat(faults).isNotEmpty();
        Fault fault = faults.getFirst();
        assertThat(fault.code().name()).as(fault.toString()).isEqualTo(code);
        assertThat(fault.say()).contains(says);
        assertThat(fault.path()).isEqualTo(path);
        assertThat(fault.line()).isEqualTo(lineOf(from));
    }

    /** The line in which the text that is changed stands. */
    private static int lineOf(String text) {
        return (int) RACK.substring(0, RACK.indexOf(text))
                        .chars()
                        .filter(c -> c == '\n')
                        .count()
                + 1;
    }

    @Test
    void read_twoShapesInOnePiece_refused() {
        List<Fault> faults = faults(RACK.replace("round: 1 1/4", "round: 1 1/4\n    hexagon: 1"));
        assertThat(faults).hasSize(1);
        assertThat(faults.getFirst().say()).contains("cannot both stand here");
    }

    @Test
    void read_emptyRack_sound() {
        assertThat(RackFile.read("rack: bare\nunit: mm\n")).isInstanceOf(RackRead.Sound.class);
    }

    @Test
    void read_mutatedFiles_soundOrRefusedWithAPlace() {
        Mutations mutations = new Mutations(SEED);
        int refused = 0;
        for (int i = 0; i < CASES; i++) {
            String text = mutations.of(DemoKit.rack());
            List<Fault> faults = faults(text);
            refused += faults.isEmpty() ? 0 : 1;
            assertThat(faults).as(text).allSatisfy(fault -> {
                assertThat(fault.line()).isPositive();
                assertThat(fault.say()).isNotBlank().endsWith(".");
            });
        }
        assertThat(refused).isBetween(CASES / 4, CASES - 1);
    }
}
