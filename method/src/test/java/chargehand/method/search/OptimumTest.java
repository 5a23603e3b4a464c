package chargehand.method.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.method.aim.Aim;
import chargehand.method.kit.Kit;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.Machine;
import chargehand.method.kit.Saw;
import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Planned;
import chargehand.method.rack.Rack;
import chargehand.method.rack.yaml.RackFile;
import chargehand.method.rack.yaml.RackRead;
import chargehand.method.search.TurnedPlanner.Begun;
import chargehand.method.stock.Candidate;
import chargehand.method.stock.Candidates;
import chargehand.method.stock.CuttingUp;
import chargehand.method.stock.StockChooser;
import chargehand.method.wish.Wishes;
import chargehand.part.Body;
import chargehand.part.Part;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The search beside a second method, brute force: on small parts both come to the same least time. */
class OptimumTest {
    private static final int MOST_SET_UPS = 4;
    private static final double SAME_SECONDS = 1e-6;

    /** One lathe and the saw. */
    private static final Kit KIT = new Kit(
            DemoKit.kit().machines().stream()
                    .filter(machine -> machine instanceof Saw || isSmallLathe(machine))
                    .toList(),
            DemoKit.kit().tooling());

    private static final Rack RACK = rack();

    private static boolean isSmallLathe(Machine machine) {
        return machine instanceof Lathe && machine.name().equals("small lathe");
    }

    private static Rack rack() {
        return ((RackRead.Sound) RackFile.read("""
                rack: two pieces
                unit: mm
                pieces:
                  - {name: Z1, place: rack, material: mild steel EN3, sure: marked, round: 16, length: 1 m, condition: bright, price: 2}
                  - {name: Z2, place: rack, material: mild steel EN3, sure: marked, round: 20, length: 60, condition: black, price: 2}
                """)).rack();
    }

    private static Part part(String features) {
        return DemoMethods.read("""
                part: Small piece
                material: EN3
                unit: mm
                general: ISO 2768-m
                """ + features);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "outside: [{round: 12, length: 30}]\n",
                "outside: [{round: 8, length: 10}, {round: 12, length: 15}]\n",
                "outside: [{round: 12, length: 15}, {round: 8, length: 12}]\n",
                "outside: [{round: 8, length: 10}, {round: 14, length: 6}, {round: 10, length: 12}]\n",
                "outside: [{round: 14, length: 18}]\ninside: [{drill: 6}]\n",
                "outside: [{round: 10, length: 20}, {round: 14, length: 8}]\ninside: [{drill: 5, from: A, depth: 12}]\n",
                "outside: [{thread: M10, length: 12}, {round: 14, length: 10}]\n",
                "outside: [{round: 6, length: 40}]\n",
                """
                outside: [{round: 8, name: neck, length: 12}, {round: 12, name: head, length: 10}]
                ties: [{run-out: 0.03, of: neck, to: head}]
                """
            })
    void plan_smallPart_isAsQuickAsTheQuickestOfEveryWay(String features) {
        Part part = part(features);
        for (int count : List.of(1, 10)) {
            var ready = (Planned.Ready) new Planner(KIT, RACK).plan(part, count);
            assertThat(ready.bound().counted().seconds())
                    .as("%s %d off", features, count)
                    .isCloseTo(everyWay(Aim.at(part), count), within(SAME_SECONDS));
        }
    }

    private static double everyWay(Part part, int count) {
        var body = (Body.Turned) part.body();
        Candidates candidates = StockChooser.candidates(part, count, RACK, CuttingUp.with(KIT));
        var planner = new TurnedPlanner(KIT, part, body, new Bidden(Wishes.NONE, KIT));
        double least = Double.MAX_VALUE;
        for (int place = 0; place < candidates.fit().size(); place++) {
            Candidate candidate = candidates.fit().get(place);
            for (Begun begun : planner.begun(new FromStock(part, candidate, List.of()), count)) {
                var every = new EveryWay(KIT, part, body, begun, MOST_SET_UPS);
                double seconds = begun.seconds() + place * TurnedPlanner.SECONDS_PER_PLACE + every.seconds(begun);
                least = Math.min(least, seconds);
            }
        }
        return least;
    }
}
