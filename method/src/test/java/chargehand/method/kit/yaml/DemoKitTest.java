package chargehand.method.kit.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.measure.Pitch;
import chargehand.method.kit.Chuck;
import chargehand.method.kit.Gauge;
import chargehand.method.kit.Kit;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.LatheTool;
import chargehand.method.kit.Machine;
import chargehand.method.kit.Mill;
import chargehand.method.kit.MillCutter;
import chargehand.method.kit.Slides;
import chargehand.method.kit.Tooling;
import org.junit.jupiter.api.Test;

final class DemoKitTest {
    private static final Kit KIT = DemoKit.kit();

    private static Lathe lathe(String name) {
        return (Lathe) KIT.find(name).orElseThrow();
    }

    @Test
    void read_demoFiles_sixMachines() {
        assertThat(DemoKit.files()).hasSize(9);
        assertThat(KIT.machines())
                .extracting(Machine::name)
                .containsExactly("bench", "large lathe", "mill", "radial drill", "saw", "small lathe");
        assertThat(KIT.lathes()).hasSize(2);
        assertThat(KIT.mills()).hasSize(1);
        assertThat(KIT.drills()).hasSize(1);
        assertThat(KIT.saws()).hasSize(1);
        assertThat(KIT.benches()).hasSize(1);
    }

    @Test
    void read_smallLathe_imperialWithoutGearbox() {
        Lathe lathe = lathe("small lathe");
        assertThat(lathe.unit()).isEqualTo(LengthUnit.INCH);
        assertThat(lathe.screwCutting().leadscrew()).isEqualTo(Pitch.ofTpi(8));
        assertThat(lathe.screwCutting().wheels()).hasSize(11).doesNotContain(38, 127);
        assertThat(lathe.screwCutting().gearbox()).isEmpty();
        assertThat(lathe.room().spindleBore()).isEqualTo(Length.inch(17, 16));
        assertThat(lathe.speeds().plate()).hasSize(7);
        assertThat(lathe.feeds().along().plate()).hasSize(4);
        assertThat(lathe.feeds().across().isByHand()).isTrue();
        assertThat(lathe.leastOffDiameter()).isEqualTo(Length.thou(2));
        assertThat(lathe.holders().chucks()).extracting(Chuck::isIndependent).containsExactly(false, true);
        assertThat(lathe.holders().collets()).hasSize(1);
        assertThat(lathe.holders().travellingSteady()).isEmpty();
    }

    @Test
    void read_largeLathe_metricWithGearbox() {
        Lathe lathe = lathe("large lathe");
        assertThat(lathe.unit()).isEqualTo(LengthUnit.MILLIMETRE);
        assertThat(lathe.screwCutting().gearbox()).hasSize(13);
        assertThat(lathe.screwCutting().wheels()).hasSize(13).contains(127);
        assertThat(lathe.slides().crossReads()).isEqualTo(Slides.CrossReads.DIAMETER);
        assertThat(lathe.leastOffDiameter()).isEqualTo(Length.mm(0.05));
        assertThat(lathe.holders().travellingSteady()).isPresent();
    }

    @Test
    void read_mill_dividingHeadOfFortyWithThreePlates() {
        Mill mill = KIT.mills().getFirst();
        assertThat(mill.dividingHead()).hasValueSatisfying(head -> {
            assertThat(head.worm()).isEqualTo(40);
            assertThat(head.plates())
                    .hasSize(3)
                    .allSatisfy(plate -> assertThat(plate.circles()).hasSize(6));
            assertThat(head.gears()).hasSize(12);
            assertThat(head.tailCentre()).isTrue();
        });
        assertThat(mill.vices()).hasSize(1);
    }

    @Test
    void read_tooling_countsOfEach() {
        Tooling tooling = KIT.tooling();
        assertThat(tooling.latheTools()).hasSize(21);
        assertThat(tooling.latheTools(LatheTool.Parting.class)).hasSize(2);
        assertThat(tooling.latheTools(LatheTool.ScrewCutter.class)).hasSize(5);
        // 61 fractions to 1 in, 8 to 1 1/2 in, 60 numbers, 26 letters, 121 to 13 mm, 26 to 26 mm
        assertThat(tooling.holeTools().drills()).hasSize(61 + 8 + 60 + 26 + 121 + 26);
        assertThat(tooling.holeTools().centreDrills()).hasSize(5);
        assertThat(tooling.holeTools().reamers()).hasSize(16);
        assertThat(tooling.holeTools().taps()).hasSize(22);
        assertThat(tooling.dies()).hasSize(21);
        assertThat(tooling.millCutters()).hasSize(14);
        assertThat(tooling.millCutters(MillCutter.SlotDrill.class)).hasSize(5);
        assertThat(tooling.mandrels()).hasSize(5);
        assertThat(tooling.gauges()).hasSize(25);
        assertThat(tooling.gauges(Gauge.Micrometer.class)).hasSize(10);
        assertThat(tooling.deburring()).hasSize(3);
    }

    @Test
    void read_tooling_diesOfTheDemoJobs() {
        Tooling tooling = KIT.tooling();
        assertThat(tooling.findDie("5/8 BSW")).isPresent();
        assertThat(tooling.findDie("5/8 BSF")).isPresent();
        assertThat(tooling.findDie("G 1/2")).isPresent();
        assertThat(tooling.findDie("G 3/8")).isPresent();
        assertThat(tooling.findDie("M20")).isPresent();
        assertThat(tooling.findDie("M24")).isEmpty();
        assertThat(tooling.findDie("3/4 BSW"))
                .hasValueSatisfying(die -> assertThat(die.kind()).isEqualTo(Tooling.DieKind.SOLID));
        assertThat(tooling.holeTools().findTap("M20"))
                .hasValueSatisfying(tap -> assertThat(tap.bottoming()).isFalse());
        assertThat(tooling.holeTools().findTap("G 1/8")).isPresent();
    }

    @Test
    void drillNotAbove_betweenDrills_theSmaller() {
        assertThat(KIT.tooling().holeTools().drillNotAbove(Length.mm(10.25)))
                .hasValueSatisfying(drill -> assertThat(drill.diameter()).isEqualTo(Length.mm(10.2)));
    }
}
