package chargehand.part.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.part.testing.PartText;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is refused about slots across an end and about centre holes. */
final class EndFaultsTest {
    private static List<String> faults(String... features) {
        return FaultsOf.of(PartText.mm()
                .outside("round: 12, length: 30", "round: 20, length: 10")
                .onEnds(features));
    }

    @Test
    void slotAndCentreHole_inTheirEnds_stand() {
        assertThat(faults("slot: 2, end: A, depth: 3", "centre: B 2.5/8, end: B, stays: must"))
                .isEmpty();
    }

    @Test
    void slot_asWideAsItsEnd_isRefused() {
        assertThat(faults("slot: 12, end: A, depth: 3")).containsExactly("on-ends[1].slot SLOT_TOO_WIDE");
    }

    @Test
    void slot_throughThePart_isRefused() {
        assertThat(faults("slot: 2, end: A, depth: 40")).containsExactly("on-ends[1].depth SLOT_TOO_DEEP");
    }

    @Test
    void centreHole_namedByItsDrillAlone_isTheOneOfThatForm() {
        assertThat(faults("centre: B 2.5, end: B, stays: may", "centre: iso 6411 - A 2/4.25, end: A, stays: must not"))
                .isEmpty();
    }

    @Test
    void centreHole_ofNoStandardSize_isRefused() {
        assertThat(faults("centre: B 3/9, end: B, stays: may")).containsExactly("on-ends[1].centre UNREADABLE");
        assertThat(faults("centre: C 2.5, end: B, stays: may")).containsExactly("on-ends[1].centre UNREADABLE");
        assertThat(faults("centre: A, end: B, stays: may")).containsExactly("on-ends[1].centre UNREADABLE");
    }

    @Test
    void centreHole_ofWhichNobodySaysWhetherItStays_isRefused() {
        assertThat(faults("centre: B 2.5/8, end: B")).containsExactly("on-ends[1] KEY_MISSING");
    }

    @Test
    void centreHole_widerThanItsEnd_isRefused() {
        assertThat(faults("centre: B 4/12.5, end: A, stays: may")).containsExactly("on-ends[1].centre CENTRE_PLACE");
    }

    @Test
    void centreHole_whereABoreOpens_isRefused() {
        assertThat(FaultsOf.of(PartText.mm()
                        .outside("round: 20, length: 30")
                        .inside("drill: 5")
                        .onEnds("centre: A 2, end: A, stays: may")))
                .containsExactly("on-ends[1].end CENTRE_PLACE");
    }

    @Test
    void twoCentreHoles_inOneEnd_areRefused() {
        assertThat(faults("centre: A 2, end: B, stays: may", "centre: A 4, end: B, stays: must"))
                .containsExactly("on-ends[2].end CENTRE_PLACE");
    }
}
