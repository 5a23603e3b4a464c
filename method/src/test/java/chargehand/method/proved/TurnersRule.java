package chargehand.method.proved;

import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Operation;
import chargehand.method.plan.SetUp;
import chargehand.part.Tie;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BiConsumer;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** What a turner insists on for some parts and not for others. All common practice. */
enum TurnersRule {
    /** What is tied by run-out is finished in one holding, or the later one is held as true as the tie asks. */
    TIED((made, broken) -> {
        for (Tie tie : made.part().ties()) {
            SetUp of = made.finished(tie.of()).orElseThrow();
            SetUp to = made.finished(tie.to()).orElseThrow();
            SetUp later = of.number() > to.number() ? of : to;
            boolean trueEnough = Made.isTrueByItself(later.holding())
                    && !later.holding().runOut().isMoreThan(tie.runOut().length());
            if (of.number() != to.number() && !trueEnough) {
                broken.add(tie.of() + " and " + tie.to() + " are tied, and set-up " + later.number()
                        + " is not held so true");
            }
        }
    }),
    /** A batch from bar: parted off in one set-up, nothing sawn. */
    FROM_BAR((made, broken) -> {
        if (made.with(Cut.PartOff.class).size() != 1
                || !made.with(Cut.SawOff.class).isEmpty()) {
            broken.add("not made from bar and parted off");
        }
    }),
    /** Bar too thick for the spindle, or a long piece: sawn off first. */
    SAWN((made, broken) -> {
        if (!Made.cuts(made.setUps().getFirst(), Cut.SawOff.class)) {
            broken.add("not sawn off first");
        }
    }),
    /** The long stretch is turned with a centre or a steady. */
    SUPPORTED((made, broken) -> {
        if (made.setUps().stream().noneMatch(setUp -> Made.cuts(setUp, Cut.TurnDiameter.class) && isSupported(setUp))) {
            broken.add("nothing supports the long work while it is turned");
        }
    }),
    /** Only one lathe swings or grips it: all its turning is done on the large one. */
    LARGE_LATHE((made, broken) -> turning(made)
            .filter(setUp -> !setUp.machine().equals("large lathe"))
            .forEach(setUp -> broken.add("set-up " + setUp.number() + " is on the " + setUp.machine()))),
    /** Outside threads are made with a die led from the tailstock. */
    DIE((made, broken) -> {
        ifNone(made, TurnersRule::isByDie, broken, "no thread is made with a die");
    }),
    /** Outside threads are screw-cut, the train written down. */
    SCREW_CUT((made, broken) -> {
        ifNone(
                made,
                operation -> operation.cut() instanceof Cut.ThreadOutside
                        && !isByDie(operation)
                        && operation.settings().gearing().isPresent(),
                broken,
                "no thread is screw-cut with its train given");
    }),
    /** A left-hand thread runs away from the headstock. */
    LEFT_HAND((made, broken) -> {
        ifNone(made, operation -> operation.say().contains("away from the headstock"), broken, "not cut outwards");
    }),
    /** Later work is held true on its own finished bore. */
    ON_ITS_BORE((made, broken) -> {
        if (made.setUps().stream().noneMatch(setUp -> isOnBore(setUp.holding()))) {
            broken.add("never held on its bore");
        }
    }),
    /** Once it is bored thin, no hard jaws close on it. */
    THIN((made, broken) -> {
        int bored = made.with(Cut.BoreTo.class).getLast().number();
        made.setUps().stream()
                .filter(setUp -> setUp.number() > bored
                        && setUp.holding() instanceof Holding.InChuck chuck
                        && chuck.bearing() instanceof Holding.Bearing.Closing)
                .forEach(setUp -> broken.add("set-up " + setUp.number() + " closes hard jaws on a thin wall"));
    }),
    /** Cross holes, flats and keyways come when all turning is done. */
    ACROSS_LAST((made, broken) -> {
        int turned = turning(made).toList().getLast().number();
        made.setUps().stream()
                .filter(setUp -> Made.cuts(setUp, Cut.DrillAcross.class) || Made.cuts(setUp, Cut.MillKeyway.class))
                .filter(setUp -> setUp.number() < turned)
                .forEach(setUp -> broken.add("set-up " + setUp.number() + " works across before the turning is done"));
    }),
    /** A hexagon comes from hexagon bar; nobody mills six flats that can be bought. */
    HEXAGON_BAR((made, broken) -> {
        if (!made.with(Cut.MillFlats.class).isEmpty()) {
            broken.add("flats are milled though the bar has them");
        }
    }),
    /** A square: four cuts, a quarter turn of the head apart. */
    QUARTER_TURNS((made, broken) -> {
        ifNone(
                made,
                operation -> operation.cut() instanceof Cut.MillFlats
                        && operation
                                .settings()
                                .indexing()
                                .filter(index -> index.turns() == 10 && index.holes() == 0)
                                .isPresent(),
                broken,
                "no square milled by quarter turns");
    }),
    /** A wide drill follows a narrower one. */
    STEPPED_DRILL((made, broken) -> {
        long drills = made.operations()
                .filter(operation -> operation.cut() instanceof Cut.DrillAxial)
                .count();
        if (drills < 2) {
            broken.add("a wide hole is drilled at one go");
        }
    }),
    /** A deep hole is cleared of its chips on the way. */
    PECKED((made, broken) -> {
        ifNone(made, operation -> operation.say().contains("clear the chips"), broken, "no chips are cleared");
    }),
    /** A short taper is turned with the top slide at its angle. */
    TOP_SLIDE((made, broken) -> {
        ifNone(made, operation -> operation.settings().topSlide().isPresent(), broken, "no top slide angle given");
    }),
    /** The faces of a block are true before it is drilled, and drilled before it is reamed or tapped. */
    FACES_FIRST((made, broken) -> {
        int faced = made.with(Cut.MillFace.class).getLast().number();
        made.with(Cut.DrillHole.class).stream()
                .filter(setUp -> setUp.number() <= faced)
                .forEach(setUp -> broken.add("set-up " + setUp.number() + " drills before the faces are true"));
    }),
    /** Something is so fine that somebody else passes it before work goes on. */
    HELD((made, broken) -> {
        ifNone(made, Operation::hold, broken, "no hold point");
    });

    /** A pure function, though its type does not say so. */
    @SuppressWarnings("ImmutableEnumChecker")
    private final BiConsumer<Made, List<String>> check;

    TurnersRule(BiConsumer<Made, List<String>> check) {
        this.check = check;
    }

    /** The rule written in lower case with hyphens. */
    static TurnersRule of(String written) {
        return valueOf(written.toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    /** How the method breaks it. */
    List<String> broken(Made made) {
        var broken = new ArrayList<String>();
        check.accept(made, broken);
        return broken;
    }

    private static Stream<SetUp> turning(Made made) {
        return made.setUps().stream()
                .filter(setUp -> Made.cuts(setUp, Cut.TurnDiameter.class)
                        || Made.cuts(setUp, Cut.FaceEnd.class)
                        || Made.cuts(setUp, Cut.BoreTo.class));
    }

    private static void ifNone(Made made, Predicate<Operation> wanted, List<String> broken, String say) {
        if (made.operations().noneMatch(wanted)) {
            broken.add(say);
        }
    }

    private static boolean isByDie(Operation operation) {
        return operation.cut() instanceof Cut.ThreadOutside thread && thread.way() == Cut.ThreadWay.DIE_FROM_TAILSTOCK;
    }

    private static boolean isOnBore(Holding holding) {
        return holding instanceof Holding.OnMandrel || holding instanceof Holding.OnStub;
    }

    static boolean isSupported(SetUp setUp) {
        return switch (setUp.holding()) {
            case Holding.InChuck chuck -> !(chuck.support() instanceof Holding.Support.None);
            case Holding.InCollet collet -> !(collet.support() instanceof Holding.Support.None);
            case Holding.BetweenCentres centres -> true;
            default -> false;
        };
    }
}
