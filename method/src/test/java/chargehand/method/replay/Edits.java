package chargehand.method.replay;

import chargehand.method.plan.Blank;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Method;
import chargehand.method.plan.Method.StockUse;
import chargehand.method.plan.Operation;
import chargehand.method.plan.SetUp;
import chargehand.method.plan.Settings;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;

/** Ways of changing one thing in a method. Set-ups and operations are named by their numbers, from 1. */
final class Edits {
    private final Method method;

    private Edits(Method method) {
        this.method = method;
    }

    static Edits in(Method method) {
        return new Edits(method);
    }

    Method blank(Blank blank) {
        StockUse stock = method.stock();
        var use = new StockUse(stock.piece(), stock.says(), blank, stock.pieces(), stock.working(), stock.passedOver());
        return new Method(method.title(), method.issue(), method.count(), use, method.setUps(), method.cautions());
    }

    Method setUps(UnaryOperator<List<SetUp>> change) {
        List<SetUp> setUps = change.apply(new ArrayList<>(method.setUps()));
        return new Method(
                method.title(), method.issue(), method.count(), method.stock(), renumbered(setUps), method.cautions());
    }

    private static List<SetUp> renumbered(List<SetUp> setUps) {
        var numbered = new ArrayList<SetUp>();
        for (SetUp each : setUps) {
            numbered.add(with(each, numbered.size() + 1, each.machine(), each.holding(), each.operations()));
        }
        return numbered;
    }

    private static SetUp with(SetUp setUp, int number, String machine, Holding holding, List<Operation> operations) {
        return new SetUp(
                number,
                machine,
                holding,
                setUp.instructions(),
                Steps.numbered(operations),
                setUp.setting(),
                setUp.loading(),
                setUp.working());
    }

    private Method setUp(int number, UnaryOperator<SetUp> change) {
        return setUps(setUps -> {
            setUps.set(number - 1, change.apply(setUps.get(number - 1)));
            return setUps;
        });
    }

    Method machine(int setUp, String machine) {
        return setUp(setUp, each -> with(each, setUp, machine, each.holding(), each.operations()));
    }

    Method holding(int setUp, UnaryOperator<Holding> change) {
        return setUp(setUp, each -> with(each, setUp, each.machine(), change.apply(each.holding()), each.operations()));
    }

    Method operations(int setUp, UnaryOperator<List<Operation>> change) {
        return setUp(
                setUp,
                each -> with(
                        each, setUp, each.machine(), each.holding(), change.apply(new ArrayList<>(each.operations()))));
    }

    Method operation(int setUp, int operation, UnaryOperator<Operation> change) {
        return operations(setUp, operations -> {
            operations.set(operation - 1, change.apply(operations.get(operation - 1)));
            return operations;
        });
    }

    Method cut(int setUp, int operation, UnaryOperator<Cut> change) {
        return operation(setUp, operation, each -> Steps.with(each, change.apply(each.cut())));
    }

    Method settings(int setUp, int operation, UnaryOperator<Settings> change) {
        return operation(setUp, operation, each -> Steps.with(each, change.apply(each.settings())));
    }

    Method without(int setUp, int operation) {
        return operations(setUp, operations -> {
            operations.remove(operation - 1);
            return operations;
        });
    }

    Method twice(int setUp, int operation) {
        return operations(setUp, operations -> {
            operations.add(operation, operations.get(operation - 1));
            return operations;
        });
    }

    /** An operation and the one after it change places. */
    Method swapped(int setUp, int operation) {
        return operations(setUp, operations -> {
            Collections.swap(operations, operation - 1, operation);
            return operations;
        });
    }

    Method moved(int setUp, int from, int to) {
        return operations(setUp, operations -> {
            operations.add(to - 1, operations.remove(from - 1));
            return operations;
        });
    }
}
