package chargehand.method.proved;

import chargehand.measure.Length;
import chargehand.measure.SpindleSpeed;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.Machine;
import chargehand.method.kit.Mill;
import chargehand.method.kit.RadialDrill;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Operation;
import chargehand.method.plan.SetUp;
import chargehand.method.replay.Replay;
import chargehand.trade.material.Materials;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

/** What a turner insists on whatever the part. All common practice; the bands of speed are those of the material's own table. */
enum CommonRule {
    PROVED((made, broken) -> Replay.of(made.part(), made.method(), made.kit())
            .faults()
            .forEach(fault -> broken.add("set-up " + fault.setUp() + ": " + fault.say()))),
    ORDER((made, broken) -> {
        for (SetUp setUp : made.setUps()) {
            before(setUp, Cut.FaceEnd.class, Cut.DrillAxial.class, broken);
            before(setUp, Cut.CentreHole.class, Cut.DrillAxial.class, broken);
            before(setUp, Cut.DrillAxial.class, Cut.ReamTo.class, broken);
            before(setUp, Cut.DrillAxial.class, Cut.BoreTo.class, broken);
            before(setUp, Cut.DrillAxial.class, Cut.ThreadInside.class, broken);
            before(setUp, Cut.BoreTo.class, Cut.ReamTo.class, broken);
            before(setUp, Cut.TurnDiameter.class, Cut.TurnTaper.class, broken);
            before(setUp, Cut.TurnDiameter.class, Cut.CutGroove.class, broken);
            before(setUp, Cut.CutGroove.class, Cut.ThreadOutside.class, broken);
            before(setUp, Cut.ThreadOutside.class, Cut.PartOff.class, broken);
            before(setUp, Cut.Deburr.class, Cut.PartOff.class, broken);
        }
    }),
    DEBURRED((made, broken) -> made.setUps().stream()
            .filter(setUp -> !Made.cuts(setUp, Cut.SawOff.class)
                    && !Made.cuts(setUp, Cut.Deburr.class)
                    && setUp.operations().stream().anyMatch(operation -> !(operation.cut() instanceof Cut.PartOff)))
            .forEach(setUp -> broken.add("set-up " + setUp.number() + " leaves its burrs"))),
    NO_MORE_SET_UPS((made, broken) -> {
        if (made.setUps().size() > made.mostSetUps()) {
            broken.add(made.setUps().size() + " set-ups, where a turner takes " + made.mostSetUps());
        }
    }),
    SPEEDS_ON_THE_PLATE((made, broken) -> {
        for (SetUp setUp : made.setUps()) {
            List<SpindleSpeed> plate = plate(made.kit().find(setUp.machine()).orElseThrow());
            setUp.operations().stream()
                    .filter(operation -> operation
                            .settings()
                            .speed()
                            .filter(speed -> !plate.contains(speed))
                            .isPresent())
                    .forEach(operation -> broken.add("not a speed of the " + setUp.machine() + ": " + operation.say()));
        }
    }),
    SPEEDS_IN_THE_BAND((made, broken) -> {
        for (SetUp setUp : made.setUps()) {
            SpindleSpeed slowest = plate(made.kit().find(setUp.machine()).orElseThrow()).stream()
                    .findFirst()
                    .orElse(SpindleSpeed.rpm(0));
            for (Operation operation : setUp.operations()) {
                Optional<Length> diameter = turned(operation.cut());
                Optional<SpindleSpeed> speed = operation.settings().speed();
                if (diameter.isPresent() && speed.isPresent() && speed.get().compareTo(slowest) > 0) {
                    double surface =
                            Math.PI * diameter.get().mm() / 1000 * speed.get().rpm();
                    double most =
                            Materials.get(made.part().material()).hss().high().metresPerMinute();
                    if (surface > most) {
                        broken.add(operation.say() + " at " + surface + " m/min, where " + most + " is the most");
                    }
                }
            }
        }
    }),
    MARKED_BY_NOTHING((made, broken) -> {
        for (int i = 0; i < made.setUps().size(); i++) {
            SetUp setUp = made.setUps().get(i);
            if (setUp.holding() instanceof Holding.InChuck chuck
                    && chuck.bearing().equals(new Holding.Bearing.Closing(false))
                    && isFinished(made.setUps().subList(0, i), chuck.grip())) {
                broken.add("set-up " + setUp.number() + " grips a finished surface bare");
            }
        }
    }),
    NOT_TOO_SLENDER((made, broken) -> made.setUps().stream()
            .filter(setUp -> !TurnersRule.isSupported(setUp))
            .forEach(setUp -> slender(setUp, broken))),
    FIRST_OFF_PASSED((made, broken) -> made.setUps().stream()
            .filter(setUp -> made.method().count() > 1 && made.isTurned() && !Made.cuts(setUp, Cut.SawOff.class))
            .filter(setUp -> setUp.instructions().stream().noneMatch(say -> say.startsWith("First one off")))
            .forEach(setUp -> broken.add("set-up " + setUp.number() + " goes on without passing the first one off"))),
    CAUTIONED((made, broken) -> made.operations()
            .filter(operation ->
                    wantsCaution(operation.cut()) && operation.cautions().isEmpty())
            .forEach(operation -> broken.add("no caution: " + operation.say()))),
    READ_WHERE_FINE((made, broken) -> made.operations()
            .filter(operation -> operation.hold() && operation.readings().isEmpty())
            .forEach(operation -> broken.add("a hold point with nothing to read: " + operation.say())));

    /** Six diameters out of the chuck: more than the four of the rule of thumb, for light last cuts. */
    private static final double MOST_OUT = 6;

    /** A pure function, though its type does not say so. */
    @SuppressWarnings("ImmutableEnumChecker")
    private final BiConsumer<Made, List<String>> check;

    CommonRule(BiConsumer<Made, List<String>> check) {
        this.check = check;
    }

    /** How the method breaks it. */
    List<String> broken(Made made) {
        var broken = new ArrayList<String>();
        check.accept(made, broken);
        return broken;
    }

    private static void before(
            SetUp setUp, Class<? extends Cut> first, Class<? extends Cut> then, List<String> broken) {
        List<Operation> operations = setUp.operations();
        boolean thenSeen = false;
        boolean firstSeen = false;
        for (Operation operation : operations) {
            thenSeen |= then.isInstance(operation.cut());
            firstSeen |= first.isInstance(operation.cut());
            if (thenSeen && !firstSeen && Made.cuts(setUp, first)) {
                broken.add(
                        "set-up " + setUp.number() + ": " + then.getSimpleName() + " before " + first.getSimpleName());
                return;
            }
        }
    }

    private static List<SpindleSpeed> plate(Machine machine) {
        return switch (machine) {
            case Lathe lathe -> lathe.speeds().plate();
            case Mill mill -> mill.speeds().plate();
            case RadialDrill drill -> drill.speeds().plate();
            default -> List.of();
        };
    }

    private static Optional<Length> turned(Cut cut) {
        return switch (cut) {
            case Cut.TurnDiameter turned -> Optional.of(turned.diameter());
            case Cut.BoreTo bored -> Optional.of(bored.diameter());
            case Cut.DrillAxial drilled -> Optional.of(drilled.diameter());
            case Cut.ReamTo reamed -> Optional.of(reamed.diameter());
            default -> Optional.empty();
        };
    }

    /** Whether something turned earlier, and not turned again later, lies under the jaws. */
    private static boolean isFinished(List<SetUp> earlier, Holding.Grip grip) {
        return earlier.stream()
                .flatMap(setUp -> setUp.operations().stream())
                .anyMatch(operation -> operation.cut() instanceof Cut.TurnDiameter turned
                        && turned.diameter().equals(grip.diameter())
                        && turned.from().isLessThan(grip.to())
                        && turned.to().isMoreThan(grip.from()));
    }

    private static void slender(SetUp setUp, List<String> broken) {
        if (!(setUp.holding() instanceof Holding.InChuck chuck)) {
            return;
        }
        for (Operation operation : setUp.operations()) {
            if (operation.cut() instanceof Cut.TurnDiameter turned) {
                double out = Math.max(
                        turned.to().minus(chuck.grip().to()).mm(),
                        chuck.grip().from().minus(turned.from()).mm());
                if (out > MOST_OUT * turned.diameter().mm()) {
                    broken.add(operation.say() + ", " + out + " mm out of the chuck with nothing to support it");
                }
            }
        }
    }

    private static boolean wantsCaution(Cut cut) {
        return switch (cut) {
            case Cut.SawOff saw -> true;
            case Cut.PartOff parting -> true;
            case Cut.MillFlats flats -> true;
            case Cut.MillKeyway keyway -> true;
            case Cut.MillFace face -> true;
            case Cut.DrillAcross drill -> true;
            case Cut.DrillHole drill -> true;
            case Cut.ThreadOutside thread -> thread.way() == Cut.ThreadWay.SCREW_CUT;
            default -> false;
        };
    }
}
