package chargehand.trade.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.trade.PublishedRow;
import chargehand.trade.thread.ScrewThread;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;

/** Tables of threads: sizes, limits, spanners; their drills are in {@link TappingRows}. */
final class ThreadRows {
    /** Columns that handbooks work out from figures already rounded: one unit of the last decimal. */
    private static final Offset<Double> CHAINED = within(0.00011);

    /** Handbooks round the Whitworth depth to four places and then take it off once or twice. */
    private static final Offset<Double> WHITWORTH_HABIT = within(0.00016);

    /** Basic metric sizes at their third decimal, and figures that the printed table made from those. */
    private static final Offset<Double> THOUSANDTH = within(0.00051);

    /** Hexagons are forged to limits; lists differ in which end they print. */
    private static final Offset<Double> HEXAGON = within(0.004);

    private ThreadRows() {}

    static Topic topic() {
        return Topic.named("threads in tables")
                .table(ScrewThread.class, "published-metric-coarse-fine.csv")
                .table(ScrewThread.class, "published-metric-tolerances.csv")
                .table(ScrewThread.class, "published-unc-unf.csv")
                .table(ScrewThread.class, "published-bsw.csv")
                .table(ScrewThread.class, "published-bsf.csv")
                .table(ScrewThread.class, "published-bsp.csv")
                .table(ScrewThread.class, "published-bspt.csv")
                .table(ScrewThread.class, "published-ba.csv")
                .table(ScrewThread.class, "published-trapezoidal.csv")
                .table(ScrewThread.class, "published-trapezoidal-limits.csv")
                .table(ScrewThread.class, "published-acme.csv")
                .table(ScrewThread.class, "published-square-thread.csv")
                .table(ScrewThread.class, "published-brass-cycle-other-old.csv")
                .asksEach("metric-coarse-fine", row -> TappingRows.with(metric(row), row, "tapping_drill_mm", ""))
                .asks("metric-tolerances", ThreadRows::limits)
                .asksEach("unc-unf", row -> TappingRows.with(unified(row), row, "tapping_drill_inch", ""))
                .asksEach("bsw", row -> TappingRows.with(whitworth(row, " BSW"), row, "tapping_drill_mm", " BSW"))
                .asksEach("bsf", row -> TappingRows.with(whitworth(row, " BSF"), row, "tapping_drill_mm", " BSF"))
                .asksEach("bsp", ThreadRows::pipe)
                .asksEach("bspt", row -> TappingRows.with(taperPipe(row), row, "tapping_drill_rp_mm", ""))
                .asksEach("ba", row -> TappingRows.with(association(row), row, "tapping_drill_mm", ""))
                .asks("trapezoidal", ThreadRows::trapezoidal)
                .asks("trapezoidal-limits", ThreadRows::trapezoidalLimits)
                .asks("acme", ThreadRows::acme)
                .asks("square-thread", ThreadRows::square)
                .asksEach("brass-cycle-other-old", row -> TappingRows.with(old(row), row, "tapping_drill_mm", ""));
    }

    private static Query thread(String designation) {
        return Query.of("thread").with("thread", designation);
    }

    private static Query metric(PublishedRow row) {
        return thread(row.text("size"))
                .gives("major.mm", row, "major_mm")
                .gives("pitch.mm", row, "pitch_mm")
                .gives("effective.mm", row, "pitch_dia_mm")
                .gives("minorInternal.mm", row, "minor_internal_mm")
                .gives("minor.mm", row, "minor_external_rounded_mm")
                .givesAny("spanner.mm", row, "hex_af_iso4014_mm")
                .holds(reply -> earlierSpanner(reply, row));
    }

    private static void earlierSpanner(Reply reply, PublishedRow row) {
        if (row.expects("hex_af_bs3692_mm") && row.expects("hex_af_iso4014_mm")) {
            String which = reply.has("spannerOlder") ? "spannerOlder.mm" : "spanner.mm";
            assertThat(reply.number(which)).isCloseTo(row.want("hex_af_bs3692_mm"), THOUSANDTH);
        }
    }

    private static Query limits(PublishedRow row) {
        return thread(row.text("size"))
                .with("fit", row.text("classes"))
                .gives("limits.external.major.max.mm", row, "ext_major_max_mm")
                .gives("limits.external.major.min.mm", row, "ext_major_min_mm")
                .gives("limits.external.effective.max.mm", row, "ext_pitch_max_mm")
                .gives("limits.external.effective.min.mm", row, "ext_pitch_min_mm")
                .gives("limits.external.minor.max.mm", row, "ext_minor_flat_max_mm")
                .gives("limits.internal.major.min.mm", row, "int_major_min_mm")
                .gives("limits.internal.effective.min.mm", row, "int_pitch_min_mm")
                .gives("limits.internal.effective.max.mm", row, "int_pitch_max_mm")
                .gives("limits.internal.minor.min.mm", row, "int_minor_min_mm")
                .gives("limits.internal.minor.max.mm", row, "int_minor_max_mm");
    }

    private static Query unified(PublishedRow row) {
        return thread(row.text("size"))
                .gives("pitch.in", row, "pitch_in")
                .gives("major.in", row, "major_in")
                .gives("effective.in", row, "pitch_dia_in")
                .gives("minorInternal.in", row, "minor_internal_in")
                .gives("minor.in", row.want("minor_external_unr_in"), CHAINED)
                .gives("effective.in", row, "formula_pitch_dia_in")
                .gives("minorInternal.in", row, "formula_minor_internal_in");
    }

    private static Query whitworth(PublishedRow row, String series) {
        Query query = thread(row.text("size") + series)
                .gives("tpi", row.want("tpi"), within(1e-9))
                .gives("pitch.in", row, "pitch_in")
                .gives("depth.in", row, "depth_in")
                .gives("major.in", row, "major_in")
                .gives("effective.in", row.want("effective_in"), WHITWORTH_HABIT)
                .gives("minor.in", row.want("minor_in"), WHITWORTH_HABIT)
                .gives("effective.in", row, "formula_effective_in")
                .gives("minor.in", row, "formula_minor_in");
        if (row.expects("af_bs1083_max_in")) {
            query.gives("spanner.in", row.want("af_bs1083_max_in"), HEXAGON);
        }
        return query.holds(reply -> {
            if (row.expects("af_old_whitworth_in")) {
                String which = reply.has("spannerOlder") ? "spannerOlder.in" : "spanner.in";
                assertThat(reply.number(which)).isCloseTo(row.want("af_old_whitworth_in"), HEXAGON);
            }
        });
    }

    private static List<Query> pipe(PublishedRow row) {
        Query sizes = thread(row.text("size"))
                .gives("tpi", row.want("tpi"), within(1e-9))
                .gives("pitch.mm", row, "pitch_mm")
                .gives("depth.mm", row, "depth_mm")
                .gives("major.mm", row, "major_mm")
                .gives("effective.mm", row, "pitch_dia_mm")
                .gives("minor.mm", row, "minor_mm");
        var queries = new ArrayList<>(TappingRows.with(sizes, row, "tapping_drill_mm", ""));
        queries.add(pipeLimits(row, "A")
                .gives("limits.internal.effective.max.mm", basic(row) + row.want("int_tol_pitch_mm"), THOUSANDTH));
        queries.add(pipeLimits(row, "B"));
        return queries;
    }

    private static Query pipeLimits(PublishedRow row, String grade) {
        return thread(row.text("size"))
                .with("fit", grade)
                .gives(
                        "limits.external.effective.min.mm",
                        basic(row) + row.want("ext_tol_" + grade + "_pitch_mm"),
                        THOUSANDTH)
                .gives("limits.external.major.min.mm", row.want("major_mm") + row.want("ext_tol_major_mm"), THOUSANDTH);
    }

    private static double basic(PublishedRow row) {
        return row.want("pitch_dia_mm");
    }

    private static Query taperPipe(PublishedRow row) {
        double tolerance =
                Double.parseDouble(row.wantText("gauge_length_tol_mm").replace("+/-", ""));
        return thread(row.text("size"))
                .gives("taper", 16, within(1e-9))
                .gives("tpi", row.want("tpi"), within(1e-9))
                .gives("major.mm", row, "gauge_dia_mm")
                .gives("effective.mm", row, "pitch_dia_at_gauge_mm")
                .gives("minor.mm", row, "minor_at_gauge_mm")
                .gives("gaugeLength.mm", row, "gauge_length_mm")
                .gives("gaugeTolerance.mm", tolerance, within(1e-9))
                .gives("usefulLength.mm", row, "useful_thread_min_mm")
                .gives("smallEnd.mm", row, "small_end_major_mm");
    }

    private static Query association(PublishedRow row) {
        Query query = thread(row.text("size"))
                .gives("angle.deg", row.want("angle_deg"), within(1e-9))
                .gives("pitch.mm", row, "pitch_mm")
                .gives("depth.mm", row, "depth_mm")
                .gives("major.mm", row, "major_mm")
                .gives("effective.mm", row, "effective_mm")
                .gives("minor.mm", row, "minor_mm")
                .gives("rootRadius.mm", row, "root_radius_mm")
                .gives("major.in", row, "major_in")
                .gives("minor.in", row, "minor_in");
        return row.expects("spanner_af_in") ? query.gives("spanner.in", row.want("spanner_af_in"), HEXAGON) : query;
    }

    private static Query trapezoidal(PublishedRow row) {
        return thread(row.text("size"))
                .gives("angle.deg", row.want("angle_deg"), within(1e-9))
                .gives("major.mm", row.want("major_mm"), THOUSANDTH)
                .gives("effective.mm", row, "pitch_dia_mm")
                .gives("minor.mm", row, "ext_minor_d3_mm")
                .gives("core.mm", row, "ext_minor_d3_mm")
                .gives("minorInternal.mm", row, "int_minor_D1_mm")
                .gives("majorInternal.mm", row, "int_major_D4_mm")
                .gives("majorInternal.mm", row.want("major_mm") + 2 * row.want("clearance_ac_mm"), THOUSANDTH);
    }

    private static Query trapezoidalLimits(PublishedRow row) {
        return thread(row.text("size"))
                .with("fit", "7e")
                .gives("limits.external.major.max.mm", row.want("major_max_mm"), THOUSANDTH)
                .gives("limits.external.major.min.mm", row.want("major_min_mm"), THOUSANDTH)
                .gives("limits.external.effective.max.mm", row.want("pitch_max_mm"), THOUSANDTH)
                .gives("limits.external.effective.min.mm", row.want("pitch_min_mm"), THOUSANDTH)
                .gives("limits.external.minor.max.mm", row.want("minor_max_mm"), THOUSANDTH)
                .gives("limits.external.minor.min.mm", row.want("minor_min_mm"), THOUSANDTH);
    }

    /** Where a maker prints the allowance of another size for an odd pitch, the row's note says so and the formula is held. */
    private static Query acme(PublishedRow row) {
        Query query = thread(row.text("size"))
                .with("fit", "2G")
                .gives("angle.deg", row.want("angle_deg"), within(1e-9))
                .gives("pitch.in", row, "pitch_in")
                .gives("depth.in", row, "total_height_in")
                .gives("major.in", row, "major_in")
                .gives("crestFlat.in", row, "crest_flat_basic_in")
                .gives("rootFlat.in", row.want("root_flat_in"), CHAINED)
                .gives("effective.in", row, "basic_pitch_dia_in")
                .gives("minor.in", row, "basic_minor_in")
                .gives("core.in", row, "ext_minor_max_in")
                .gives("minorInternal.in", row, "tap_minor_internal_min_in")
                .gives("limits.external.effective.max.in", row, "ext_pitch_2G_max_in");
        if (row.text("series").equals("standard series") && row.expects("ext_pitch_2G_max_printed_in")) {
            query.gives("limits.external.effective.max.in", row.want("ext_pitch_2G_max_printed_in"), CHAINED)
                    .gives("limits.external.effective.min.in", row.want("ext_pitch_2G_min_printed_in"), CHAINED)
                    .gives("limits.external.minor.min.in", row.want("ext_minor_2G_min_printed_in"), CHAINED);
        }
        return query;
    }

    private static Query square(PublishedRow row) {
        return thread(row.text("size") + "-" + row.text("tpi") + " square")
                .gives("pitch.in", row, "pitch_in")
                .gives("depth.in", row, "depth_in")
                .gives("major.in", row, "major_in")
                .gives("minor.in", row, "minor_in")
                .gives("effective.in", row, "mean_dia_in");
    }

    static String oldDesignation(PublishedRow row) {
        String size = row.text("size");
        String tpi = row.text("tpi");
        return switch (row.text("series")) {
            case "BSB" -> size + " BSB";
            case "BSC/CEI" -> size + "-" + tpi + " CEI";
            case "ME" -> size + "-" + tpi + " ME";
            case "BS conduit" -> size + " Conduit";
            default -> size + "-" + tpi + " Whit";
        };
    }

    private static Query old(PublishedRow row) {
        return thread(oldDesignation(row))
                .gives("angle.deg", row.want("angle_deg"), within(1e-9))
                .gives("pitch.in", row, "pitch_in")
                .gives("depth.in", row, "depth_in")
                .givesAny("effective.in", row, "effective_in")
                .givesAny("minor.in", row, "minor_in");
    }
}
