package chargehand.trade.strength;

import chargehand.trade.sum.Kind;
import chargehand.trade.sum.Kinds;
import java.util.LinkedHashMap;
import java.util.Map;

/** The shapes of shaft that can be asked about. */
enum ShaftShape {
    ROUND,
    HOLLOW,
    SQUARE,
    HEXAGON,
    FLAT;

    static final Kind<ShaftShape> KIND = Kinds.choice("shape", words());

    private static Map<String, ShaftShape> words() {
        var words = new LinkedHashMap<String, ShaftShape>();
        words.put("round", ROUND);
        words.put("hollow", HOLLOW);
        words.put("square", SQUARE);
        words.put("hexagon", HEXAGON);
        words.put("hex", HEXAGON);
        words.put("flat", FLAT);
        return words;
    }
}
