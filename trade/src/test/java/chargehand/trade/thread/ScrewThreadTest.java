package chargehand.trade.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chargehand.measure.Unreadable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ScrewThreadTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    M12                  | M12             | METRIC_COARSE
                    m 12 x 1.75          | M12             | METRIC_COARSE
                    M12x1.25             | M12x1.25        | METRIC_FINE
                    M12 × 1,25           | M12x1.25        | METRIC_FINE
                    M12*1.5 LH           | M12x1.5 LH      | METRIC_FINE
                    M16xPh3P1.5          | M16xPh3P1.5     | METRIC_FINE
                    M2.5                 | M2.5            | METRIC_COARSE
                    1/2-13 UNC           | 1/2-13 UNC      | UNC
                    1/2" UNC             | 1/2-13 UNC      | UNC
                    0.5-13 UNC           | 1/2-13 UNC      | UNC
                    1/4-20               | 1/4-20 UNC      | UNC
                    #10-32               | #10-32 UNF      | UNF
                    10-32 UNF            | #10-32 UNF      | UNF
                    No.10-24             | #10-24 UNC      | UNC
                    1-8 UNC              | 1-8 UNC         | UNC
                    2-56 UNC             | #2-56 UNC       | UNC
                    2-4 1/2 UNC          | 2-4.5 UNC       | UNC
                    1 1/4-7 UNC          | 1 1/4-7 UNC     | UNC
                    1-1/4-7 UNC          | 1 1/4-7 UNC     | UNC
                    1-14 UNS             | 1-14 UN         | UN
                    1/2-13 UN            | 1/2-13 UNC      | UNC
                    UNF 3/8-24           | 3/8-24 UNF      | UNF
                    1/2 BSW              | 1/2 BSW         | BSW
                    1/2 in. BSW          | 1/2 BSW         | BSW
                    ½ Whitworth          | 1/2 BSW         | BSW
                    1½ BSW               | 1 1/2 BSW       | BSW
                    1/2-12 BSW           | 1/2 BSW         | BSW
                    1/2 x 16 Whit        | 1/2-16 Whit     | WHITWORTH
                    .5-16 Whit           | 1/2-16 Whit     | WHITWORTH
                    BSB 3/8              | 3/8 BSB         | BRASS
                    1" - 5 TPI Acme      | 1-5 Acme        | ACME
                    3/8 in x 26 tpi cycle | 3/8-26 CEI     | CYCLE
                    M8 x 1.25 mm         | M8              | METRIC_COARSE
                    3/8 BSF left hand    | 3/8 BSF LH      | BSF
                    3/8 BSF L.H.         | 3/8 BSF LH      | BSF
                    G 3/8                | G 3/8           | BSP
                    G3/8 BSP             | G 3/8           | BSP
                    3/8 BSP              | G 3/8           | BSP
                    3/8-19 BSP           | G 3/8           | BSP
                    BSP 3/8              | G 3/8           | BSP
                    R 3/8                | R 3/8           | BSP_TAPER_OUTSIDE
                    3/8 BSPT             | R 3/8           | BSP_TAPER_OUTSIDE
                    3/8 BSP taper        | R 3/8           | BSP_TAPER_OUTSIDE
                    Rc3/8                | Rc 3/8          | BSP_TAPER_INSIDE
                    Rp 3/8               | Rp 3/8          | BSP_PARALLEL_INSIDE
                    2 BA                 | 2 BA            | BA
                    2BA                  | 2 BA            | BA
                    No. 2 BA             | 2 BA            | BA
                    Tr 30x6 LH           | Tr 30x6 LH      | TRAPEZOIDAL
                    Tr30x6               | Tr 30x6         | TRAPEZOIDAL
                    Tr 40x14 (P7)        | Tr 40x14 (P7)   | TRAPEZOIDAL
                    Tr40x14P7 LH         | Tr 40x14 (P7) LH | TRAPEZOIDAL
                    1/2-10 Acme          | 1/2-10 Acme     | ACME
                    1/2 Acme             | 1/2-10 Acme     | ACME
                    1-8 Acme, 2 start    | 1-8 Acme, 2 start | ACME
                    3/8 BSB              | 3/8 BSB         | BRASS
                    9/16-20 CEI          | 9/16-20 CEI     | CYCLE
                    1/4-40 ME            | 1/4-40 ME       | MODEL_ENGINEER
                    5/8 conduit          | 5/8 Conduit     | CONDUIT
                    1-4 square           | 1-4 Square      | SQUARE
                    """)
    void parse_everyNotation_givesOneDesignation(String written, String designation, ThreadSeries series) {
        ScrewThread thread = ScrewThread.parse(written);

        assertThat(thread.designation()).isEqualTo(designation);
        assertThat(thread.series()).isEqualTo(series);
        assertThat(ScrewThread.parse(thread.designation())).isEqualTo(thread);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    1/2-12 UNC    | is 1/2-13 UNC, not 12 threads to the inch
                    1/2 UNS       | could be any of 1/2-13 UNC, 1/2-20 UNF
                    4 UNC         | could be any of 4-4 UNC, #4-40 UNC
                    5/7 BSW       | no 5/7 is listed in British Standard Whitworth
                    3/4 CEI       | could be any of 3/4-26 CEI, 3/4-20 CEI
                    M15           | no coarse pitch
                    M12x20        | pitch lies between
                    M0            | M1 to M400
                    M5x4          | hardly any core
                    Tr 30x4.5     | no trapezoidal pitch of 4.5
                    Tr 40x10 (P7) | not a whole number of pitches
                    G 5/16        | there is no 5/16 in ISO 228-1
                    3/8-18 BSP    | has 19 threads to the inch, not 18
                    27 BA         | run from 0 BA to 16 BA
                    #10 BSW       | numbered sizes
                    banana        | does not name a thread
                    """)
    void parse_whatIsNoThread_saysWhatWouldDo(String written, String say) {
        assertThatThrownBy(() -> ScrewThread.parse(written))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining(say);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "1/0 BSW",
                "0/0-0 UNC",
                "M.",
                "Tr x",
                "#",
                "G",
                "1//2 BSW",
                "9999999999",
                "½½½",
                "-1-8 UNC"
            })
    void parse_nonsense_isRefusedPlainly(String written) {
        assertThatThrownBy(() -> ScrewThread.parse(written)).isInstanceOf(Unreadable.class);
    }
}
