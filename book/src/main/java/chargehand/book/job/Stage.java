package chargehand.book.job;

import java.util.Arrays;
import java.util.Optional;

/** How far a job has come, in the trade's words and in the order of the work. */
public enum Stage {
    ASKED_FOR("asked for"),
    BEING_DRAWN("being drawn"),
    READY("ready"),
    IN_HAND("in hand"),
    STOPPED("stopped"),
    TO_BE_PROVED("to be proved"),
    PASSED("passed"),
    GONE_OUT("gone out"),
    NOT_WANTED("not wanted");

    private final String word;

    Stage(String word) {
        this.word = word;
    }

    /** The word for it, as people say and the book keeps it. */
    public String word() {
        return word;
    }

    /** The stage of that word; empty for any other. */
    public static Optional<Stage> parse(String word) {
        String bare = word.strip();
        return Arrays.stream(values())
                .filter(stage -> stage.word.equalsIgnoreCase(bare))
                .findFirst();
    }

    /** Whether the shop still has something to do for it. */
    public boolean isOpen() {
        return switch (this) {
            case ASKED_FOR, BEING_DRAWN, READY, IN_HAND, STOPPED, TO_BE_PROVED, PASSED -> true;
            case GONE_OUT, NOT_WANTED -> false;
        };
    }

    /** Whether its drawing and its method may still be changed. */
    public boolean isBeforeProving() {
        return switch (this) {
            case ASKED_FOR, BEING_DRAWN, READY, IN_HAND, STOPPED -> true;
            case TO_BE_PROVED, PASSED, GONE_OUT, NOT_WANTED -> false;
        };
    }
}
