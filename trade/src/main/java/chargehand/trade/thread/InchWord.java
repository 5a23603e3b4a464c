package chargehand.trade.thread;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the word after an inch size asks for.
 *
 * @param lookIn the series whose listed sizes it may mean
 * @param otherwise the series a size joins when it is written with a pitch that is not listed, if that may be
 */
record InchWord(List<ThreadSeries> lookIn, Optional<ThreadSeries> otherwise) {
    /** No word at all: {@code 1/2-13} and {@code #10-32} are how Unified threads alone are written. */
    static final InchWord NONE = listed(ThreadSeries.UNC, ThreadSeries.UNF);

    private static final InchWord ANY_UNIFIED =
            new InchWord(List.of(ThreadSeries.UNC, ThreadSeries.UNF), Optional.of(ThreadSeries.UN));
    private static final InchWord ANY_WHITWORTH =
            new InchWord(List.of(ThreadSeries.BSW), Optional.of(ThreadSeries.WHITWORTH));
    private static final Map<String, InchWord> WORDS = Map.ofEntries(
            Map.entry("UNC", listed(ThreadSeries.UNC)),
            Map.entry("UNF", listed(ThreadSeries.UNF)),
            Map.entry("UN", ANY_UNIFIED),
            Map.entry("UNS", ANY_UNIFIED),
            Map.entry("UNEF", ANY_UNIFIED),
            Map.entry("BSW", listed(ThreadSeries.BSW)),
            Map.entry("BSF", listed(ThreadSeries.BSF)),
            Map.entry("WHIT", ANY_WHITWORTH),
            Map.entry("WHITWORTH", ANY_WHITWORTH),
            Map.entry("WHITFORM", ANY_WHITWORTH),
            Map.entry("WHITWORTHFORM", ANY_WHITWORTH),
            Map.entry("BSB", listed(ThreadSeries.BRASS)),
            Map.entry("BRASS", listed(ThreadSeries.BRASS)),
            Map.entry("CONDUIT", listed(ThreadSeries.CONDUIT)),
            Map.entry("BSCONDUIT", listed(ThreadSeries.CONDUIT)),
            Map.entry("CEI", any(ThreadSeries.CYCLE)),
            Map.entry("BSC", any(ThreadSeries.CYCLE)),
            Map.entry("CYCLE", any(ThreadSeries.CYCLE)),
            Map.entry("ME", any(ThreadSeries.MODEL_ENGINEER)),
            Map.entry("ACME", any(ThreadSeries.ACME)),
            Map.entry("SQUARE", any(ThreadSeries.SQUARE)),
            Map.entry("SQ", any(ThreadSeries.SQUARE)));

    private static InchWord listed(ThreadSeries... series) {
        return new InchWord(List.of(series), Optional.empty());
    }

    private static InchWord any(ThreadSeries series) {
        return new InchWord(List.of(series), Optional.of(series));
    }

    /** Reads a word in capitals; its spaces and stops do not matter. */
    static Optional<InchWord> find(String word) {
        return Optional.ofNullable(WORDS.get(word.replaceAll("[ .]", "")));
    }

    boolean isUnified() {
        return lookIn.getFirst().form() == ThreadForm.UNIFIED;
    }
}
