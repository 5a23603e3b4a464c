package chargehand.drawing.dxf;

import java.util.List;

/** Writes the tables: kinds of line, layers, the style of letters. */
final class Tables {
    static final String STYLE = "STANDARD";

    /** A font found everywhere; words are fitted to their room, whatever stands in for it. */
    private static final String FONT = "arial.ttf";

    private static final int ALIGNED = 65;

    private Tables() {}

    static void write(Groups groups, FullSize size) {
        groups.words(0, "SECTION").words(2, "TABLES");
        table(groups, "LTYPE", LineType.values().length);
        for (LineType type : LineType.values()) {
            lineType(groups, type, size);
        }
        groups.words(0, "ENDTAB");
        table(groups, "LAYER", Layer.values().length + 1);
        layer(groups, "0", 7, LineType.CONTINUOUS);
        for (Layer layer : Layer.values()) {
            layer(groups, layer.name(), layer.colour(), layer.line());
        }
        groups.words(0, "ENDTAB");
        table(groups, "STYLE", 1);
        style(groups);
        groups.words(0, "ENDTAB").words(0, "ENDSEC");
    }

    private static void table(Groups groups, String name, int entries) {
        groups.words(0, "TABLE").words(2, name).whole(70, entries);
    }

    /** Dashes are positive, gaps negative; they grow with the drawing, so that they look on paper as they should. */
    private static void lineType(Groups groups, LineType type, FullSize size) {
        List<Double> pattern = type.pattern();
        groups.words(0, "LTYPE").words(2, type.toString()).whole(70, 0).words(3, type.description());
        double total = pattern.stream().mapToDouble(Double::doubleValue).sum();
        groups.whole(72, ALIGNED).whole(73, pattern.size()).number(40, size.size(total));
        for (int i = 0; i < pattern.size(); i++) {
            groups.number(49, size.size(i % 2 == 0 ? pattern.get(i) : -pattern.get(i)));
        }
    }

    private static void layer(Groups groups, String name, int colour, LineType line) {
        groups.words(0, "LAYER").words(2, name).whole(70, 0).whole(62, colour).words(6, line.toString());
    }

    private static void style(Groups groups) {
        groups.words(0, "STYLE").words(2, STYLE).whole(70, 0).number(40, 0).number(41, 1);
        groups.number(50, 0).whole(71, 0).number(42, 1).words(3, FONT).words(4, "");
    }
}
