package chargehand.trade.thread;

import chargehand.measure.Unreadable;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * {@code G 3/8} and {@code 3/8 BSP} (parallel, ISO 228-1); {@code R 3/8}, {@code Rc 3/8}, {@code Rp 3/8} and {@code 3/8
 * BSPT} (sealing on the thread, ISO 7-1).
 */
final class PipeNotation {
    private static final Pattern LETTER = Pattern.compile("(G|RC|RP|R) ?(" + ThreadSize.PATTERN + ")(?: BSP)?");
    private static final String WORDS = "(BSPT|BSPP|BSPF|BSP)(?: ?\\(?(TAPER|PARALLEL)\\)?)?";
    private static final Pattern SIZE_FIRST =
            Pattern.compile("(" + ThreadSize.PATTERN + ")(?: ?[-X] ?(\\d{2})(?: ?TPI)?)?[ -]?" + WORDS);
    private static final Pattern WORD_FIRST = Pattern.compile(WORDS + "[ -]?(" + ThreadSize.PATTERN + ")");

    private PipeNotation() {}

    static Optional<ScrewThread> find(String body) {
        Matcher letter = LETTER.matcher(body);
        if (letter.matches()) {
            return Optional.of(listed(ofLetter(letter.group(1)), letter.group(2)));
        }
        Matcher sizeFirst = SIZE_FIRST.matcher(body);
        if (sizeFirst.matches()) {
            ScrewThread thread = listed(ofWords(sizeFirst.group(3), sizeFirst.group(4)), sizeFirst.group(1));
            return Optional.of(agreeing(thread, sizeFirst.group(2)));
        }
        Matcher wordFirst = WORD_FIRST.matcher(body);
        return wordFirst.matches()
                ? Optional.of(listed(ofWords(wordFirst.group(1), wordFirst.group(2)), wordFirst.group(3)))
                : Optional.empty();
    }

    private static ThreadSeries ofLetter(String letter) {
        return switch (letter) {
            case "G" -> ThreadSeries.BSP;
            case "RC" -> ThreadSeries.BSP_TAPER_INSIDE;
            case "RP" -> ThreadSeries.BSP_PARALLEL_INSIDE;
            default -> ThreadSeries.BSP_TAPER_OUTSIDE;
        };
    }

    private static ThreadSeries ofWords(String word, @Nullable String more) {
        boolean taper = word.equals("BSPT") || "TAPER".equals(more);
        return taper ? ThreadSeries.BSP_TAPER_OUTSIDE : ThreadSeries.BSP;
    }

    /** Pipe sizes are names, not measures: they are looked up by their text. */
    private static ScrewThread listed(ThreadSeries series, String written) {
        String size = ThreadSize.find(written).map(ThreadSize::text).orElse(written);
        return Threads.list(series).stream()
                .filter(thread -> thread.size().equals(size))
                .findFirst()
                .orElseThrow(() -> new Unreadable("there is no " + written + " in " + series.standard()
                        + "; the sizes are " + sizes(series) + "."));
    }

    private static String sizes(ThreadSeries series) {
        return Threads.list(series).stream().map(ScrewThread::size).collect(Collectors.joining(", "));
    }

    private static ScrewThread agreeing(ScrewThread thread, @Nullable String tpi) {
        String listed = Designation.decimal(thread.pitch().tpi());
        if (tpi != null && !tpi.equals(listed)) {
            throw new Unreadable(thread + " has " + listed + " threads to the inch, not " + tpi + ".");
        }
        return thread;
    }
}
