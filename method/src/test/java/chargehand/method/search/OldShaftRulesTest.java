package chargehand.method.search;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.method.plan.Blank;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Method;
import chargehand.method.plan.Operation;
import chargehand.method.plan.SetUp;
import chargehand.part.End;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a turner insists on for an old shaft whose worn journals are turned to the next size. All common practice. */
class OldShaftRulesTest {
    private static final Method METHOD = DemoMethods.plan("capstan-shaft", 1);

    @Test
    void plan_oldShaft_isItsOwnStockAndNothingIsSawnFacedOrParted() {
        assertThat(METHOD.stock().blank()).isInstanceOf(Blank.OldPart.class);
        assertThat(DemoMethods.operations(METHOD))
                .extracting(Operation::cut)
                .noneMatch(Cut.SawOff.class::isInstance)
                .noneMatch(Cut.FaceEnd.class::isInstance)
                .noneMatch(Cut.PartOff.class::isInstance);
    }

    @Test
    void plan_journals_areTurnedBetweenItsOwnCentresInOneSetUp() {
        List<SetUp> turning = DemoMethods.setUpsWith(METHOD, Cut.TurnDiameter.class);
        assertThat(turning).singleElement().satisfies(setUp -> {
            assertThat(setUp.holding()).isInstanceOf(Holding.BetweenCentres.class);
            assertThat(setUp.instructions()).anySatisfy(say -> assertThat(say).contains("old centre holes"));
        });
    }

    @Test
    void plan_onlyTheJournals_areTurned() {
        assertThat(DemoMethods.operations(METHOD).map(Operation::cut))
                .filteredOn(Cut.TurnDiameter.class::isInstance)
                .extracting(Cut.TurnDiameter.class::cast)
                .extracting(cut -> cut.from().mm() + " to " + cut.to().mm())
                .containsExactlyInAnyOrder("90.0 to 210.0", "670.0 to 780.0");
    }

    /** π/4 × (74.62² × 120 + 85² × 460 + 74.41² × 110 + 60² × 95) + 55² × 90 mm³ at 7.85 kg a litre: 32.6 kg. */
    @Test
    void plan_heavyShaft_isNotLiftedByOne() {
        assertThat(METHOD.cautions()).anySatisfy(caution -> assertThat(caution).contains("33 kg", "second person"));
    }

    @Test
    void plan_betweenCentres_noTrialCutIsTakenOnWhatStays() {
        assertThat(METHOD.setUps().getFirst().instructions())
                .anySatisfy(say -> assertThat(say).contains("test bar"))
                .noneMatch(say -> say.contains("take a trial cut"));
    }

    /** The shoulder of the lower journal looks to the headstock where the dog is on the wheel seat. */
    @Test
    void plan_shoulderThatLooksToTheHeadstock_isTurnedUpToWithALeftHandKnife() {
        var driven = ((Holding.BetweenCentres) METHOD.setUps().getFirst().holding()).driven();
        assertThat(driven).isEqualTo(End.B);
        assertThat(DemoMethods.operations(METHOD))
                .filteredOn(operation -> operation.cut() instanceof Cut.TurnDiameter turn
                        && turn.from().mm() == 670)
                .singleElement()
                .satisfies(operation -> {
                    assertThat(operation.settings().tool()).isEqualTo("left-hand knife tool");
                    assertThat(operation.say()).contains("away from the headstock");
                });
    }

    /** A journal of less than 0.06 mm tolerance is read and passed; a radius is formed, never left sharp. */
    @Test
    void plan_journals_arePassedAndGivenTheirRadii() {
        assertThat(DemoMethods.operations(METHOD))
                .filteredOn(operation -> operation.cut() instanceof Cut.TurnDiameter)
                .allMatch(Operation::hold);
        assertThat(DemoMethods.operations(METHOD).map(Operation::cut))
                .filteredOn(Cut.FinishEdge.class::isInstance)
                .hasSize(2);
    }
}
