package chargehand.trade.published;

import chargehand.trade.PublishedRow;
import chargehand.trade.drill.Drill;

/** Twist drills: number, letter, fraction and metric. */
final class DrillRows {
    private DrillRows() {}

    static Topic topic() {
        return Topic.named("twist drills")
                .table(Drill.class, "published-twist-drills.csv")
                .asks(
                        "twist-drills",
                        row -> Query.of("size")
                                .with("size", written(row))
                                .gives("length.in", row, "diameter_in")
                                .gives("length.mm", row, "diameter_mm"));
    }

    /** A letter alone would be a doubtful size, so it is written out. */
    private static String written(PublishedRow row) {
        String size = row.text("size");
        return switch (row.text("series")) {
            case "letter" -> "letter " + size;
            case "number" -> size.replace("No.", "#");
            case "fraction" -> size.endsWith("in") ? size : size + " in";
            default -> size;
        };
    }
}
