package chargehand.method.replay;

import static chargehand.method.replay.Steps.mm;

import chargehand.measure.Length;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Method;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;

/** Breaks one thing in a method, somewhere at random where it makes a difference. */
enum Mutator implements Breaking {
    /** Two operations change places. Harmless where the trade fixes no order between the two. */
    SWAP {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            return Sites.any(method, random, site -> site.number() < site.last())
                    .map(site -> new Mutant(
                            Edits.in(method).swapped(site.setUp(), site.number()),
                            !Depends.follows(site.next(), site.cut())));
        }
    },

    /** An operation is left out. Harmless where it only made the next one lighter. */
    SKIP {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            return Sites.any(method, random, site -> true)
                    .map(site ->
                            new Mutant(Edits.in(method).without(site.setUp(), site.number()), Depends.isSpare(site)));
        }
    },

    TWICE {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            return Sites.any(method, random, site -> !(site.cut() instanceof Cut.Deburr))
                    .map(site -> Edits.in(method).twice(site.setUp(), site.number()))
                    .map(Mutant::harmful);
        }
    },

    SHORT_GRIP {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            return grip(
                    method,
                    random,
                    grip -> new Holding.Grip(grip.from(), grip.from().plus(mm(2)), grip.diameter()));
        }
    },

    GRIP_ASIDE {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            return grip(
                    method,
                    random,
                    grip -> new Holding.Grip(
                            grip.from().plus(mm(600)), grip.to().plus(mm(600)), grip.diameter()));
        }
    },

    GRIP_OTHER_SIZE {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
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
        Optional<Mutant> broken(Method method, Random random) {
            return Sites.setUp(method, random, setUp -> Grips.isPacked(setUp.holding()))
                    .map(setUp -> Edits.in(method).holding(setUp.number(), Grips::bare))
                    .map(Mutant::harmful);
        }
    },

    TURNED_ROUND {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            return Sites.setUp(method, random, setUp -> setUp.holding() instanceof Holding.InChuck)
                    .map(setUp -> Edits.in(method).holding(setUp.number(), Grips::turnedRound))
                    .map(Mutant::harmful);
        }
    },

    OTHER_MACHINE {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            return Sites.setUp(method, random, setUp -> true)
                    .map(setUp -> Edits.in(method)
                            .machine(
                                    setUp.number(),
                                    setUp.machine().equals("large lathe") ? "small lathe" : "large lathe"))
                    .map(Mutant::harmful);
        }
    },

    /** A size a tenth off. Harmless where a reamer finishes the hole. */
    SIZE_OFF {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            Length by = mm(random.nextBoolean() ? 0.1 : -0.1);
            return Sites.any(
                            method,
                            random,
                            site -> !Depends.isSpare(site)
                                    && Resized.by(site.operation(), by).isPresent())
                    .map(site -> new Mutant(
                            Edits.in(method)
                                    .operation(
                                            site.setUp(),
                                            site.number(),
                                            each -> Resized.by(each, by).orElseThrow()),
                            Sites.after(method, site).stream()
                                    .anyMatch(later -> Depends.isReamed(site.cut(), later.cut()))));
        }
    },

    PLACE_OFF {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            Length by = mm(random.nextBoolean() ? 0.2 : -0.2);
            return Sites.any(method, random, site -> Shifted.by(site.cut(), by).isPresent())
                    .map(site -> Edits.in(method)
                            .cut(
                                    site.setUp(),
                                    site.number(),
                                    each -> Shifted.by(each, by).orElseThrow()))
                    .map(Mutant::harmful);
        }
    },

    PASS_TOO_DEEP {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            return Sites.any(method, random, Sites.Site::hasPasses)
                    .map(site -> Edits.in(method)
                            .settings(site.setUp(), site.number(), set -> SettingsEdits.tooDeep(set, random)))
                    .map(Mutant::harmful);
        }
    },

    DIAL_OFF {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            return Sites.any(method, random, Sites.Site::hasPasses)
                    .map(site -> Edits.in(method)
                            .settings(site.setUp(), site.number(), set -> SettingsEdits.misread(set, random)))
                    .map(Mutant::harmful);
        }
    },

    WRONG_WHEEL {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            return Sites.any(method, random, site -> site.settings().gearing().isPresent())
                    .map(site -> Edits.in(method)
                            .settings(site.setUp(), site.number(), set -> SettingsEdits.otherWheel(set, random)))
                    .map(Mutant::harmful);
        }
    },

    WRONG_HOLES {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            return Sites.any(method, random, site -> site.settings().indexing().isPresent())
                    .map(site -> Edits.in(method).settings(site.setUp(), site.number(), SettingsEdits::oneHoleMore))
                    .map(Mutant::harmful);
        }
    },

    WRONG_SPEED {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            return Sites.any(method, random, site -> site.settings().speed().isPresent())
                    .map(site -> Edits.in(method)
                            .settings(site.setUp(), site.number(), set -> SettingsEdits.speed(set, 431)))
                    .map(Mutant::harmful);
        }
    },

    WRONG_FEED {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            return Sites.any(method, random, site -> site.settings().feed().isPresent())
                    .map(site -> Edits.in(method)
                            .settings(site.setUp(), site.number(), set -> SettingsEdits.feed(set, 0.77)))
                    .map(Mutant::harmful);
        }
    },

    WRONG_TOOL {
        @Override
        Optional<Mutant> broken(Method method, Random random) {
            return Sites.any(
                            method,
                            random,
                            site -> !(site.cut() instanceof Cut.Deburr || site.cut() instanceof Cut.SawOff))
                    .map(site -> Edits.in(method)
                            .settings(site.setUp(), site.number(), set -> SettingsEdits.tool(set, "boring head")))
                    .map(Mutant::harmful);
        }
    };

    /** The method with one thing broken; nothing where it has no such thing. */
    abstract Optional<Mutant> broken(Method method, Random random);

    @Override
    public Optional<Mutant> broken(Good good, Random random) {
        return broken(good.method(), random);
    }

    private static Optional<Mutant> grip(Method method, Random random, UnaryOperator<Holding.Grip> change) {
        return Sites.setUp(method, random, setUp -> Grips.has(setUp.holding()))
                .map(setUp -> Edits.in(method).holding(setUp.number(), held -> Grips.changed(held, change)))
                .map(Mutant::harmful);
    }
}
