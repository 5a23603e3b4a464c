package chargehand.trade.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.trade.PublishedRow;
import chargehand.trade.material.Materials;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Published speeds, feeds and depths, which are bands of starting values. */
final class SpeedRows {
    /** Published bands differ from one another by as much as this. */
    private static final double SLACK = 0.4;

    /** One college's sheet, its column heads partly lost, stands further from the others; it gives one feed to each material. */
    private static final double SHEET_SLACK = 0.5;

    private static final double MM_PER_INCH = 25.4;
    private static final double METRES_PER_FOOT = 0.3048;
    private static final String ROUGH_DEPTH = "2 mm";

    /** What the rows call a material, and the material of ours that it covers. */
    private static final Map<String, String> OURS = Map.ofEntries(
            Map.entry("medium carbon 1045 (~EN8)", "EN8"),
            Map.entry("stainless 304/316", "304"),
            Map.entry("tool steel O1/A2", "O1"),
            Map.entry("grey cast iron", "cast iron"),
            Map.entry("bronze", "LG2"),
            Map.entry("free cutting EN1A", "EN1A"),
            Map.entry("EN8 normalised", "EN8"),
            Map.entry("stainless 302,304,309,310,314,316", "304"),
            Map.entry("stainless 420,431,440,442,446,347,321", "431"),
            Map.entry("stainless 430F,416", "416"),
            Map.entry("stainless 420F,303", "303"),
            Map.entry("brass & bronze", "CZ121"),
            Map.entry("cast iron soft", "cast iron"),
            Map.entry("cast iron hard", "GJL300"),
            Map.entry("cast steel", "EN8"),
            Map.entry("tool steel", "O1"));

    private SpeedRows() {}

    static Topic add(Topic topic) {
        return topic.asksEach("speed_sfm", SpeedRows::bothTools)
                .asksEach("speed_uk_m_min", SpeedRows::bothTools)
                .asks("speed_turning", SpeedRows::armyTable)
                .asksEach("speed_sheet_sfpm", SpeedRows::sheet)
                .asksEach("feed_lathe_ipr", SpeedRows::latheFeeds)
                .asksEach("depth_of_cut_in", SpeedRows::depths)
                .asks("feed_drill_mm_rev", SpeedRows::drillFeed)
                .asksEach("kienzle", SpeedRows::group);
    }

    private static Query cut(String kind, String material, String tool, boolean finishing) {
        Query query = CuttingRows.cut(kind, OURS.getOrDefault(material, material), "50 mm")
                .with("tool", tool.toLowerCase(Locale.ROOT));
        if (finishing) {
            return query.with("finish", 1.6);
        }
        return kind.equals("turn") ? query.with("depth", ROUGH_DEPTH) : query;
    }

    private static List<Double> band(Object printed, double unit) {
        return ((List<?>) printed)
                .stream().map(each -> ((Number) each).doubleValue() * unit).toList();
    }

    private static Query near(Query query, String path, List<Double> band) {
        return near(query, path, band, SLACK);
    }

    private static Query near(Query query, String path, List<Double> band, double slack) {
        return query.holds(reply -> assertThat(reply.number(path))
                .as(path)
                .isBetween(band.getFirst() * (1 - slack), band.getLast() * (1 + slack)));
    }

    private static List<Query> bothTools(PublishedRow row) {
        var queries = new ArrayList<Query>();
        for (String tool : List.of("hss", "carbide")) {
            for (boolean finishing : new boolean[] {false, true}) {
                queries.add(near(
                        cut("turn", row.text("material"), tool, finishing),
                        "speed.mPerMin",
                        band(row.wanted(tool + "_m_min"), 1)));
            }
        }
        return queries;
    }

    private static Query armyTable(PublishedRow row) {
        boolean finishing = row.text("op").equals("finish");
        var speeds = List.of(row.want("m_min_min"), row.want("m_min_max"));
        return near(cut("turn", row.text("material"), row.text("tool"), finishing), "speed.mPerMin", speeds);
    }

    private static List<Query> sheet(PublishedRow row) {
        String material = row.text("material");
        var drill = List.of(row.want("drill_sfpm") * METRES_PER_FOOT, row.want("drill_sfpm") * METRES_PER_FOOT);
        return List.of(
                near(
                        cut("turn", material, "hss", false),
                        "speed.mPerMin",
                        band(row.wanted("lathe_sfpm"), METRES_PER_FOOT),
                        SHEET_SLACK),
                near(
                        cut("mill", material, "hss", false),
                        "speed.mPerMin",
                        band(row.wanted("mill_sfpm"), METRES_PER_FOOT),
                        SHEET_SLACK),
                near(cut("drill", material, "hss", false), "speed.mPerMin", drill, SHEET_SLACK));
    }

    private static List<Query> latheFeeds(PublishedRow row) {
        if (row.has("material")) {
            return List.of(
                    feed(cut("turn", row.text("material"), "hss", false), row, "rough"),
                    feed(cut("turn", row.text("material"), "hss", true), row, "finish"));
        }
        String kind = row.text("operation").equals("part off") ? "part" : "turn";
        return List.of(
                feed(cut(kind, "EN3", "hss", false), row, "hss"),
                feed(cut(kind, "EN3", "carbide", false), row, "carbide"));
    }

    private static Query feed(Query query, PublishedRow row, String figure) {
        double slack = row.has("material") ? SHEET_SLACK : SLACK;
        return near(query, "feed.mm", band(row.wanted(figure), MM_PER_INCH), slack);
    }

    private static List<Query> depths(PublishedRow row) {
        return List.of(
                depth(CuttingRows.cut("turn", "EN3", "50 mm"), row, "lathe_rough"),
                depth(CuttingRows.cut("turn", "EN3", "50 mm").with("finish", 1.6), row, "lathe_finish"),
                depth(CuttingRows.cut("face", "EN3", "50 mm"), row, "face_rough"),
                depth(CuttingRows.cut("face", "EN3", "50 mm").with("finish", 1.6), row, "face_finish"));
    }

    private static Query depth(Query query, PublishedRow row, String figure) {
        return near(query, "depths.0.mm", band(row.wanted(figure), MM_PER_INCH));
    }

    private static Query drillFeed(PublishedRow row) {
        return near(
                CuttingRows.cut("drill", row.text("material"), row.text("drill_mm") + " mm"),
                "feed.mm",
                band(row.wanted("feed"), 1));
    }

    /** The materials of ours that stand in a group of VDI 3323 are cut by its law; a group that none stands in asks nothing. */
    private static List<Query> group(PublishedRow row) {
        return Materials.list().stream()
                .filter(material -> material.kienzle()
                        .filter(law -> law.source().text().equals("VDI 3323 group " + row.text("vdi_group")))
                        .isPresent())
                .map(material -> CuttingRows.cut("turn", material.grade(), "50 mm")
                        .with("depth", "1 mm")
                        .with("feeds", "0.1 mm")
                        .holds(reply -> {
                            double printed = row.want("kc11") * Math.pow(0.1, -row.want("mc"));
                            assertThat(reply.number("force.N") / 0.1).isCloseTo(printed, within(printed * 1e-4));
                        }))
                .toList();
    }
}
