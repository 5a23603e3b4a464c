package chargehand.trade.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Length;
import chargehand.measure.Pitch;
import chargehand.measure.Power;
import chargehand.measure.SpindleSpeed;
import chargehand.trade.cutting.CutSettings.Limit;
import chargehand.trade.material.Material;
import chargehand.trade.material.Materials;
import chargehand.trade.material.ToolMaterial;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What every cut keeps to, and how a machine's own steps and power bound it. */
class CutPlanTest {
    private static final Material STEEL = Materials.get("EN8");
    private static final List<SpindleSpeed> SPEEDS =
            Stream.of(40, 70, 120, 200, 350, 600).map(SpindleSpeed::rpm).toList();

    private final Random random = new Random(1150);

    private static Cut turn(double diameterMm) {
        return Cut.of(Operation.TURN, STEEL, ToolMaterial.HSS, Length.mm(diameterMm));
    }

    private static Cut.Machine machine(List<SpindleSpeed> speeds, Optional<Power> power) {
        return new Cut.Machine(speeds, List.of(), power);
    }

    @Test
    void speed_onTheMachine_isItsStepAtOrJustAboveTheIdeal() {
        for (int i = 0; i < 300; i++) {
            Cut cut = turn(8 + random.nextDouble() * 150).on(machine(SPEEDS, Optional.empty()));
            CutSettings.Spindle spindle = CutPlan.of(cut).spindle();

            assertThat(SPEEDS).contains(spindle.rpm());
            boolean slowest = spindle.rpm().equals(SPEEDS.getFirst());
            assertThat(slowest || spindle.rpm().rpm() <= 1.05 * spindle.ideal().rpm())
                    .isTrue();
            SPEEDS.stream()
                    .filter(step -> step.rpm() <= spindle.ideal().rpm())
                    .max(Comparator.naturalOrder())
                    .ifPresent(step -> assertThat(spindle.rpm()).isGreaterThanOrEqualTo(step));
        }
    }

    @Test
    void limit_workTooThinOrTooThick_isTheMachine() {
        assertThat(CutPlan.of(turn(4).on(machine(SPEEDS, Optional.empty()))).limit())
                .isEqualTo(Limit.FASTEST);
        assertThat(CutPlan.of(turn(400).on(machine(SPEEDS, Optional.empty()))).limit())
                .isEqualTo(Limit.SLOWEST);
        assertThat(CutPlan.of(turn(50)).limit()).isEqualTo(Limit.TOOL);
        assertThat(CutPlan.of(turn(50).withFinish(Length.mm(0.0016))).limit()).isEqualTo(Limit.FINISH);
    }

    @Test
    void power_ofWeakMotor_isNeverExceeded() {
        for (int i = 0; i < 200; i++) {
            double watts = 150 + random.nextDouble() * 1500;
            Cut cut = turn(20 + random.nextDouble() * 100)
                    .withDepth(Length.mm(0.5 + random.nextDouble() * 8))
                    .on(machine(List.of(), Optional.of(Power.watts(watts))));
            CutSettings settings = CutPlan.of(cut);

            assertThat(settings.load().orElseThrow().power().watts())
                    .isLessThanOrEqualTo(watts * Drive.EFFICIENCY + 0.01);
            double most =
                    settings.depths().stream().mapToDouble(Length::mm).max().orElseThrow();
            assertThat(settings.limit() == Limit.POWER || most <= 2 + 1e-6).isTrue();
        }
    }

    @Test
    void power_muchTooWeak_isRefusedWithWhatWouldDo() {
        Cut cut = turn(50).on(machine(List.of(), Optional.of(Power.watts(3))));

        assertThatThrownBy(() -> CutPlan.of(cut))
                .isInstanceOfSatisfying(
                        CannotCut.class, cannot -> assertThat(cannot.fact()).isEqualTo("power"))
                .hasMessageContaining("slower speed");
    }

    @Test
    void depths_ofEveryCut_addUpToTheWhole() {
        for (int i = 0; i < 300; i++) {
            Length depth = Length.mm(0.05 + random.nextDouble() * 9);
            Cut rough = turn(60).withDepth(depth);

            for (Cut cut : List.of(rough, rough.withFinish(Length.mm(0.0016)))) {
                double sum = CutPlan.of(cut).depths().stream()
                        .mapToDouble(Length::mm)
                        .sum();
                assertThat(sum).isCloseTo(depth.mm(), within(1e-4));
            }
        }
    }

    @Test
    void depths_ofFinishingCut_endWithALightOne() {
        List<Length> depths = CutPlan.of(turn(60).withDepth(Length.mm(4)).withFinish(Length.mm(0.0016)))
                .depths();

        assertThat(depths.getLast()).isEqualTo(Length.mm(0.25));
        assertThat(depths.getFirst()).isGreaterThan(Length.mm(1));
    }

    @Test
    void depths_ofThread_cutTheSameAreaEachPass() {
        CutSettings settings = CutPlan.of(
                Cut.of(Operation.THREAD, STEEL, ToolMaterial.HSS, Length.mm(20)).withPitch(Pitch.ofMm("2.5")));

        double reached = 0;
        double before = 0;
        double first = Math.pow(settings.depths().getFirst().mm(), 2);
        for (Length step : settings.depths()) {
            reached += step.mm();
            assertThat(reached * reached - before * before).isCloseTo(first, within(1e-4));
            before = reached;
        }
        assertThat(reached).isCloseTo(2.5 * 0.61343, within(1e-4));
        assertThat(settings.feed()).isEqualTo(Length.mm(2.5));
    }

    @Test
    void finish_finer_takesAFinerFeedAndMoreSpeed() {
        CutSettings coarse = CutPlan.of(turn(40).withFinish(Length.mm(0.0032)));
        CutSettings fine = CutPlan.of(turn(40).withFinish(Length.mm(0.0008)));
        CutSettings rough = CutPlan.of(turn(40).withDepth(Length.mm(3)));

        assertThat(fine.feed()).isLessThan(coarse.feed());
        assertThat(fine.roughness().orElseThrow()).isLessThanOrEqualTo(Length.mm(0.00081));
        assertThat(fine.spindle().rpm()).isGreaterThan(rough.spindle().rpm());
    }

    @Test
    void speed_ofDrill_doesNotGoByHowDeepTheHoleIs() {
        Cut drill = Cut.of(Operation.DRILL, STEEL, ToolMaterial.HSS, Length.mm(10));

        assertThat(CutPlan.of(drill.withDepth(Length.mm(60))).spindle())
                .isEqualTo(CutPlan.of(drill).spindle());
    }

    @Test
    void rpm_doubledDiameter_isHalved() {
        for (Operation operation : Operation.values()) {
            Cut small =
                    Cut.of(operation, STEEL, ToolMaterial.HSS, Length.mm(20)).withPitch(Pitch.ofMm("1.5"));
            Cut large =
                    Cut.of(operation, STEEL, ToolMaterial.HSS, Length.mm(40)).withPitch(Pitch.ofMm("1.5"));
            assertThat(CutPlan.of(small).spindle().rpm().rpm())
                    .isCloseTo(2 * CutPlan.of(large).spindle().rpm().rpm(), within(1e-9));
        }
    }

    @Test
    void everyMaterialAndOperation_hasSettings() {
        for (Material material : Materials.list()) {
            for (Operation operation : Operation.values()) {
                for (ToolMaterial tool : ToolMaterial.values()) {
                    CutSettings settings = CutPlan.of(Cut.of(operation, material, tool, Length.mm(25))
                            .withPitch(Pitch.ofMm("1.5"))
                            .withLength(Length.mm(50)));
                    assertThat(settings.load().isPresent())
                            .isEqualTo(material.kienzle().isPresent());
                    assertThat(settings.spindle().rpm().rpm()).isPositive();
                    assertThat(settings.time()).isPresent();
                }
            }
        }
    }

    @Test
    void mill_widerCut_thickensNoChipBeyondTheFeed() {
        for (double share = 0.05; share <= 1; share += 0.05) {
            Cut cut = Cut.of(Operation.MILL, STEEL, ToolMaterial.HSS, Length.mm(20))
                    .withMilling(4, Length.mm(20 * share));
            double force = CutPlan.of(cut).load().orElseThrow().force().newtons();
            assertThat(force).isPositive().isLessThan(20_000);
        }
        assertThatThrownBy(() -> CutPlan.of(Cut.of(Operation.MILL, STEEL, ToolMaterial.HSS, Length.mm(20))
                        .withMilling(4, Length.mm(21))))
                .hasMessageContaining("wider than the cutter");
    }

    @Test
    void cut_impossible_isRefused() {
        assertThatThrownBy(() -> CutPlan.of(turn(20).withDepth(Length.mm(10))))
                .hasMessageContaining("whole of the work");
        assertThatThrownBy(() -> CutPlan.of(turn(4000).withDepth(Length.mm(1500))))
                .hasMessageContaining("500 passes");
        assertThatThrownBy(() -> CutPlan.of(Cut.of(Operation.TAP, STEEL, ToolMaterial.HSS, Length.mm(10))))
                .hasMessageContaining("needs the pitch");
        assertThatThrownBy(() -> CutPlan.of(Cut.of(Operation.THREAD, STEEL, ToolMaterial.HSS, Length.mm(10))
                        .withPitch(Pitch.ofMm("2"))
                        .withDepth(Length.mm(4))))
                .hasMessageContaining("no thread is as deep");
    }
}
