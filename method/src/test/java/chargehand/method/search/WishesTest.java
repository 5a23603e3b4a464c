package chargehand.method.search;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.Length;
import chargehand.method.kit.Machine;
import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Method;
import chargehand.method.plan.Planned;
import chargehand.method.plan.SetUp;
import chargehand.method.replay.Replay;
import chargehand.method.wish.Names;
import chargehand.method.wish.Wish;
import chargehand.method.wish.WishText;
import chargehand.method.wish.Wishes;
import chargehand.part.Body;
import chargehand.part.Part;
import chargehand.part.Section;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What somebody asks of a method is done, whatever it costs in time; where it leaves nothing, it is said which. */
class WishesTest {
    private static final Planner PLANNER = new Planner(DemoKit.kit(), DemoKit.soundRack());

    private static Method plan(String name, int count, Wish... wishes) {
        return ((Planned.Ready) PLANNER.plan(DemoMethods.part(name), count, Wishes.of(wishes))).method();
    }

    private static Wish wish(Part part, String text) {
        var names = Names.of(DemoKit.kit(), DemoKit.soundRack(), part);
        return ((WishText.Read.Understood) new WishText(names).read(text)).wish();
    }

    @Test
    void plan_withoutTheMachineOfTheBest_isOnOthersAndNotQuicker() {
        Method best = plan("union", 2);
        for (SetUp setUp : best.setUps()) {
            if (setUp.machine().contains("lathe")) {
                Method other = plan("union", 2, new Wish.WithoutMachine(setUp.machine()));
                assertThat(other.setUps()).extracting(SetUp::machine).doesNotContain(setUp.machine());
                assertThat(other.time()).isGreaterThanOrEqualTo(best.time());
            }
        }
    }

    @Test
    void plan_withGripOnTheHexagon_holdsByItOnce() {
        Part part = DemoMethods.part("union");
        var hexagon = ((Body.Turned) part.body())
                .outside().stream()
                        .filter(Section.Polygon.class::isInstance)
                        .map(Section.Polygon.class::cast)
                        .findFirst()
                        .orElseThrow();
        Method method = plan("union", 1, new Wish.HeldBy(hexagon.name()));
        assertThat(method.setUps())
                .anySatisfy(setUp -> assertThat(setUp.holding())
                        .isInstanceOfSatisfying(
                                Holding.InChuck.class,
                                chuck -> assertThat(chuck.grip()
                                                .diameter()
                                                .isWithin(
                                                        Length.mm(0.2),
                                                        hexagon.flats().length()))
                                        .isTrue()));
    }

    @Test
    void plan_withoutPartingOff_sawsToLength() {
        Method method = plan("gland-stud", 24, new Wish.WithoutParting());
        assertThat(DemoMethods.setUpsWith(method, Cut.PartOff.class)).isEmpty();
        assertThat(DemoMethods.setUpsWith(method, Cut.SawOff.class)).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({"metric-stud, 2", "bearing-bush, 1"})
    void plan_withEveryOtherPieceOfStock_isFromIt(String name, int count) {
        Part part = DemoMethods.part(name);
        String best = plan(name, count).stock().piece();
        Planned other = PLANNER.plan(part, count, Wishes.of(new Wish.NotFromPiece(best)));
        if (other instanceof Planned.Ready ready) {
            assertThat(ready.method().stock().piece()).isNotEqualTo(best);
            Method again =
                    plan(name, count, new Wish.FromPiece(ready.method().stock().piece()));
            assertThat(again.stock().piece()).isEqualTo(ready.method().stock().piece());
        }
    }

    @Test
    void plan_oneEndBeforeTheOther_keepsThatOrder() {
        for (String first : List.of("A", "B")) {
            String then = first.equals("A") ? "B" : "A";
            Part part = DemoMethods.part("metric-stud");
            Method method = plan("metric-stud", 1, wish(part, "with end " + first + " before end " + then));
            assertThat(facing(method, first)).isLessThan(facing(method, then));
        }
    }

    private static int facing(Method method, String end) {
        return method.setUps().stream()
                .filter(setUp -> setUp.operations().stream()
                        .anyMatch(operation -> operation.cut() instanceof Cut.FaceEnd face
                                && face.end().name().equals(end)))
                .mapToInt(SetUp::number)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void plan_withoutTheSaw_isMadeAtTheEndOfTheBar() {
        Method method = plan("metric-stud", 1, new Wish.WithoutMachine("saw"));
        assertThat(DemoMethods.setUpsWith(method, Cut.SawOff.class)).isEmpty();
        assertThat(DemoMethods.setUpsWith(method, Cut.PartOff.class)).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({"union, 2", "bearing-bush, 1", "metric-stud, 2", "ram, 1", "shim, 3"})
    void plan_withoutEachMachineInTurn_replaysOrNamesIt(String name, int count) {
        Part part = DemoMethods.part(name);
        int ready = 0;
        for (Machine machine : DemoKit.kit().machines()) {
            switch (PLANNER.plan(part, count, Wishes.of(new Wish.WithoutMachine(machine.name())))) {
                case Planned.Ready found -> {
                    ready++;
                    assertThat(Replay.of(part, found.method(), DemoKit.kit()).faults())
                            .isEmpty();
                }
                case Planned.NotHere notHere ->
                    assertThat(notHere.reasons())
                            .extracting(Planned.Reason::code)
                            .containsOnly(Planned.Code.AS_ASKED);
            }
        }
        assertThat(ready).isPositive();
    }

    @Test
    void plan_wishThatLeavesNothing_isNamedAndTheHarmlessOneIsNot() {
        Part part = DemoMethods.part("union");
        var mill = DemoKit.kit().mills().getFirst().name();
        var wishes = Wishes.of(new Wish.WithoutMachine(mill), new Wish.NotFromPiece("A1"));
        assertThat(PLANNER.plan(part, 1, wishes))
                .isInstanceOfSatisfying(
                        Planned.NotHere.class,
                        notHere -> assertThat(notHere.reasons()).singleElement().satisfies(reason -> {
                            assertThat(reason.code()).isEqualTo(Planned.Code.AS_ASKED);
                            assertThat(reason.say()).contains("without " + mill);
                        }));
    }
}
