package chargehand.web.job;

import chargehand.book.method.Finding;
import chargehand.book.method.MethodRecord;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.WorkTimeText;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Method;
import chargehand.method.plan.Operation;
import chargehand.method.plan.SetUp;
import chargehand.paper.sheet.HeldIn;
import chargehand.web.serving.Why;
import java.util.ArrayList;
import java.util.List;

/** What a method rests on: the stock, the holdings, the ways its threads are cut, the time, the proof. */
public final class Grounds {
    private Grounds() {}

    /** The facts of a planning; none when no method was found. */
    public static List<Why> of(MethodRecord planned) {
        return switch (planned.finding()) {
            case Finding.Found found -> of(found);
            case Finding.NotHere notHere -> List.of();
        };
    }

    private static List<Why> of(Finding.Found found) {
        Method method = found.method();
        var facts = new ArrayList<Why>();
        facts.add(stock(method));
        method.setUps().forEach(setUp -> facts.add(held(setUp)));
        method.setUps().stream()
                .flatMap(setUp -> setUp.operations().stream())
                .filter(Grounds::isThread)
                .forEach(operation -> facts.add(new Why("Thread", operation.say(), operation.working())));
        facts.add(new Why("Time", WorkTimeText.of(method.time()) + " for " + method.count() + " off", List.of()));
        found.bound().ifPresent(bound -> facts.add(new Why("How quick", bound.says(), List.of())));
        facts.add(new Why("Proof", proof(found), List.of()));
        return facts;
    }

    private static Why stock(Method method) {
        Method.StockUse stock = method.stock();
        return new Why("Stock", stock.piece() + ": " + stock.says(), stock.working());
    }

    private static Why held(SetUp setUp) {
        return new Why(
                "Set-up " + setUp.number(), setUp.machine() + ", " + HeldIn.say(setUp.holding()), setUp.working());
    }

    private static boolean isThread(Operation operation) {
        return operation.cut() instanceof Cut.ThreadOutside
                || operation.cut() instanceof Cut.ThreadInside
                || operation.cut() instanceof Cut.TapHole;
    }

    private static String proof(Finding.Found found) {
        return proof(found.proof().made(), LengthText.in(found.proof().worst(), LengthUnit.MILLIMETRE)) + ". "
                + found.weighed() + (found.weighed() == 1 ? " way" : " ways") + " of making it weighed";
    }

    private static String proof(boolean made, String worst) {
        return made
                ? "replayed cut by cut, it comes out as drawn (greatest difference " + worst + ")"
                : "replayed cut by cut, it does not come out as drawn";
    }
}
