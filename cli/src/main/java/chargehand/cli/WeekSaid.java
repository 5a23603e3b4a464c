package chargehand.cli;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.method.stock.WeekList;
import java.io.PrintStream;
import java.util.LinkedHashMap;
import java.util.Map;

/** The cutting list of several parts, as lines or as a tree for JSON. */
final class WeekSaid {
    private final WeekList list;

    WeekSaid(WeekList list) {
        this.list = list;
    }

    void say(PrintStream out) {
        for (WeekList.Bar bar : list.bars()) {
            out.println(bar.piece().name() + ": " + bar.piece().says() + ", "
                    + bar.piece().length().withUnit() + " long");
            for (WeekList.Cut cut : bar.cuts()) {
                out.println("   " + cut.pieces() + " × " + cut.name() + ", " + both(cut.each()) + " each, "
                        + cut.way().words());
            }
            out.println("   " + both(bar.left()) + " left");
        }
        list.unmet().forEach(unmet -> out.println("Goes without: " + unmet.name() + ". " + unmet.why()));
        out.println(
                list.proved()
                        ? "No other way of giving the pieces out uses less metal."
                        : "Found within the time allowed; another way may use less metal.");
    }

    private static String both(Length length) {
        return LengthText.both(length, LengthUnit.MILLIMETRE);
    }

    Map<String, Object> tree() {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("bars", list.bars().stream().map(WeekSaid::tree).toList());
        tree.put(
                "unmet",
                list.unmet().stream()
                        .map(unmet -> Map.of("part", unmet.name(), "why", unmet.why()))
                        .toList());
        tree.put("proved", list.proved());
        return tree;
    }

    private static Map<String, Object> tree(WeekList.Bar bar) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("piece", bar.piece().name());
        tree.put("says", bar.piece().says());
        tree.put("cuts", bar.cuts().stream().map(WeekSaid::tree).toList());
        tree.put("left", tree(bar.left()));
        return tree;
    }

    private static Map<String, Object> tree(WeekList.Cut cut) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("part", cut.name());
        tree.put("pieces", cut.pieces());
        tree.put("each", tree(cut.each()));
        tree.put("way", cut.way().words());
        return tree;
    }

    private static Map<String, Object> tree(Length length) {
        return Map.of("mm", length.mm(), "in", length.in());
    }
}
