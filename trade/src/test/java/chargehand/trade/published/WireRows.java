package chargehand.trade.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.trade.PublishedRow;
import java.util.List;

/** Threads in worked examples: over wires, depths, tapping drills. */
final class WireRows {
    private static final int MILLIMETRE = 1;

    private WireRows() {}

    static Topic topic() {
        return Topic.of("threads.json")
                .asks("three_wire", WireRows::usStandard)
                .asks("three_wire_const", WireRows::factors)
                .asks("wire_factors", WireRows::sixtyDegrees)
                .asks(
                        "wire_limits",
                        row -> wires("1-" + row.text("tpi") + " UN")
                                .gives("wireMin.in", row, "min")
                                .gives("wireMax.in", row, "max")
                                .gives("bestWire.in", row, "best"))
                .asks("two_wire_gate", WireRows::twoWires)
                .asksEach("three_wire_metric", row -> best(row, row.text("thread"), "mm"))
                .asksEach(
                        "three_wire_whitworth",
                        row -> best(row, row.text("thread").replaceAll("BSW .*", "BSW"), "in"))
                .asksEach("bsp", WireRows::pipe)
                .asks(
                        "BA",
                        row -> Query.of("thread")
                                .with("thread", row.text("number") + " BA")
                                .gives("major.mm", row, "major")
                                .gives("pitch.mm", row, "pitch"))
                .asks("thread_depth", WireRows::depth)
                .asks(
                        "thread_percent",
                        row -> Query.of("tapping-drill")
                                .with("thread", "M" + row.text("D") + "x" + row.text("p"))
                                .with("drills", row.text("drill"))
                                .gives("engagement", row, "percent_of_1299p"))
                .asksEach("tapping", WireRows::tapping);
    }

    private static Query wires(String thread) {
        return Query.of("over-wires").with("thread", thread);
    }

    /** The worked example takes U.S. Standard form, whose effective diameter is the Unified one. */
    private static Query usStandard(PublishedRow row) {
        return wires(row.text("D") + "-" + row.text("tpi") + " UN")
                .with("wire", row.text("wire") + " in")
                .gives("over.in", row, "M");
    }

    /**
     * The printed formulas start from the major diameter: so much pitch is taken off it, so many wires put on. Two wires tell
     * the factor of the wire; a sharp V is as much deeper on diameter as its triangle is high.
     */
    private static Query factors(PublishedRow row) {
        boolean whitworth = row.text("form").equals("Whitworth");
        double pitch = whitworth ? 25.4 / 8 : MILLIMETRE;
        double factor = row.want("k_wire");
        double drop = whitworth ? 0.640327 * pitch : Math.sqrt(3) / 2 * pitch;
        return wires(whitworth ? "1 BSW" : "M20x1").holds(reply -> {
            double constant = reply.number("wireConstant.mm");
            double groove = factor * reply.number("wire.mm") - constant;
            assertThat((drop + groove) / pitch).isCloseTo(row.want("k_pitch"), row.within("k_pitch"));
        });
    }

    private static Query sixtyDegrees(PublishedRow row) {
        return wires("M20x1")
                .gives("bestWire.mm", row, "best_over_p")
                .holds(reply -> assertThat(
                                row.want("wire_factor") * reply.number("wire.mm") - reply.number("wireConstant.mm"))
                        .isCloseTo(row.want("pitch_factor"), row.within("pitch_factor")));
    }

    /** A reading over two wires, set by a plain standard: the same constant, the reading being standard plus difference. */
    private static Query twoWires(PublishedRow row) {
        double over = row.number("standard_d") + (row.number("Rw") - row.number("Rs")) + 2 * row.number("wire");
        return wires("M33x" + row.text("pitch"))
                .with("wire", row.text("wire") + " mm")
                .with("reading", over + " mm")
                .gives("effective.mm", row.want("E_mm"), row.within("E_mm"));
    }

    private static List<Query> best(PublishedRow row, String thread, String unit) {
        return List.of(
                wires(thread).gives("bestWire." + unit, row, "best_wire").gives("over." + unit, row, "M_best"),
                Query.of("thread").with("thread", thread).gives("effective." + unit, row, "pitch_dia"));
    }

    private static List<Query> pipe(PublishedRow row) {
        return List.of(
                wires(row.text("thread")).gives("bestWire.in", row, "best_wire"),
                Query.of("thread")
                        .with("thread", row.text("thread"))
                        .gives("major.in", row, "major")
                        .gives("effective.in", row, "pitch_dia")
                        .gives("minor.in", row, "minor"));
    }

    /** The rows give the pitch in inches of 12 and 13 threads, and that of 0 BA in millimetres. */
    private static Query depth(PublishedRow row) {
        return switch (row.text("form")) {
            case "UN external" ->
                Query.of("thread").with("thread", "1/2-13 UNC").gives("depth.in", row, "depth");
            case "BA" -> Query.of("thread").with("thread", "0 BA").gives("depth.mm", row, "depth");
            default -> Query.of("thread").with("thread", "1/2 BSW").gives("depth.in", row, "depth");
        };
    }

    private static List<Query> tapping(PublishedRow row) {
        return List.of(
                Query.of("tapping-drill")
                        .with("thread", row.text("thread"))
                        .gives("size.mm", row.want("tap_drill"), within(1e-9)),
                Query.of("thread").with("thread", row.text("thread")).gives("minorInternal.mm", row, "minor_basic"));
    }
}
