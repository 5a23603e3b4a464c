package chargehand.method.holding;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.method.kit.Chuck;
import chargehand.method.kit.ColletSet;
import chargehand.method.kit.DividingHead;
import chargehand.method.kit.Holders;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.Machine;
import chargehand.method.kit.Mill;
import chargehand.method.plan.Holding;
import chargehand.method.task.Task;
import chargehand.method.wish.HolderName;
import chargehand.method.work.Blanks;
import chargehand.method.work.Standing;
import chargehand.part.End;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Why something does not hold the work as it stands: of all the places it could be tried at, the one where it comes nearest,
 * and the rule that forbids it there.
 */
public final class NotHeld {
    private final Standing work;
    private final LengthUnit unit;

    private NotHeld(Standing work, LengthUnit unit) {
        this.work = work;
        this.unit = unit;
    }

    /** A rule that is broken, and how many were kept before it. */
    private record Broken(int kept, String say) {}

    /**
     * The rule, a sentence, for a holder that offers no way of holding the work.
     *
     * @param holder its name on that machine
     */
    public static String why(Machine machine, String holder, Standing work) {
        if (holder.equals(HolderName.CLAMPS)) {
            return "Clamps on the table hold blocks and plates here; round work lies in vees.";
        }
        var held = new NotHeld(work, machine.unit());
        if (machine instanceof Lathe lathe) {
            return held.onLathe(lathe, holder);
        }
        return machine instanceof Mill mill
                ? mill.dividingHead()
                        .filter(head -> head.name().equals(holder))
                        .map(held::inHead)
                        .orElse("There is no plain turned length on the work, or none that its jaws open over.")
                : "There is no plain turned length on the work that lies in it.";
    }

    private String onLathe(Lathe lathe, String holder) {
        Length swing = LatheHoldings.largestSwing(work);
        if (swing.isMoreThan(lathe.room().overSlide())) {
            return "The work swings " + in(swing) + ", and over the slide there is room for "
                    + in(lathe.room().overSlide()) + ".";
        }
        Holders holders = lathe.holders();
        for (Chuck chuck : holders.chucks()) {
            if (chuck.name().equals(holder)) {
                return nearest(chuck.jawLength(), place -> inChuck(lathe, chuck, place));
            }
        }
        for (ColletSet collets : holders.collets()) {
            if (collets.name().equals(holder)) {
                return nearest(collets.gripLength(), place -> inCollet(lathe, collets, place));
            }
        }
        return switch (holder) {
            case HolderName.CENTRES -> betweenCentres(lathe);
            case HolderName.FACEPLATE -> onFaceplate();
            default -> onMandrel();
        };
    }

    private String onMandrel() {
        return work.isOnBar()
                ? "The work is still on its bar."
                : "The work has no finished bored or reamed hole within its range that it bears in over half the work's"
                        + " length, and that it can go into.";
    }

    private String onFaceplate() {
        boolean faced = List.of(End.A, End.B).stream().anyMatch(end -> work.isDone(new Task.FaceOf(end)));
        if (work.isOnBar()) {
            return "The work is still on its bar.";
        }
        return faced
                ? "Jaws that are dialled one by one leave the same end open in less time, or there is neither ledge nor rim"
                        + " wide enough for clamps."
                : "No end is faced yet that could lie flat on it.";
    }

    /** What a holder says of one place. */
    private interface Trial {
        Optional<Broken> at(GripPlace place);
    }

    private String nearest(Length jawLength, Trial trial) {
        var broken = new ArrayList<Broken>();
        for (End headstock : End.values()) {
            for (GripPlace place : GripPlace.list(work, headstock, jawLength)) {
                trial.at(place).ifPresent(broken::add);
            }
        }
        return broken.stream()
                .max(Comparator.comparingInt(Broken::kept))
                .map(Broken::say)
                .orElse("There is no length on the work as it stands that jaws may close on.");
    }

    private Optional<Broken> inChuck(Lathe lathe, Chuck chuck, GripPlace place) {
        return isUneven(chuck, place)
                .or(() -> outOfRange(chuck, place))
                .or(() -> unsound(lathe, place, chuck.jawLength()))
                .or(() -> broken(6, "The wall under the jaws is so thin that hard jaws would press it out of round."));
    }

    private Optional<Broken> isUneven(Chuck chuck, GripPlace place) {
        return place.isEvenFor(chuck, work)
                ? Optional.empty()
                : broken(0, chuck.jaws() + " jaws do not sit evenly on " + place.sides() + " sides.");
    }

    private Optional<Broken> outOfRange(Chuck chuck, GripPlace place) {
        return chuck.grips(place.diameter())
                ? Optional.empty()
                : broken(
                        1,
                        "The work measures " + in(place.diameter()) + " where it would be gripped, and the jaws take "
                                + in(chuck.outside().least()) + " to "
                                + in(chuck.outside().most()) + ".");
    }

    private Optional<Broken> inCollet(Lathe lathe, ColletSet collets, GripPlace place) {
        boolean raw = place.gripped() instanceof Choice.Gripped.Raw;
        if (place.sides() != 0 || (raw && !work.isBright())) {
            return broken(0, "A collet wants a round surface that is true: turned, or bright bar.");
        }
        return collets.colletFor(place.diameter()).isEmpty()
                ? broken(1, "There is no collet for " + in(place.diameter()) + ".")
                : unsound(lathe, place, collets.gripLength());
    }

    private Optional<Broken> unsound(Lathe lathe, GripPlace place, Length jawLength) {
        Overhang overhang = Overhang.of(work, place);
        Length grip = place.grip(jawLength);
        Length wanted = place.leastGrip(work, grip, new Holding.Support.None());
        if (grip.isLessThan(wanted)) {
            return broken(
                    2,
                    "The grip is too short: " + in(Length.most(grip, Length.ZERO)) + ", and " + in(wanted)
                            + " is wanted for " + in(overhang.length()) + " out of the jaws.");
        }
        Length behind = place.headstock().distance(place.jawFront(), work.outerEnd(place.headstock()));
        Length over = place.gripped() instanceof Choice.Gripped.Raw ? Blanks.swing(work.blank()) : place.diameter();
        if ((work.isLong() || behind.isMoreThan(jawLength))
                && over.isMoreThan(lathe.room().spindleBore())) {
            return broken(
                    3,
                    "What reaches back beyond the jaws is " + in(over) + " thick and does not pass the spindle's bore, "
                            + in(lathe.room().spindleBore()) + ".");
        }
        return tooSlender(overhang).or(() -> tooLong(lathe, overhang));
    }

    private static Optional<Broken> tooSlender(Overhang overhang) {
        double most = GripRules.mostOut(new Holding.Support.None());
        return overhang.slenderness() <= most
                ? Optional.empty()
                : broken(
                        4,
                        String.format(
                                Locale.ROOT,
                                "It stands out too slender: %.1f times its thickness, up to %.0f allowed without a centre.",
                                overhang.slenderness(),
                                most));
    }

    private Optional<Broken> tooLong(Lathe lathe, Overhang overhang) {
        Length bed = lathe.room().betweenCentres();
        return overhang.length().isMoreThan(bed)
                ? broken(5, "It stands out " + in(overhang.length()) + ", and the bed has room for " + in(bed) + ".")
                : Optional.empty();
    }

    private String betweenCentres(Lathe lathe) {
        if (work.isOnBar()) {
            return "The work is still on its bar.";
        }
        Length length = work.shape().body().length();
        if (length.isMoreThan(lathe.room().betweenCentres())) {
            return "The work is " + in(length) + " long, and between centres there is room for "
                    + in(lathe.room().betweenCentres()) + ".";
        }
        boolean centred = List.of(End.A, End.B).stream().allMatch(end -> work.isDone(new Task.CentreIn(end)));
        return centred
                ? "No dog sits on it, or it is too slender even between centres."
                : "The work has no centre hole in each end.";
    }

    private String inHead(DividingHead head) {
        Chuck chuck = head.chuck();
        return nearest(
                chuck.jawLength(),
                place -> isUneven(chuck, place)
                        .or(() -> outOfRange(chuck, place))
                        .or(() -> broken(2, "The grip is too short, or it stands out too slender.")));
    }

    private static Optional<Broken> broken(int kept, String say) {
        return Optional.of(new Broken(kept, say));
    }

    private String in(Length length) {
        return LengthText.in(length, unit);
    }
}
