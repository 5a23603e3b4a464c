package chargehand.method.holding;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.Length;
import chargehand.method.kit.Kit;
import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Blank;
import chargehand.method.plan.Holding;
import chargehand.method.task.Task;
import chargehand.method.task.Tasks;
import chargehand.method.work.Standing;
import chargehand.part.Body;
import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import chargehand.trade.material.Materials;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/** What the demo kit offers for work as it stands. All common practice. */
final class HoldingsTest {
    private static final Kit KIT = DemoKit.kit();
    private static final String FLANGE = """
            outside:
              - {round: 90, name: flange, length: 5}
              - {thread: M48x2, name: boss, length: 30}
            inside: [{bore: 20, name: bore}]
            """;

    /** The holdings of work of which so much is done. */
    private static List<Holding> holdings(String rest, Predicate<Task> done) {
        var read =
                (PartReading.Read) PartFile.read("part: Work\nunit: mm\nmaterial: EN8\ngeneral: ISO 2768-m\n" + rest);
        var body = (Body.Turned) read.part().body();
        var tasks = Tasks.of(body, false);
        var given = new BitSet();
        for (int i = 0; i < tasks.size(); i++) {
            given.set(i, done.test(tasks.get(i)));
        }
        Length most = body.largestDiameter().plus(Length.mm(4));
        var blank = new Blank.RoundBar(Length.mm(-1.5), body.length().plus(Length.mm(1.5)), most, false);
        Standing work = Standing.raw(tasks, new Standing.Raw(blank, Optional.empty(), false), given);
        return new Holdings(KIT, body, Materials.get("EN8"))
                .list(work).stream().map(Choice::holding).toList();
    }

    private static boolean isOutside(Task task) {
        return !(task instanceof Task.Inside) && !(task instanceof Task.CentreIn);
    }

    @Test
    void list_screwedBossOnAFlange_isClampedByTheFlangeOnTheFaceplate() {
        assertThat(holdings(FLANGE, HoldingsTest::isOutside))
                .filteredOn(Holding.OnFaceplate.class::isInstance)
                .extracting(Holding.OnFaceplate.class::cast)
                .anySatisfy(plate -> {
                    assertThat(plate.clamped()).isEqualTo(Length.mm(5));
                    assertThat(plate.within()).isEqualTo(Length.mm(48));
                    assertThat(plate.rim()).isFalse();
                });
    }

    /** Four jaws that are dialled do as well and take less time. */
    @Test
    void list_flangeThatJawsCanGrip_notOnTheFaceplateByItsLedge() {
        assertThat(holdings(FLANGE.replace("length: 5", "length: 12"), HoldingsTest::isOutside))
                .filteredOn(Holding.OnFaceplate.class::isInstance)
                .extracting(Holding.OnFaceplate.class::cast)
                .allMatch(Holding.OnFaceplate::rim);
    }

    @Test
    void list_endNotFacedYet_notOnTheFaceplate() {
        assertThat(holdings(FLANGE, task -> isOutside(task) && !(task instanceof Task.FaceOf)))
                .noneMatch(Holding.OnFaceplate.class::isInstance);
    }

    @Test
    void list_finishedThread_isNeverGripped() {
        assertThat(holdings(FLANGE, HoldingsTest::isOutside))
                .filteredOn(Holding.InChuck.class::isInstance)
                .extracting(Holding.InChuck.class::cast)
                .allSatisfy(chuck -> assertThat(chuck.grip().to()).isLessThanOrEqualTo(Length.mm(5)));
    }

    /** Teeth that three jaws cannot share: no self-centring chuck closes on them. */
    @Test
    void list_pinionOfSeventeenTeeth_inNoThreeJawByItsTeeth() {
        String pinion = """
                outside: [{teeth: 17, module: 3, pressure-angle: 20°, name: teeth, length: 30}]
                inside: [{bore: 20, name: bore}]
                """;
        assertThat(holdings(pinion, HoldingsTest::isOutside))
                .filteredOn(Holding.InChuck.class::isInstance)
                .extracting(Holding.InChuck.class::cast)
                .noneMatch(chuck -> chuck.jaws() == 3);
    }

    @Test
    void list_smallFinishedBore_jawsDoNotOpenInIt() {
        String sleeve = "outside: [{round: 100, length: 40}]\ninside: [{bore: %s, name: bore}]\n";
        assertThat(holdings(sleeve.formatted("20"), task -> !isOutside(task))).noneMatch(HoldingsTest::isOpening);
        assertThat(holdings(sleeve.formatted("30"), task -> !isOutside(task))).anyMatch(HoldingsTest::isOpening);
    }

    private static boolean isOpening(Holding holding) {
        return holding instanceof Holding.InChuck chuck && chuck.bearing() instanceof Holding.Bearing.Opening;
    }
}
