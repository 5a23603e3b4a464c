package chargehand.method.replay;

import chargehand.method.plan.Blank;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Method;
import chargehand.method.plan.Operation;
import chargehand.method.plan.SetUp;

/** Sawing a blank from its bar or plate: the first operation of all, and the blank is what it leaves. */
final class Sawing {
    private Sawing() {}

    /** Whether a method begins by sawing off its blank. */
    static boolean isFirst(Method method) {
        return method.setUps().getFirst().operations().stream()
                .findFirst()
                .filter(first -> first.cut() instanceof Cut.SawOff saw
                        && leaves(saw, method.stock().blank()))
                .isPresent();
    }

    /** Whether an operation stands where the blank is sawn. */
    static boolean isOfBlank(Operation operation, SetUp setUp) {
        return operation.cut() instanceof Cut.SawOff && operation.number() == 1 && setUp.number() == 1;
    }

    private static boolean leaves(Cut.SawOff saw, Blank blank) {
        return switch (blank) {
            case Blank.RoundBar bar -> saw.from().equals(bar.from()) && saw.to().equals(bar.to());
            case Blank.PolygonBar bar ->
                saw.from().equals(bar.from()) && saw.to().equals(bar.to());
            case Blank.OldPart old -> false;
            case Blank.Slab slab ->
                saw.from().isZero()
                        && (saw.to().equals(slab.length()) || saw.to().equals(slab.width()));
        };
    }
}
