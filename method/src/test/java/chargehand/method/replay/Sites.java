package chargehand.method.replay;

import chargehand.method.plan.Cut;
import chargehand.method.plan.Method;
import chargehand.method.plan.Operation;
import chargehand.method.plan.SetUp;
import chargehand.method.plan.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Predicate;

/** Where in a method something can be changed. */
final class Sites {
    private Sites() {}

    /** One operation and where it stands. */
    record Site(int setUp, List<Operation> operations, int number) {
        Operation operation() {
            return operations.get(number - 1);
        }

        Cut cut() {
            return operation().cut();
        }

        Settings settings() {
            return operation().settings();
        }

        int last() {
            return operations.size();
        }

        Cut next() {
            return operations.get(number).cut();
        }

        boolean hasPasses() {
            return !settings().passes().isEmpty();
        }
    }

    static Optional<Site> any(Method method, Random random, Predicate<Site> fits) {
        return any(list(method).stream().filter(fits).toList(), random);
    }

    /** Every operation, in order. */
    static List<Site> list(Method method) {
        var sites = new ArrayList<Site>();
        for (SetUp setUp : method.setUps()) {
            for (Operation operation : setUp.operations()) {
                sites.add(new Site(setUp.number(), setUp.operations(), operation.number()));
            }
        }
        return sites;
    }

    /** Every operation after one, in order. */
    static List<Site> after(Method method, Site site) {
        return list(method).stream()
                .filter(each ->
                        each.setUp() > site.setUp() || (each.setUp() == site.setUp() && each.number() > site.number()))
                .toList();
    }

    static Optional<SetUp> setUp(Method method, Random random, Predicate<SetUp> fits) {
        return any(method.setUps().stream().filter(fits).toList(), random);
    }

    private static <T> Optional<T> any(List<T> list, Random random) {
        return list.isEmpty() ? Optional.empty() : Optional.of(list.get(random.nextInt(list.size())));
    }
}
