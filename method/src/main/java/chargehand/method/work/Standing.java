package chargehand.method.work;

import chargehand.measure.Length;
import chargehand.method.plan.Blank;
import chargehand.method.task.Shape;
import chargehand.method.task.Task;
import chargehand.method.task.Tasks;
import chargehand.part.End;
import chargehand.part.Size;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Optional;

/**
 * The work as it stands between two set-ups of a plan: which tasks are done and in which set-up each was, so that what
 * was made in one holding is known to be true to itself.
 */
public final class Standing {
    private final Tasks tasks;
    private final Blank blank;
    private final Optional<Slot> slot;
    private final boolean bright;
    private final BitSet done;
    private final int[] setUps;
    private final BitSet onCentres;
    private final int lastSetUp;

    private Standing(Standing before, BitSet done, int[] setUps, BitSet onCentres) {
        this.tasks = before.tasks;
        this.blank = before.blank;
        this.slot = before.slot;
        this.bright = before.bright;
        this.done = done;
        this.setUps = setUps;
        this.onCentres = onCentres;
        this.lastSetUp = before.lastSetUp + 1;
    }

    private Standing(Tasks tasks, Raw raw, BitSet done) {
        this.tasks = tasks;
        this.blank = raw.blank();
        this.slot = raw.slot();
        this.bright = raw.bright();
        this.done = done;
        this.setUps = new int[tasks.size()];
        this.onCentres = new BitSet();
        this.lastSetUp = 0;
    }

    /**
     * Where the work will be parted from its bar.
     *
     * @param partSide the edge of the slot on the part's side, leaving something to face
     * @param barSide the edge on the bar's side
     * @param bar the end of the part at which the bar goes on
     */
    public record Slot(Length partSide, Length barSide, End bar) {}

    /**
     * The raw work.
     *
     * @param given the tasks that the stock brings with it, such as the flats of a bright hexagon
     */
    public static Standing raw(Tasks tasks, Raw raw, BitSet given) {
        return new Standing(tasks, raw, (BitSet) given.clone());
    }

    /**
     * The raw work before set-up 1.
     *
     * @param blank its shape
     * @param slot where it will be parted off, for work on a bar
     * @param bright whether its surface is true enough for a collet
     */
    public record Raw(Blank blank, Optional<Slot> slot, boolean bright) {}

    /**
     * The work after one more set-up in which these tasks were done.
     *
     * @param betweenCentres whether the work turned on its own centre holes, which are the same axis each time
     */
    public Standing after(BitSet newly, boolean betweenCentres) {
        var all = (BitSet) done.clone();
        all.or(newly);
        int[] when = Arrays.copyOf(setUps, setUps.length);
        newly.stream().forEach(number -> when[number] = lastSetUp + 1);
        var centred = (BitSet) onCentres.clone();
        if (betweenCentres) {
            centred.or(newly);
        }
        return new Standing(this, all, when, centred);
    }

    public Tasks tasks() {
        return tasks;
    }

    public Shape shape() {
        return tasks.shape();
    }

    public Blank blank() {
        return blank;
    }

    /** Where the work is or was parted off, for work from a bar. */
    public Optional<Slot> slot() {
        return slot;
    }

    /** Whether the stock's own surface is true enough for a collet. */
    public boolean isBright() {
        return bright;
    }

    /** The numbers of the tasks done. */
    public BitSet done() {
        return (BitSet) done.clone();
    }

    public boolean isDone(int number) {
        return done.get(number);
    }

    public boolean isDone(Task task) {
        return tasks.contains(task) && done.get(tasks.number(task));
    }

    /** Whether all that the part asks for is done. */
    public boolean isFinished() {
        BitSet left = tasks.required();
        left.andNot(done);
        return left.isEmpty();
    }

    /** The set-up, from 1, in which a task was done; 0 when it came with the stock or is not done. */
    public int setUpOf(int number) {
        return setUps[number];
    }

    /** Whether a task was done with the work turning on its own centre holes. */
    public boolean isMadeOnCentres(int number) {
        return onCentres.get(number);
    }

    /** How many set-ups have been used so far. */
    public int setUpsUsed() {
        return lastSetUp;
    }

    /** Whether the work is still part of a longer bar. */
    public boolean isOnBar() {
        var off = new Task.OffTheBar();
        return tasks.contains(off) && !isDone(off);
    }

    /** Whether a section still has the stock's own surface. */
    public boolean isRaw(int section) {
        return !isDone(new Task.Turned(section, shape().section(section)));
    }

    /** The largest diameter a section swings at now: its own once turned, else that of the stock over corners. */
    public Length diameter(int section) {
        return isRaw(section) ? raw(section) : shape().diameter(section);
    }

    /** What a section measures that is still to be made: of an old part, as it came. */
    private Length raw(int section) {
        return isOldPart()
                ? shape().section(section).stretch().was().map(Size::length).orElse(Blanks.swing(blank))
                : Blanks.swing(blank);
    }

    /** Whether the work is a part that comes back to be altered. */
    public boolean isOldPart() {
        return blank instanceof Blank.OldPart;
    }

    /**
     * Where the work ends now towards {@code end}, along the axis: the finished face, else the blank's end or the edge of
     * the parting slot.
     */
    public Length face(End end) {
        if (isDone(new Task.FaceOf(end))) {
            return end == End.A ? Length.ZERO : shape().body().length();
        }
        if (slot.isPresent() && slot.get().bar() == end) {
            return slot.get().partSide();
        }
        return end == End.A ? Blanks.from(blank) : Blanks.to(blank);
    }

    /** Where metal ends towards {@code end}: the bar or stub beyond a parting slot counts until it is parted. */
    public Length outerEnd(End end) {
        boolean beyond = isOnBar() && slot.filter(each -> each.bar() == end).isPresent();
        return beyond ? (end == End.A ? Blanks.from(blank) : Blanks.to(blank)) : face(end);
    }

    /** Whether the work is the end of a long bar that goes on through the spindle. */
    public boolean isLong() {
        return isOnBar() && Blanks.isOnBar(blank);
    }

    /** Two standings with the same key have the same future. */
    public String key() {
        return done + Arrays.toString(normalised()) + onCentres;
    }

    /** Set-up numbers renamed in order of first use, since only which tasks share one matters. */
    private int[] normalised() {
        var names = new int[lastSetUp + 1];
        int next = 1;
        var result = new int[setUps.length];
        for (int i = 0; i < setUps.length; i++) {
            if (setUps[i] > 0 && names[setUps[i]] == 0) {
                names[setUps[i]] = next++;
            }
            result[i] = names[setUps[i]];
        }
        return result;
    }
}
