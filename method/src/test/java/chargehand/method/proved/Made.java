package chargehand.method.proved;

import chargehand.measure.Length;
import chargehand.method.kit.Kit;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Method;
import chargehand.method.plan.Operation;
import chargehand.method.plan.SetUp;
import chargehand.method.task.Bores;
import chargehand.part.Body;
import chargehand.part.Part;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One part with the method planned for it, looked at as a turner would.
 *
 * @param mostSetUps how many set-ups a turner would take at the most, sawing counted
 */
record Made(Part part, Method method, Kit kit, int mostSetUps) {
    private static final Length NEAR = Length.mm(0.2);

    List<SetUp> setUps() {
        return method.setUps();
    }

    Stream<Operation> operations() {
        return setUps().stream().flatMap(setUp -> setUp.operations().stream());
    }

    /** The set-ups in which something of this kind is cut. */
    List<SetUp> with(Class<? extends Cut> kind) {
        return setUps().stream().filter(setUp -> cuts(setUp, kind)).toList();
    }

    static boolean cuts(SetUp setUp, Class<? extends Cut> kind) {
        return setUp.operations().stream().anyMatch(operation -> kind.isInstance(operation.cut()));
    }

    boolean isTurned() {
        return part.body() instanceof Body.Turned;
    }

    /** The last set-up in which a named surface, outside or inside, is brought to size; empty where nothing cuts it. */
    Optional<SetUp> finished(String name) {
        Optional<SetUp> last = Optional.empty();
        for (SetUp setUp : setUps()) {
            if (setUp.operations().stream().anyMatch(operation -> finishes(operation, name))) {
                last = Optional.of(setUp);
            }
        }
        return last;
    }

    /** A reading names the surface it is taken of; a surface read nowhere is known by where it lies. */
    private boolean finishes(Operation operation, String name) {
        boolean read = operation.readings().stream()
                .anyMatch(reading ->
                        reading.what().endsWith(name) && !reading.what().contains("second " + name));
        return read || lies(operation.cut(), name);
    }

    private boolean lies(Cut cut, String name) {
        if (!(part.body() instanceof Body.Turned body)) {
            return false;
        }
        for (int i = 0; i < body.outside().size(); i++) {
            if (body.outside().get(i).name().equals(name)) {
                Length middle =
                        body.start(i).plus(body.outside().get(i).length().half());
                return covers(cut, middle);
            }
        }
        return body.inside().stream()
                .filter(bore -> bore.name().equals(name))
                .anyMatch(bore -> sizes(cut, Bores.diameter(bore)));
    }

    /** A bore is aimed at the middle of its limits, so near its nominal. */
    private static boolean sizes(Cut cut, Length diameter) {
        return switch (cut) {
            case Cut.ReamTo reamed -> reamed.diameter().isWithin(NEAR, diameter);
            case Cut.BoreTo bored -> bored.diameter().isWithin(NEAR, diameter);
            default -> false;
        };
    }

    private static boolean covers(Cut cut, Length middle) {
        return switch (cut) {
            case Cut.TurnDiameter turned ->
                turned.from().isLessThan(middle) && turned.to().isMoreThan(middle);
            case Cut.TurnTaper turned ->
                turned.from().isLessThan(middle) && turned.to().isMoreThan(middle);
            default -> false;
        };
    }

    /** Whether a holding is true by what it bears on, to what it says itself. */
    static boolean isTrueByItself(Holding holding) {
        return switch (holding) {
            case Holding.OnMandrel mandrel -> true;
            case Holding.OnStub stub -> true;
            case Holding.BetweenCentres centres -> true;
            case Holding.InCollet collet -> true;
            case Holding.OnFaceplate plate -> true;
            case Holding.InChuck chuck ->
                chuck.jaws() == 4
                        || chuck.bearing() instanceof Holding.Bearing.SoftJaws
                        || chuck.bearing() instanceof Holding.Bearing.SplitBush;
            case Holding.InDividingHead head -> false;
            case Holding.LaidAcross laid -> false;
            case Holding.InVice vice -> false;
            case Holding.OnTable table -> false;
            case Holding.Clamped clamped -> false;
        };
    }
}
