package chargehand.part.check;

import chargehand.measure.Length;
import java.util.List;
import java.util.stream.Collectors;

/** The pitches that knurls are rolled at: DIN 82 and ISO 13444, from memory. */
final class KnurlPitches {
    private static final List<Double> MM = List.of(0.5, 0.6, 0.8, 1.0, 1.2, 1.6);

    private KnurlPitches() {}

    static List<Length> all() {
        return MM.stream().map(Length::mm).toList();
    }

    /** As a sentence names them. */
    static String text() {
        String but = MM.subList(0, MM.size() - 1).stream().map(String::valueOf).collect(Collectors.joining(", "));
        return but + " or " + MM.getLast() + " mm";
    }
}
