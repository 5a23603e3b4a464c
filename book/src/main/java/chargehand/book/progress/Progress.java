package chargehand.book.progress;

import static java.util.stream.Collectors.groupingBy;

import chargehand.book.Signed;
import chargehand.book.progress.Deed.HoldPassed;
import chargehand.book.progress.Deed.Measured;
import chargehand.book.progress.Deed.Ticked;
import chargehand.book.progress.Deed.Unticked;
import chargehand.method.plan.Method;
import chargehand.method.plan.Operation;
import chargehand.method.plan.Reading;
import chargehand.method.plan.SetUp;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How far the making has come by one method, as its entries tell it. The order of the work is set-up by set-up, in each
 * set-up piece by piece, and for each piece operation by operation.
 */
public final class Progress {
    private final Method method;
    private final List<ProgressEntry> entries;
    private final Map<StepAt, List<ProgressEntry>> byStep;

    private Progress(Method method, List<ProgressEntry> entries) {
        this.method = method;
        this.entries = List.copyOf(entries);
        this.byStep = entries.stream().collect(groupingBy(entry -> entry.deed().at()));
    }

    /** The progress by a method, with its entries in the order they were made. */
    public static Progress of(Method method, List<ProgressEntry> entries) {
        return new Progress(method, entries);
    }

    public Method method() {
        return method;
    }

    public List<ProgressEntry> entries() {
        return entries;
    }

    /** Every step in the order of the work. */
    public Stream<StepAt> steps() {
        return method.setUps().stream()
                .flatMap(setUp ->
                        IntStream.rangeClosed(1, method.count()).boxed().flatMap(piece -> steps(setUp, piece)));
    }

    private static Stream<StepAt> steps(SetUp setUp, int piece) {
        return setUp.operations().stream().map(operation -> new StepAt(setUp.number(), operation.number(), piece));
    }

    /** The operation at a step; empty when the method has no such step. */
    public Optional<Operation> operation(StepAt at) {
        boolean piece = at.piece() >= 1 && at.piece() <= method.count();
        return method.setUps().stream()
                .filter(setUp -> piece && setUp.number() == at.setUp())
                .map(SetUp::operations)
                .flatMap(List::stream)
                .filter(operation -> operation.number() == at.operation())
                .findFirst();
    }

    public boolean isTicked(StepAt at) {
        return tick(at).isPresent();
    }

    /** Who ticked a step and when; empty while it is not done. */
    public Optional<Signed> tick(StepAt at) {
        return last(at, entry -> switch (entry.deed()) {
                    case Ticked ticked -> true;
                    case Unticked unticked -> true;
                    case Measured measured -> false;
                    case HoldPassed passed -> false;
                })
                .filter(entry -> entry.deed() instanceof Ticked)
                .map(ProgressEntry::by);
    }

    /** The latest of one of a step's readings, counted from 1; empty while it is not taken. */
    public Optional<Taken> taken(StepAt at, int reading) {
        return readings(at).stream()
                .skip(Math.max(0, reading - 1))
                .findFirst()
                .flatMap(wanted -> taken(at, reading, wanted));
    }

    private Optional<Taken> taken(StepAt at, int reading, Reading wanted) {
        return last(at, entry -> entry.deed() instanceof Measured measured && measured.reading() == reading)
                .map(entry -> Taken.of(wanted, (Measured) entry.deed(), entry));
    }

    /** The latest of all readings taken at a step, in the order the operation asks for them. */
    public List<Taken> taken(StepAt at) {
        return IntStream.rangeClosed(1, readings(at).size())
                .mapToObj(reading -> taken(at, reading))
                .flatMap(Optional::stream)
                .toList();
    }

    private List<Reading> readings(StepAt at) {
        return operation(at).map(Operation::readings).orElse(List.of());
    }

    /** Whether every reading a step asks for has been taken and lies within its limits. */
    public boolean isIn(StepAt at) {
        List<Taken> taken = taken(at);
        return taken.size() == readings(at).size()
                && taken.stream().allMatch(reading -> reading.verdict() == Verdict.IN);
    }

    /** Who passed a step's hold point and when; empty while nobody has, or when a reading was taken after that. */
    public Optional<Signed> holdPassed(StepAt at) {
        return last(at, entry -> switch (entry.deed()) {
                    case HoldPassed passed -> true;
                    case Measured measured -> true;
                    case Ticked ticked -> false;
                    case Unticked unticked -> false;
                })
                .filter(entry -> entry.deed() instanceof HoldPassed)
                .map(ProgressEntry::by);
    }

    /** The first step of the work that is not done; empty when all is done. */
    public Optional<StepAt> next() {
        return steps().filter(at -> !isTicked(at)).findFirst();
    }

    /** The hold point before a step, on the same piece, that nobody has passed; empty when the way is free. */
    public Optional<StepAt> heldAt(StepAt at) {
        return method.setUps().stream()
                .flatMap(setUp -> steps(setUp, at.piece()))
                .takeWhile(step -> !step.equals(at))
                .filter(step -> operation(step).filter(Operation::hold).isPresent())
                .filter(step -> holdPassed(step).isEmpty())
                .findFirst();
    }

    /** How many steps are done. */
    public int done() {
        return Math.toIntExact(steps().filter(this::isTicked).count());
    }

    /** How many steps there are in all. */
    public int all() {
        return Math.toIntExact(steps().count());
    }

    private Optional<ProgressEntry> last(StepAt at, Predicate<ProgressEntry> counts) {
        return byStep.getOrDefault(at, List.of()).reversed().stream()
                .filter(counts)
                .findFirst();
    }
}
