package chargehand.paper.sheet;

import chargehand.measure.WorkTimeText;
import chargehand.method.plan.Method;
import chargehand.method.plan.Operation;
import chargehand.method.plan.Reading;
import chargehand.method.plan.SetUp;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The first page: what it is made from, the set-ups in a table, what to fetch, and what to mind. */
final class Overview {
    private static final List<Double> COLUMNS = List.of(0.0, 12.0, 50.0, 112.0, 148.0);

    private final Method method;

    Overview(Method method) {
        this.method = method;
    }

    List<Row> rows() {
        var rows = new ArrayList<Row>();
        rows.add(Rows.fact(
                "Stock", method.stock().piece() + ": " + method.stock().says()));
        method.stock().working().forEach(step -> rows.add(Rows.fact("", step.say() + ": " + step.result())));
        rows.add(Rows.fact("Time", WorkTimeText.of(method.time()) + " for all " + method.count()));
        rows.add(Rows.heading("Set-ups"));
        rows.add(Rows.columns(Type.SMALL, List.of("", "machine", "held", "operations", "time"), COLUMNS));
        method.setUps().forEach(setUp -> rows.add(line(setUp)));
        method.cautions().forEach(caution -> rows.add(Rows.care(caution)));
        rows.add(Rows.heading("Fetch before you begin"));
        rows.addAll(Rows.ticks(tools(), 3));
        return rows;
    }

    private Row line(SetUp setUp) {
        return Rows.columns(
                Type.BODY,
                List.of(
                        String.valueOf(setUp.number()),
                        setUp.machine(),
                        HeldIn.say(setUp.holding()),
                        String.valueOf(setUp.operations().size()),
                        WorkTimeText.of(setUp.time(method.count()))),
                COLUMNS);
    }

    /** Every tool and gauge once, in the order it is first needed. */
    private List<String> tools() {
        return method.setUps().stream()
                .flatMap(setUp -> setUp.operations().stream())
                .flatMap(Overview::needs)
                .distinct()
                .toList();
    }

    private static Stream<String> needs(Operation operation) {
        return Stream.concat(
                Stream.of(operation.settings().tool()),
                operation.readings().stream().map(Reading::gauge));
    }
}
