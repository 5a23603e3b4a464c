package chargehand.method.setting;

import chargehand.measure.Length;
import chargehand.measure.Limits;
import chargehand.method.holding.Choice;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.LatheTool;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.task.Bores;
import chargehand.method.task.Shape;
import chargehand.method.task.Task;
import chargehand.method.work.Blanks;
import chargehand.method.work.Standing;
import chargehand.part.Bore;
import chargehand.part.End;
import chargehand.part.InBore;
import chargehand.part.Section;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Puts the tasks of one lathe set-up in the trade's order and writes each: face, centre, drill, rough, bore, finish, groove,
 * chamfer, thread, deburr, part off.
 */
final class LatheSetUp {
    private final Making making;
    private final Standing work;
    private final Choice choice;
    private final BitSet todo;
    private final int pieces;
    private final TurningWork turning;
    private final InsideWork inside;
    private final ThreadWork threads;
    private final SlotWork slots;
    private final List<Draft> drafts = new ArrayList<>();
    private final List<Bore> bored = new ArrayList<>();

    LatheSetUp(Making making, ThreadWays ways, Lathe lathe, Job job) {
        this.making = making;
        this.work = job.work();
        this.choice = job.choice();
        this.todo = job.todo();
        this.pieces = job.pieces();
        this.turning = new TurningWork(making, lathe);
        this.inside = new InsideWork(making, lathe, work);
        this.threads = new ThreadWork(making, lathe, ways);
        this.slots = new SlotWork(making, lathe);
    }

    List<Draft> write() {
        alreadyBored();
        for (End end : ends()) {
            along(end);
        }
        List<OutsideCuts.Turning> cuts =
                OutsideCuts.list(work, sections(), free(), new OutsideCuts.Room(faced(free()), choice.clear()));
        cuts.forEach(cut -> drafts.add(turning.turn(cut, hand(cut.section()))));
        tapers();
        grooves();
        corners();
        threads();
        inWalls();
        if (!drafts.isEmpty()) {
            drafts.add(turning.deburr());
        }
        partOff();
        return drafts;
    }

    /** The end that tools come from; for work open at both ends, A first. */
    private End free() {
        return switch (choice.holding()) {
            case Holding.InChuck chuck -> chuck.headstock().other();
            case Holding.InCollet collet -> collet.headstock().other();
            case Holding.BetweenCentres centres -> centres.driven().other();
            case Holding.OnMandrel mandrel -> mandrel.headstock().other();
            case Holding.OnStub stub -> stub.headstock().other();
            case Holding.OnFaceplate plate -> plate.headstock().other();
            case Holding.InDividingHead head -> head.headstock().other();
            case Holding.LaidAcross laid -> End.A;
            case Holding.InVice vice -> End.A;
            case Holding.OnTable table -> End.A;
            case Holding.Clamped clamped -> End.A;
        };
    }

    /** A shoulder that looks to the headstock between centres is turned up to from behind. */
    private LatheTool.Hand hand(int section) {
        boolean behind = choice.holding() instanceof Holding.BetweenCentres
                && shape().isHollow(section, free())
                && !shape().isHollow(section, free().other());
        return behind ? LatheTool.Hand.LEFT : LatheTool.Hand.RIGHT;
    }

    /** Where the work ends towards {@code end} once this set-up has faced it. */
    private Length faced(End end) {
        Length finished = end == End.A ? Length.ZERO : making.body().length();
        return isTodo(new Task.FaceOf(end)) ? finished : work.face(end);
    }

    /** The ends that are faced or into which tools go. */
    private List<End> ends() {
        return Stream.concat(choice.faces().stream(), choice.open().stream())
                .distinct()
                .sorted()
                .toList();
    }

    private boolean isTodo(Task task) {
        return work.tasks().contains(task) && todo.get(work.tasks().number(task));
    }

    private Shape shape() {
        return work.shape();
    }

    private void alreadyBored() {
        work.tasks().list().forEach(task -> {
            if (task instanceof Task.Inside done && work.isDone(task)) {
                bored.add(done.bore());
            }
        });
    }

    /** Facing, centring and all bores from one end. */
    private void along(End end) {
        if (isTodo(new Task.FaceOf(end))) {
            face(end);
        }
        List<Task.Inside> bores = bores(end);
        boolean startsDrill = !bores.isEmpty() && bored.stream().noneMatch(bore -> Bores.opensAt(bore, end));
        if (isTodo(new Task.CentreIn(end)) || startsDrill) {
            Length hole = bores.isEmpty()
                    ? endDiameter(end)
                    : Bores.diameter(bores.getFirst().bore());
            drafts.add(inside.centre(end, endDiameter(end), hole));
        }
        for (Task.Inside task : bores) {
            drafts.addAll(inside.bore(task.bore(), end, holeAt(end)));
            bored.add(task.bore());
        }
        bores.forEach(task -> inside.mouth(task.bore(), end).ifPresent(drafts::add));
    }

    private Length endDiameter(End end) {
        return shape().diameter(end == End.A ? 0 : shape().count() - 1);
    }

    private void face(End end) {
        Length to = end == End.A ? Length.ZERO : making.body().length();
        int outermost = end == End.A ? 0 : shape().count() - 1;
        boolean bothNow = end == End.B && isTodo(new Task.FaceOf(end.other()));
        boolean last = bothNow || work.isDone(new Task.FaceOf(end.other()));
        Optional<Limits> length = last ? Optional.of(LengthLimits.overall(making)) : Optional.empty();
        drafts.add(turning.face(end, new TurningWork.Facing(work.face(end), to, work.diameter(outermost)), length));
    }

    /** Tasks of the inside that can be done from this end, smallest first. */
    private List<Task.Inside> bores(End end) {
        return todo.stream()
                .mapToObj(work.tasks()::get)
                .filter(Task.Inside.class::isInstance)
                .map(Task.Inside.class::cast)
                .filter(task -> task.bore().from() == end
                        || (Bores.isThrough(task.bore())
                                && !ends().contains(task.bore().from())))
                .sorted(Comparator.comparing((Task.Inside task) -> task.bore() instanceof Bore.Coned)
                        .thenComparing(task -> Bores.diameter(task.bore())))
                .toList();
    }

    /** The largest hole there already from this end. */
    private Optional<Length> holeAt(End end) {
        return bored.stream()
                .filter(bore -> Bores.opensAt(bore, end) && !(bore instanceof Bore.Coned))
                .map(Bores::diameter)
                .max(Comparator.naturalOrder());
    }

    private BitSet sections() {
        var sections = new BitSet();
        for (int i = 0; i < shape().count(); i++) {
            sections.set(i, isTodo(new Task.Turned(i, shape().section(i))));
        }
        return sections;
    }

    private void tapers() {
        for (int i = 0; i < shape().count(); i++) {
            if (shape().section(i) instanceof Section.Cone cone && isTodo(new Task.Turned(i, cone))) {
                drafts.add(turning.taper(cone, shape().start(i), shape().end(i)));
            }
        }
    }

    private void grooves() {
        var ground = new GrooveGround(work, todo);
        for (int i = 0; i < shape().count(); i++) {
            if (shape().section(i) instanceof Section.Groove groove && isTodo(new Task.Turned(i, groove))) {
                drafts.add(turning.groove(
                        groove,
                        shape().start(i),
                        new TurningWork.Ground(ground.touched(i), ground.surface(i, free()))));
            }
        }
    }

    private void corners() {
        for (int i = 0; i < shape().count(); i++) {
            for (End side : End.values()) {
                if (isTodo(new Task.Corner(i, shape().section(i), side))) {
                    drafts.add(turning.corner(
                            shape().edge(i, side), shape().border(i, side), shape().diameterTowards(i, side), side));
                }
            }
        }
    }

    private void threads() {
        for (int i = 0; i < shape().count(); i++) {
            if (shape().section(i) instanceof Section.Threaded section && isTodo(new Task.Threading(i, section))) {
                boolean open = isOpenTowards(i, section);
                threads.outside(section.thread(), shape().start(i), shape().end(i), open, pieces)
                        .ifPresent(drafts::add);
            }
        }
    }

    /** Whether a die can come over everything between the free end and the thread. */
    private boolean isOpenTowards(int index, Section.Threaded section) {
        return !choice.isCentred()
                && !shape().largestTowards(index, free())
                        .isMoreThan(section.thread().core());
    }

    /** What is cut into the walls of bores, once all that turns is done; recesses first. */
    private void inWalls() {
        todo.stream()
                .mapToObj(work.tasks()::get)
                .filter(Task.InWall.class::isInstance)
                .map(Task.InWall.class::cast)
                .map(Task.InWall::inBore)
                .sorted(Comparator.comparing((InBore inBore) -> !(inBore instanceof InBore.Recess)))
                .forEach(inBore ->
                        drafts.add(slots.cut(inBore, choice.open().iterator().next())));
    }

    private void partOff() {
        if (isTodo(new Task.OffTheBar())) {
            Standing.Slot slot = work.slot().orElseThrow();
            Length from = Length.least(slot.partSide(), slot.barSide());
            Length to = Length.most(slot.partSide(), slot.barSide());
            Length diameter = parted(slot.bar());
            drafts.add(turning.partOff(new Cut.PartOff(from, to, slot.bar().other()), diameter));
        }
    }

    /** The diameter at the slot: turned on from the last section where that is turned, else the stock's. */
    private Length parted(End bar) {
        int last = bar == End.A ? 0 : shape().count() - 1;
        boolean turnedNow = isTodo(new Task.Turned(last, shape().section(last)));
        return turnedNow ? shape().diameterTowards(last, bar) : Blanks.swing(work.blank());
    }
}
