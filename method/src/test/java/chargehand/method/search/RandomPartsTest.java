package chargehand.method.search;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.method.plan.Planned;
import chargehand.method.plan.Planned.Reason;
import chargehand.part.Part;
import chargehand.part.testing.PartGenerator;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Any sound part is planned or refused with reasons; nothing is ever thrown. */
class RandomPartsTest {
    private static final int PARTS = 150;

    @Test
    void plan_randomSoundParts_isReadyOrSaysWhyNot() {
        var generator = new PartGenerator(20261125);
        int ready = 0;
        for (int i = 0; i < PARTS; i++) {
            Part part = generator.part();
            switch (DemoMethods.plan(part, 1 + i % 3)) {
                case Planned.Ready found -> {
                    assertThat(found.method().setUps()).isNotEmpty();
                    ready++;
                }
                case Planned.NotHere notHere ->
                    assertThat(notHere.reasons()).allSatisfy(reason -> {
                        assertThat(reason.say()).isNotBlank();
                        assertThat(reason.unlock()).isNotBlank();
                    });
            }
        }
        assertThat(ready).as("parts planned of %d", PARTS).isGreaterThan(PARTS / 6);
    }

    @Test
    void plan_partsWithFurtherFeatures_isRefusedByNameWhereOneIsNotPlanned() {
        var generator = new PartGenerator(7, PartGenerator.Range.ALL);
        int refused = 0;
        for (int i = 0; i < 40; i++) {
            Part part = generator.turned();
            List<Reason> reasons = Unplanned.reasons(part.body());
            if (!reasons.isEmpty()) {
                refused++;
                assertThat(DemoMethods.plan(part, 1)).isEqualTo(new Planned.NotHere(reasons));
            }
        }
        assertThat(refused).isGreaterThan(10);
    }
}
