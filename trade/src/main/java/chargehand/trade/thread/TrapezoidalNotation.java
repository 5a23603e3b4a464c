package chargehand.trade.thread;

import chargehand.measure.Length;
import chargehand.measure.Pitch;
import chargehand.measure.Unreadable;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** {@code Tr 30x6}, and with several starts {@code Tr 40x14 (P7)}, where 14 is the lead (ISO 2902). */
final class TrapezoidalNotation {
    private static final Pattern TRAPEZOIDAL = Pattern.compile("TR ?" + MetricNotation.DECIMAL + " ?X ?"
            + MetricNotation.DECIMAL + "(?: ?\\(? ?P ?" + MetricNotation.DECIMAL + " ?\\)?)?");
    private static final double LEAST_MM = 8;
    private static final double MOST_MM = 300;

    /** The pitches that ISO 2901 gives a profile for, up to those of {@link #MOST_MM}. */
    private static final List<Pitch> PITCHES = List.of(
                    "1.5", "2", "3", "4", "5", "6", "7", "8", "9", "10", "12", "14", "16", "18", "20", "22", "24", "28",
                    "32", "36", "40", "44")
            .stream()
            .map(Pitch::ofMm)
            .toList();

    private TrapezoidalNotation() {}

    static Optional<ScrewThread> find(String body) {
        Matcher trapezoidal = TRAPEZOIDAL.matcher(body);
        if (!trapezoidal.matches()) {
            return Optional.empty();
        }
        Length major = Length.mm(Double.parseDouble(trapezoidal.group(1)));
        if (major.mm() < LEAST_MM || major.mm() > MOST_MM) {
            throw new Unreadable("ISO trapezoidal threads run from Tr 8 to Tr 300, so " + trapezoidal.group(1)
                    + " mm is not one of them.");
        }
        String pitch = trapezoidal.group(3) == null ? trapezoidal.group(2) : trapezoidal.group(3);
        ScrewThread single = single(major, listed(pitch));
        return Optional.of(trapezoidal.group(3) == null ? single : manyStarts(single, trapezoidal.group(2)));
    }

    private static Pitch listed(String written) {
        return PITCHES.stream()
                .filter(pitch -> pitch.inMm() == Double.parseDouble(written))
                .findFirst()
                .orElseThrow(() -> new Unreadable("ISO 2901 has no trapezoidal pitch of " + written
                        + " mm: they are 1.5, 2 to 10 and 12 to 24 by twos, 28 to 44 by fours."));
    }

    private static ScrewThread single(Length major, Pitch pitch) {
        return new ScrewThread(ThreadSeries.TRAPEZOIDAL, MetricNotation.size(major), major, pitch, 1, false);
    }

    private static ScrewThread manyStarts(ScrewThread single, String lead) {
        if (Double.parseDouble(lead) <= 0) {
            throw new Unreadable("the lead must be more than zero.");
        }
        return single.withStarts(Starts.of(Pitch.ofMm(lead), single.pitch()));
    }
}
