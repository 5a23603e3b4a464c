package chargehand.trade.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.trade.PublishedRow;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Indexing: plain, by angle, compound and differential; chords of bolt circles. */
final class DividingRows {
    private static final String THREE_PLATES = "15,16,17,18,19,20; 21,23,27,29,31,33; 37,39,41,43,47,49";
    private static final String TWO_SIDED_PLATE = "24,25,28,30,34,37,38,39,41,42,43; 46,47,49,51,53,54,57,58,59,62,66";
    private static final int DEGREES = 360;

    private DividingRows() {}

    static Topic topic() {
        return Topic.of("dividing.json")
                .asks("simple", DividingRows::plain)
                .asks("angular", DividingRows::angular)
                .asks("angular_approx", DividingRows::nearest)
                .asks("compound", DividingRows::compound)
                .asks("compound_fraction_table", DividingRows::fraction)
                .asks("differential", DividingRows::differential)
                .asksEach("differential_rule", DividingRows::rule)
                .asksEach("plate_set", DividingRows::plates)
                .asks("chord", row -> chord(row, "pcd_mm", "chord_mm"));
    }

    static Query chord(PublishedRow row, String circle, String figure) {
        return Query.of("divide")
                .with("divisions", row.given(row.has("n") ? "n" : "divisions"))
                .with("plates", THREE_PLATES)
                .with("diameter", row.text(circle) + " mm")
                .gives("chord.mm", row, figure);
    }

    private static List<List<Integer>> pairs(Object list) {
        return ((List<?>) list).stream().map(DividingRows::numbers).toList();
    }

    private static List<Integer> numbers(Object list) {
        return ((List<?>) list).stream().map(each -> (Integer) each).toList();
    }

    private static String plate(Collection<?> circles) {
        return circles.stream().map(String::valueOf).distinct().collect(Collectors.joining(","));
    }

    /** The circles that the row is about; where it says any, those that it prints. */
    private static String circles(PublishedRow row) {
        if (row.given("circles") instanceof List<?> list) {
            return plate(list);
        }
        String named = row.text("circles");
        if (named.startsWith("B&S")) {
            return THREE_PLATES;
        }
        return named.equals("any")
                ? plate(pairs(row.wanted("options_include")).stream()
                        .map(List::getLast)
                        .toList())
                : TWO_SIDED_PLATE;
    }

    private static Query head(PublishedRow row, String plates) {
        var query = Query.of("divide").with("worm", row.given("worm_ratio")).with("plates", plates);
        return row.has("divisions") ? query.with("divisions", row.given("divisions")) : query;
    }

    private static Query plain(PublishedRow row) {
        String[] fraction = row.wantText("fraction").split("/", -1);
        double part = fraction.length == 2
                ? Double.parseDouble(fraction[0]) / Double.parseDouble(fraction[1])
                : Double.parseDouble(fraction[0]);
        return head(row, circles(row))
                .gives("crank", row.want("whole_turns") + part, within(1e-9))
                .holds(reply -> {
                    assertThat(moves(reply)).containsAll(options(row));
                    assertThat(moves(reply).size() == options(row).size() || row.expects("options_include"))
                            .isTrue();
                });
    }

    /** Whole turns, holes and circle of every plain way that is exact, smallest circle first. */
    private static List<List<Integer>> moves(Reply reply) {
        return reply.list("ways").stream()
                .filter(way -> way.at("kind").equals("plain") && way.at("exact").equals(true))
                .map(way -> List.of(whole(way, "turns"), whole(way, "holes"), whole(way, "circle")))
                .toList();
    }

    private static int whole(Reply way, String figure) {
        return (int) way.number(figure);
    }

    private static List<List<Integer>> options(PublishedRow row) {
        Object printed = row.wanted(row.expects("options") ? "options" : "options_include");
        int turns = (int) row.want("whole_turns");
        return pairs(printed).stream()
                .map(move -> List.of(turns, move.getFirst(), move.getLast()))
                .toList();
    }

    private static Query angular(PublishedRow row) {
        String angle = row.text("angle_deg") + "°";
        if (row.expects("turns")) {
            return head(row, THREE_PLATES).with("angle", angle).gives("crank", row, "turns");
        }
        List<Integer> printed =
                List.of((int) row.want("whole_turns"), (int) row.want("holes"), (int) row.want("circle"));
        return head(row, row.text("circle"))
                .with("angle", angle)
                .holds(reply -> assertThat(moves(reply)).containsExactly(printed));
    }

    private static Query nearest(PublishedRow row) {
        return head(row, row.text("circle"))
                .with("angle", row.text("angle_min") + "'")
                .says("ways.0.holes", row.given("holes"))
                .holds(reply -> {
                    double error = reply.number("ways.0.error.deg") * 60;
                    assertThat(error).isCloseTo(row.want("error_min"), row.within("error_min"));
                    assertThat(row.number("angle_min") + error)
                            .isCloseTo(row.want("achieved_min"), row.within("achieved_min"));
                });
    }

    private static double turnOf(Reply way) {
        double turn = whole(way, "turns") + (double) whole(way, "holes") / whole(way, "circle");
        return turn + (double) whole(way, "plateHoles") / whole(way, "plateCircle");
    }

    private static Query compound(PublishedRow row) {
        List<Integer> first = numbers(row.given("move1"));
        List<Integer> second = numbers(row.given("move2"));
        double printed =
                (double) first.getFirst() / first.getLast() + row.number("sign") * second.getFirst() / second.getLast();
        assertThat(printed).isCloseTo(row.want("turns_per_move"), row.within("turns_per_move"));
        return head(row, plate(List.of(first.getLast(), second.getLast())))
                .gives("crank", row, "ideal_turns")
                .holds(reply -> assertThat(reply.list("ways")).anySatisfy(way -> {
                    assertThat(way.at("exact")).isEqualTo(row.wanted("exact"));
                    assertThat(List.of(whole(way, "holes"), whole(way, "circle")))
                            .isEqualTo(first);
                    assertThat(List.of(whole(way, "plateHoles"), whole(way, "plateCircle")))
                            .isEqualTo(second);
                }));
    }

    private static Query fraction(PublishedRow row) {
        List<Integer> circles =
                pairs(row.given("terms")).stream().map(term -> term.get(1)).toList();
        return Query.of("divide")
                .with("angle", row.number("target_turn") * DEGREES / 40 + "°")
                .with("plates", plate(circles))
                .gives("crank", row.number("target_turn"), within(1e-9))
                .holds(reply -> assertThat(reply.list("ways").getFirst())
                        .satisfies(way -> assertThat(
                                        way.has("plateCircle")
                                                ? turnOf(way)
                                                : whole(way, "turns")
                                                        + (double) whole(way, "holes") / whole(way, "circle"))
                                .isCloseTo(row.want("turn"), row.within("turn"))));
    }

    /**
     * With the printed circle and gears alone in the box. The row for 53 divisions (from memory) has one idler with two pairs
     * and the plate going with the crank; the rows for 99 and 139, of the same kind, have none, and so has the rule.
     */
    private static Query differential(PublishedRow row) {
        var gears = (Map<?, ?>) row.given("gears");
        int idlers = row.text("divisions").equals("53") ? 0 : (int) row.number("idlers");
        double ratio = row.want("required_ratio");
        return head(row, row.text("circle"))
                .with("gears", new ArrayList<>(gears.values()))
                .holds(reply -> assertThat(reply.list("ways")).anySatisfy(way -> {
                    assertThat(whole(way, "holes")).isEqualTo((int) row.number("index_holes"));
                    assertThat(way.number("plateRatio")).isCloseTo(ratio, within(1e-6));
                    assertThat(way.at("plate"))
                            .isEqualTo(
                                    row.wantText("plate_turns").startsWith("same")
                                            ? "with the crank"
                                            : "against the crank");
                    assertThat(whole(way, "idlers")).isEqualTo(idlers);
                    assertThat(divisionsMade(row, way)).isCloseTo(row.want("net_divisions"), within(1e-9));
                }));
    }

    /** N = (worm − r) / f, from the gears that are said: r is the spindle's side over the worm's, against the crank negative. */
    private static double divisionsMade(PublishedRow row, Reply way) {
        Reply gears = way.part("gears");
        double ratio = (double) whole(gears, "spindle") / whole(gears, "worm");
        if (gears.has("firstOnStud")) {
            ratio *= (double) whole(gears, "firstOnStud") / whole(gears, "secondOnStud");
        }
        double signed = way.at("plate").equals("with the crank") ? ratio : -ratio;
        return (row.number("worm_ratio") - signed) * whole(way, "circle") / whole(way, "holes");
    }

    private static List<Query> rule(PublishedRow row) {
        return List.of(rule(row, "against"), rule(row, "with"));
    }

    private static Query rule(PublishedRow row, String way) {
        String[] index = row.text("index").split("/", -1);
        return Query.of("divide")
                .with("worm", row.given("worm_ratio"))
                .with("divisions", row.wanted("divisions_if_plate_runs_" + way + "_crank"))
                .with("plates", index[1])
                .with("gears", row.given("gears_worm_spindle"))
                .says("ways.0.holes", Integer.valueOf(index[0]))
                .says("ways.0.plate", way + " the crank")
                .says(
                        "ways.0.gears.worm",
                        numbers(row.given("gears_worm_spindle")).getFirst());
    }

    /** Printed plates are what the sum is told: on each of them one hole of every circle is found. */
    private static List<Query> plates(PublishedRow row) {
        var queries = new ArrayList<Query>();
        for (String side : List.of("p1", "p2", "p3", "side1", "side2")) {
            if (row.expects(side)) {
                numbers(row.wanted(side)).forEach(circle -> queries.add(oneHole(circle, row.wanted(side))));
            }
        }
        if (row.expects("small_ratio")) {
            // The small crank is geared a hundred to one to the large: a turn of it is one hole of a circle of 100.
            queries.add(Query.of("divide")
                    .with("angle", row.wantText("deg_per_small_turn") + "°")
                    .with("plates", plate((List<?>) row.wanted("small")))
                    .gives("crank", 40 / row.want("small_ratio"), within(1e-9))
                    .holds(reply -> assertThat(moves(reply)).contains(List.of(0, 1, 100))));
        }
        return queries;
    }

    private static Query oneHole(int circle, Object plate) {
        return Query.of("divide")
                .with("divisions", 40 * circle)
                .with("plates", plate((List<?>) plate))
                .holds(reply -> assertThat(moves(reply)).contains(List.of(0, 1, circle)));
    }
}
