package chargehand.book.use;

import chargehand.book.job.Job;
import chargehand.book.job.Move;
import chargehand.book.method.Basis;
import chargehand.book.method.MethodRecord;
import chargehand.book.part.DrawnPart;
import chargehand.book.progress.Progress;
import chargehand.book.progress.ProgressEntry;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Everything that the book holds of one job, as it stands now.
 *
 * @param job the job
 * @param part the latest drawing, if there is any
 * @param planned the latest planning, if there is any
 * @param moves its moves, oldest first
 * @param entries its progress by the latest planning's method, oldest first
 * @param edition the edition of the kit and rack that the shop has now
 */
public record JobFile(
        Job job,
        Optional<DrawnPart> part,
        Optional<MethodRecord> planned,
        List<Move> moves,
        List<ProgressEntry> entries,
        int edition) {
    public JobFile {
        moves = List.copyOf(moves);
        entries = List.copyOf(entries);
    }

    /** What a planning may lag behind. */
    public enum Lag {
        DRAWING,
        COUNT,
        KIT
    }

    /** What has changed since the latest planning; nothing when there is none. */
    public Set<Lag> lags() {
        return planned.map(MethodRecord::basis).map(this::lagsBehind).orElse(Set.of());
    }

    private Set<Lag> lagsBehind(Basis basis) {
        var lags = EnumSet.noneOf(Lag.class);
        if (part.filter(drawn -> drawn.issue().version() == basis.version()).isEmpty()) {
            lags.add(Lag.DRAWING);
        }
        if (job.request().count() != basis.count()) {
            lags.add(Lag.COUNT);
        }
        if (edition != basis.edition()) {
            lags.add(Lag.KIT);
        }
        return lags;
    }

    /** What the latest planning was asked for beside the part, each as people write it. */
    public List<String> wishes() {
        return planned.map(record -> record.basis().wishes()).orElse(List.of());
    }

    /** Whether the latest planning is right for the drawing and the count; the kit may have changed. */
    public boolean isPlannedAsDrawn() {
        return planned.isPresent() && !lags().contains(Lag.DRAWING) && !lags().contains(Lag.COUNT);
    }

    /** Whether the latest drawing is without fault. */
    public boolean isDrawn() {
        return part.flatMap(DrawnPart::part).isPresent();
    }

    /** How far the making has come; empty before there is a method. */
    public Optional<Progress> progress() {
        return planned.flatMap(MethodRecord::method).map(method -> Progress.of(method, entries));
    }

    /** What is to be done next. */
    public NextStep next() {
        return switch (job.stage()) {
            case ASKED_FOR, BEING_DRAWN -> nextBeforeMaking();
            case READY -> part.isEmpty() || isPlannedAsDrawn() ? NextStep.BEGIN : nextBeforeMaking();
            case IN_HAND -> nextInHand();
            case STOPPED -> NextStep.WAIT;
            case TO_BE_PROVED -> NextStep.PASS;
            case PASSED -> NextStep.SEND_OUT;
            case GONE_OUT, NOT_WANTED -> NextStep.NOTHING;
        };
    }

    private NextStep nextBeforeMaking() {
        if (part.isEmpty()) {
            return NextStep.DRAW;
        }
        if (!isDrawn()) {
            return NextStep.MEND_DRAWING;
        }
        if (!isPlannedAsDrawn()) {
            return NextStep.PLAN;
        }
        return planned.filter(MethodRecord::isFound).isPresent() ? NextStep.BEGIN : NextStep.UNLOCK;
    }

    private NextStep nextInHand() {
        return progress().flatMap(Progress::next).isPresent() ? NextStep.GO_ON : NextStep.PROVE;
    }
}
