package chargehand.method.search;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.Length;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Method;
import chargehand.method.plan.Operation;
import chargehand.method.plan.SetUp;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a turner insists on for thin washers, made to a thickness. All common practice. */
class PackerRulesTest {
    private static final Method METHOD = DemoMethods.plan("relief-packer", 6);

    /** The last holding: the washer is off its bar and its second face is cut. */
    private static final SetUp LAST = METHOD.setUps().getLast();

    @Test
    void plan_batchOfPackers_boreAndOutsideAreCutAtTheBarAndPartedOff() {
        List<SetUp> parting = DemoMethods.setUpsWith(METHOD, Cut.PartOff.class);
        assertThat(parting).hasSize(1);
        assertThat(DemoMethods.setUpsWith(METHOD, Cut.DrillAxial.class)).isEqualTo(parting);
        assertThat(DemoMethods.setUpsWith(METHOD, Cut.TurnDiameter.class)).isEqualTo(parting);
    }

    @Test
    void plan_secondFace_isCutInAStepOfSoftJaws() {
        assertThat(LAST.holding()).isInstanceOfSatisfying(Holding.InChuck.class, chuck -> {
            assertThat(chuck.bearing()).isInstanceOf(Holding.Bearing.SoftJaws.class);
            assertThat(chuck.grip().length())
                    .isGreaterThanOrEqualTo(Length.mm(1))
                    .isLessThan(Length.mm(2));
        });
        assertThat(LAST.instructions()).anySatisfy(say -> assertThat(say).contains("step"));
    }

    @Test
    void plan_thinDiscInAStep_isFacedAndChamferedAndNoMore() {
        assertThat(LAST.operations())
                .extracting(Operation::cut)
                .allSatisfy(cut ->
                        assertThat(cut).isInstanceOfAny(Cut.FaceEnd.class, Cut.FinishEdge.class, Cut.Deburr.class));
    }

    /** The drawing: 2 ±0.01. */
    @Test
    void plan_thickness_isReadByMicrometerAndPassedBeforeThePackerComesOut() {
        Operation face = LAST.operations().getFirst();
        assertThat(face.hold()).isTrue();
        assertThat(face.say()).contains("saddle locked");
        assertThat(face.readings()).singleElement().satisfies(reading -> {
            assertThat(reading.gauge()).contains("micrometer");
            assertThat(reading.limits().least()).isEqualTo(Length.mm(1.99));
            assertThat(reading.limits().most()).isEqualTo(Length.mm(2.01));
        });
    }
}
