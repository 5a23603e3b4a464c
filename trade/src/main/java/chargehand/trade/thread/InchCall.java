package chargehand.trade.thread;

import chargehand.measure.Pitch;
import chargehand.measure.Unreadable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * An inch thread as called for, before it is settled which thread that is.
 *
 * @param written the size as written
 * @param sizes what the size may mean: a bare whole number before a Unified word is inches or a screw number
 * @param pitch the pitch called for, if any
 * @param word what the series word asks for
 */
record InchCall(String written, List<ThreadSize> sizes, Optional<Pitch> pitch, InchWord word) {
    private static final int LARGEST_INCHES = 6;

    static InchCall of(String written, Optional<Pitch> pitch, InchWord word) {
        var sizes = new ArrayList<ThreadSize>();
        ThreadSize.find(written).ifPresent(sizes::add);
        if (word.isUnified() && written.matches("\\d{1,2}")) {
            sizes.add(ThreadSize.ofNumber(Integer.parseInt(written)));
        }
        sizes.removeIf(size -> size.diameter().in() > LARGEST_INCHES);
        return new InchCall(written, sizes, pitch, word);
    }

    ScrewThread thread() {
        if (written.matches("[#N].*") && !word.isUnified()) {
            throw new Unreadable(
                    "numbered sizes such as " + written + " are Unified threads; write #10-32 or #8-32 UNC.");
        }
        List<ScrewThread> listed = listed();
        return pitch.isEmpty() ? only(listed) : withPitch(listed, pitch.get());
    }

    private List<ScrewThread> listed() {
        return word.lookIn().stream()
                .flatMap(series -> sizes.stream().flatMap(size -> Threads.list(series, size.diameter()).stream()))
                .toList();
    }

    private ScrewThread only(List<ScrewThread> listed) {
        return switch (listed.size()) {
            case 0 ->
                throw new Unreadable("no " + written + " is listed in " + titles()
                        + ": check the size, or write its threads" + " to the inch too.");
            case 1 -> listed.getFirst();
            default -> throw new Unreadable("'" + written + "' could be any of " + names(listed) + ": write which.");
        };
    }

    private ScrewThread withPitch(List<ScrewThread> listed, Pitch asked) {
        return listed.stream()
                .filter(thread -> thread.pitch().equals(asked))
                .findFirst()
                .or(() -> word.otherwise().map(series -> other(series, asked)))
                .orElseThrow(() -> notListed(listed, asked));
    }

    private ScrewThread other(ThreadSeries series, Pitch asked) {
        if (sizes.isEmpty()) {
            throw new Unreadable(written + " is not a size of thread up to " + LARGEST_INCHES + " in.");
        }
        ThreadSize size = sizes.getFirst();
        return new ScrewThread(series, size.text(), size.diameter(), asked, 1, false);
    }

    private Unreadable notListed(List<ScrewThread> listed, Pitch asked) {
        String tpi = Designation.decimal(asked.tpi());
        String instead = listed.isEmpty()
                ? "no " + written + " is listed in " + titles()
                : titles() + " at this size is " + names(listed) + ", not " + tpi + " threads to the inch";
        String form = word.isUnified() ? " UN" : " Whit";
        return new Unreadable(instead + ": for another pitch write " + written + "-" + tpi + form + ".");
    }

    private String titles() {
        return word.lookIn().stream().map(ThreadSeries::title).collect(Collectors.joining(" or "));
    }

    private static String names(List<ScrewThread> threads) {
        return threads.stream().map(ScrewThread::designation).collect(Collectors.joining(", "));
    }
}
