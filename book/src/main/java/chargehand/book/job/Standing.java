package chargehand.book.job;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** Where a job stands and where it may go from there. */
public sealed interface Standing {
    Stage stage();

    /** The stages it may be moved to by hand. */
    Set<Stage> moves();

    /** What it waits for; empty unless it is stopped. */
    default Optional<String> waitsFor() {
        return switch (this) {
            case At at -> Optional.empty();
            case Stopped stopped -> Optional.of(stopped.waits());
        };
    }

    /** The stage it is at, or was at when it stopped. */
    default Stage work() {
        return switch (this) {
            case At at -> at.stage();
            case Stopped stopped -> stopped.before();
        };
    }

    /** At a stage of the work. */
    record At(Stage stage) implements Standing {
        public At {
            if (stage == Stage.STOPPED) {
                throw new IllegalArgumentException("a stopped job says what it waits for");
            }
        }

        @Override
        public Set<Stage> moves() {
            return switch (stage) {
                case ASKED_FOR -> EnumSet.of(Stage.BEING_DRAWN, Stage.READY, Stage.STOPPED, Stage.NOT_WANTED);
                case BEING_DRAWN -> EnumSet.of(Stage.ASKED_FOR, Stage.READY, Stage.STOPPED, Stage.NOT_WANTED);
                case READY -> EnumSet.of(Stage.BEING_DRAWN, Stage.IN_HAND, Stage.STOPPED, Stage.NOT_WANTED);
                case IN_HAND ->
                    EnumSet.of(Stage.BEING_DRAWN, Stage.READY, Stage.TO_BE_PROVED, Stage.STOPPED, Stage.NOT_WANTED);
                case TO_BE_PROVED -> EnumSet.of(Stage.IN_HAND, Stage.PASSED, Stage.STOPPED, Stage.NOT_WANTED);
                case PASSED -> EnumSet.of(Stage.TO_BE_PROVED, Stage.GONE_OUT, Stage.NOT_WANTED);
                case GONE_OUT -> EnumSet.of(Stage.PASSED);
                case NOT_WANTED -> EnumSet.of(Stage.ASKED_FOR);
                case STOPPED -> throw new IllegalStateException("a stopped job stands stopped");
            };
        }
    }

    /**
     * Stopped until something comes.
     *
     * @param waits what it waits for, never blank
     * @param before the stage at which it stopped and to which it goes back
     */
    record Stopped(String waits, Stage before) implements Standing {
        public Stopped {
            if (waits.isBlank()) {
                throw new IllegalArgumentException("a stopped job says what it waits for");
            }
            if (!new At(before).moves().contains(Stage.STOPPED)) {
                throw new IllegalArgumentException("a job that is " + before.word() + " is not stopped");
            }
        }

        @Override
        public Stage stage() {
            return Stage.STOPPED;
        }

        @Override
        public Set<Stage> moves() {
            return EnumSet.of(before, Stage.NOT_WANTED);
        }
    }
}
