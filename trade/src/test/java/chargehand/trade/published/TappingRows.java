package chargehand.trade.published;

import static org.assertj.core.api.Assertions.within;

import chargehand.trade.PublishedRow;
import chargehand.trade.drill.Drill;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Tapping drills as the tables of threads print them. */
final class TappingRows {
    private static final Pattern MILLIMETRES = Pattern.compile("\\d+(\\.\\d+)?");

    /**
     * Printed drills that are not held, with what is. 9/32 BSF is printed by a list of its own that goes over the nut's limit,
     * 5/16 and 7/8 as the nearest fractions to the metric drills of BS 1157; 45.5, 78.5 and 85.5 mm are no listed drills, and
     * 45.5 goes over the limit of 45.485 mm; 16 BA's leaves eighty-three per cent of the thread where the others leave about
     * seventy-five; 1 3/4-5 is one 64th under the nearest to three quarters of the thread.
     */
    private static final Map<String, String> HELD = Map.of(
            "9/32 BSF", "6.1",
            "5/16 BSF", "6.8",
            "7/8 BSF", "19.75",
            "G 1 1/2", "45",
            "G 2 3/4", "79",
            "G 3", "85",
            "16 BA", "0.62",
            "1 3/4-5 UNC", "1 9/16 in");

    private TappingRows() {}

    /** The thread's own question, and that of its drill where the row prints one. */
    static List<Query> with(Query thread, PublishedRow row, String column, String series) {
        if (!row.expects(column) || row.kind().equals("bspt") || row.kind().equals("brass-cycle-other-old")) {
            return List.of(thread);
        }
        String designation = row.text("size") + series;
        double millimetres = size(HELD.getOrDefault(designation, row.wantText(column)));
        return List.of(
                thread,
                Query.of("tapping-drill").with("thread", designation).gives("size.mm", millimetres, within(1e-6)));
    }

    private static double size(String printed) {
        Matcher millimetres = MILLIMETRES.matcher(printed);
        boolean named = printed.startsWith("No.")
                || printed.startsWith("letter")
                || printed.contains(" in")
                || printed.contains("/")
                || (printed.length() == 1 && !Character.isDigit(printed.charAt(0)));
        if (named || !millimetres.find()) {
            return Drill.parse(printed).diameter().mm();
        }
        return Double.parseDouble(millimetres.group());
    }
}
