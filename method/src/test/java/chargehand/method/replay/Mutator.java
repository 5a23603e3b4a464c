package chargehand.method.replay;

import static chargehand.method.replay.Steps.mm;

import chargehand.measure.Length;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Method;
import chargehand.method.plan.Operation;
import chargehand.method.plan.SetUp;
import chargehand.method.plan.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/** Breaks one thing in a method, somewhere at random where it makes a difference. */
enum Mutator {
    /** Two operations whose order the trade fixes change places. */
    SWAP {
        @Override
        Optional<Method> broken(Method method, Random random) {
            return site(method, random, site -> site.number() < site.last() && Depends.follows(site.next(), site.cut()))
                    .map(site -> Edits.in(method).swapped(site.setUp(), site.number()));
        }
    },

    SKIP {
        @Override
        Optional<Method> broken(Method method, Random random) {
            return site(method, random, site -> !Depends.isSpare(site))
                    .map(site -> Edits.in(method).without(site.setUp(), site.number()));
        }
    },

    TWICE {
        @Override
        Optional<Method> broken(Method method, Random random) {
            return site(method, random, site -> !(site.cut() instanceof Cut.Deburr))
                    .map(site -> Edits.in(method).twice(site.setUp(), site.number()));
        }
    },

    SHORT_GRIP {
        @Override
        Optional<Method> broken(Method method, Random random) {
            return grip(
                    method,
                    random,
                    grip -> new Holding.Grip(grip.from(), grip.from().plus(mm(2)), grip.diameter()));
        }
    },

    GRIP_ASIDE {
        @Override
        Optional<Method> broken(Method method, Random random) {
            return grip(
                    method,
                    random,
                    grip -> new Holding.Grip(
                            grip.from().plus(mm(600)), grip.to().plus(mm(600)), grip.diameter()));
        }
    },

    GRIP_OTHER_SIZE {
        @Override
        Optional<Method> broken(Method method, Random random) {
            return grip(
                    method,
                    random,
                    grip -> new Holding.Grip(
                            grip.from(), grip.to(), grip.diameter().plus(mm(1.5))));
        }
    },

    /** Jaws that were packed, or opened packed in a bore, are used bare. */
    BARE_JAWS {
        @Override
        Optional<Method> broken(Method method, Random random) {
            return setUp(method, random, setUp -> Grips.isPacked(setUp.holding()))
                    .map(setUp -> Edits.in(method).holding(setUp.number(), Grips::bare));
        }
    },

    TURNED_ROUND {
        @Override
        Optional<Method> broken(Method method, Random random) {
            return setUp(method, random, setUp -> setUp.holding() instanceof Holding.InChuck)
                    .map(setUp -> Edits.in(method).holding(setUp.number(), Grips::turnedRound));
        }
    },

    OTHER_MACHINE {
        @Override
        Optional<Method> broken(Method method, Random random) {
            return setUp(method, random, setUp -> true)
                    .map(setUp -> Edits.in(method)
                            .machine(
                                    setUp.number(),
                                    setUp.machine().equals("large lathe") ? "small lathe" : "large lathe"));
        }
    },

    SIZE_OFF {
        @Override
        Optional<Method> broken(Method method, Random random) {
            Length by = mm(random.nextBoolean() ? 0.1 : -0.1);
            return site(
                            method,
                            random,
                            site -> !Depends.isSpare(site)
                                    && Resized.by(site.operation(), by).isPresent())
                    .map(site -> Edits.in(method)
                            .operation(
                                    site.setUp(),
                                    site.number(),
                                    each -> Resized.by(each, by).orElseThrow()));
        }
    },

    PLACE_OFF {
        @Override
        Optional<Method> broken(Method method, Random random) {
            Length by = mm(random.nextBoolean() ? 0.2 : -0.2);
            return site(method, random, site -> Shifted.by(site.cut(), by).isPresent())
                    .map(site -> Edits.in(method)
                            .cut(
                                    site.setUp(),
                                    site.number(),
                                    each -> Shifted.by(each, by).orElseThrow()));
        }
    },

    PASS_TOO_DEEP {
        @Override
        Optional<Method> broken(Method method, Random random) {
            return site(method, random, Site::hasPasses)
                    .map(site -> Edits.in(method)
                            .settings(site.setUp(), site.number(), set -> SettingsEdits.tooDeep(set, random)));
        }
    },

    DIAL_OFF {
        @Override
        Optional<Method> broken(Method method, Random random) {
            return site(method, random, Site::hasPasses)
                    .map(site -> Edits.in(method)
                            .settings(site.setUp(), site.number(), set -> SettingsEdits.misread(set, random)));
        }
    },

    WRONG_WHEEL {
        @Override
        Optional<Method> broken(Method method, Random random) {
            return site(method, random, site -> site.settings().gearing().isPresent())
                    .map(site -> Edits.in(method)
                            .settings(site.setUp(), site.number(), set -> SettingsEdits.otherWheel(set, random)));
        }
    },

    WRONG_HOLES {
        @Override
        Optional<Method> broken(Method method, Random random) {
            return site(method, random, site -> site.settings().indexing().isPresent())
                    .map(site -> Edits.in(method).settings(site.setUp(), site.number(), SettingsEdits::oneHoleMore));
        }
    },

    WRONG_SPEED {
        @Override
        Optional<Method> broken(Method method, Random random) {
            return site(method, random, site -> site.settings().speed().isPresent())
                    .map(site -> Edits.in(method)
                            .settings(site.setUp(), site.number(), set -> SettingsEdits.speed(set, 431)));
        }
    },

    WRONG_FEED {
        @Override
        Optional<Method> broken(Method method, Random random) {
            return site(method, random, site -> site.settings().feed().isPresent())
                    .map(site -> Edits.in(method)
                            .settings(site.setUp(), site.number(), set -> SettingsEdits.feed(set, 0.77)));
        }
    },

    WRONG_TOOL {
        @Override
        Optional<Method> broken(Method method, Random random) {
            return site(method, random, site -> !(site.cut() instanceof Cut.Deburr || site.cut() instanceof Cut.SawOff))
                    .map(site -> Edits.in(method)
                            .settings(site.setUp(), site.number(), set -> SettingsEdits.tool(set, "boring head")));
        }
    };

    /** The method with one thing broken; nothing where it has no such thing. */
    abstract Optional<Method> broken(Method method, Random random);

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

    private static Optional<Site> site(Method method, Random random, Predicate<Site> fits) {
        var sites = new ArrayList<Site>();
        for (SetUp setUp : method.setUps()) {
            for (Operation operation : setUp.operations()) {
                sites.add(new Site(setUp.number(), setUp.operations(), operation.number()));
            }
        }
        return any(sites.stream().filter(fits).toList(), random);
    }

    private static Optional<SetUp> setUp(Method method, Random random, Predicate<SetUp> fits) {
        return any(method.setUps().stream().filter(fits).toList(), random);
    }

    private static Optional<Method> grip(Method method, Random random, UnaryOperator<Holding.Grip> change) {
        return setUp(method, random, setUp -> Grips.has(setUp.holding()))
                .map(setUp -> Edits.in(method).holding(setUp.number(), held -> Grips.changed(held, change)));
    }

    private static <T> Optional<T> any(List<T> list, Random random) {
        return list.isEmpty() ? Optional.empty() : Optional.of(list.get(random.nextInt(list.size())));
    }
}
