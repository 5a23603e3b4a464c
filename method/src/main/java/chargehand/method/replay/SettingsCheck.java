package chargehand.method.replay;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.SpindleSpeed;
import chargehand.method.kit.Bench;
import chargehand.method.kit.Feeds;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.Machine;
import chargehand.method.kit.Mill;
import chargehand.method.kit.RadialDrill;
import chargehand.method.kit.Saw;
import chargehand.method.kit.Speeds;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Operation;
import chargehand.method.plan.Settings;
import java.util.List;
import java.util.Optional;

/** Whether a machine can be set as an operation says: speed, feed, unit of the dial, gearing, indexing and angle. */
final class SettingsCheck {
    private final Machine machine;
    private final Operation operation;
    private final Settings settings;
    private final FaultList faults;

    SettingsCheck(Machine machine, Operation operation, FaultList faults) {
        this.machine = machine;
        this.operation = operation;
        this.settings = operation.settings();
        this.faults = faults;
    }

    void check() {
        faults.unless(
                settings.unit() == machine.unit(),
                Fault.Code.WRONG_DIAL,
                () -> "the dials of the " + machine.name() + " are not in that unit");
        speed();
        settings.feed().ifPresent(this::feed);
        gearing();
        indexing();
        angle();
    }

    private void speed() {
        Optional<Speeds> plate = speeds();
        if (settings.speed().isPresent()) {
            SpindleSpeed speed = settings.speed().get();
            faults.unless(
                    !(operation.cut() instanceof Cut.SlotInBore),
                    Fault.Code.WRONG_SPEED,
                    () -> "the spindle is locked while a slot is planed");
            faults.unless(
                    plate.filter(each -> each.plate().contains(speed)).isPresent(),
                    Fault.Code.WRONG_SPEED,
                    () -> speed.rpm() + " rpm is not on the plate of the " + machine.name());
        } else {
            faults.unless(
                    plate.isEmpty() || isByHand(operation.cut()),
                    Fault.Code.WRONG_SPEED,
                    () -> "no speed is given for a cut that turns");
        }
    }

    private Optional<Speeds> speeds() {
        return switch (machine) {
            case Lathe lathe -> Optional.of(lathe.speeds());
            case Mill mill -> Optional.of(mill.speeds());
            case RadialDrill drill -> Optional.of(drill.speeds());
            case Saw saw -> Optional.empty();
            case Bench bench -> Optional.empty();
        };
    }

    private static boolean isByHand(Cut cut) {
        return cut instanceof Cut.Deburr
                || cut instanceof Cut.SlotInBore
                || cut instanceof Cut.TapHole
                || (cut instanceof Cut.ThreadInside thread && thread.way() == Cut.ThreadWay.TAP_BY_HAND);
    }

    private void feed(Settings.Feed feed) {
        boolean listed = switch (feed) {
            case Settings.Feed.PerTurn(Length length) ->
                perTurn().stream().anyMatch(feeds -> feeds.plate().contains(length));
            case Settings.Feed.PerMinute(Length length) ->
                machine instanceof Mill mill && mill.feeds().plate().contains(length);
        };
        faults.unless(listed, Fault.Code.WRONG_FEED, () -> "the feed is not on the plate of the " + machine.name());
    }

    private List<Feeds> perTurn() {
        return switch (machine) {
            case Lathe lathe ->
                operation.cut() instanceof Cut.FaceEnd
                        ? List.of(lathe.feeds().across())
                        : List.of(lathe.feeds().along(), lathe.feeds().across());
            case RadialDrill drill -> List.of(drill.feeds());
            case Mill mill -> List.of();
            case Saw saw -> List.of();
            case Bench bench -> List.of();
        };
    }

    private void gearing() {
        Optional<ThreadToCut> thread = ThreadToCut.screwCut(operation.cut());
        if (thread.isPresent()) {
            boolean geared = machine instanceof Lathe && settings.gearing().isPresent();
            if (faults.unless(geared, Fault.Code.WRONG_TRAIN, () -> "no train of wheels is given for the thread")) {
                new TrainCheck((Lathe) machine, faults).check(settings.gearing().orElseThrow(), thread.get());
            }
        }
    }

    private void indexing() {
        int divisions = divisions();
        if (divisions > 0) {
            boolean divided = machine instanceof Mill mill
                    && mill.dividingHead()
                            .flatMap(
                                    head -> settings.indexing().map(set -> IndexingCheck.divides(head, set, divisions)))
                            .orElse(false);
            faults.unless(
                    divided,
                    Fault.Code.WRONG_INDEXING,
                    () -> "the turns and holes do not come out to " + divisions + " divisions on a plate owned");
        }
    }

    /** How often the work is divided for a cut; 0 where it is not. */
    private int divisions() {
        return switch (operation.cut()) {
            case Cut.MillFlats flats -> flats.sides();
            case Cut.CutTeeth teeth -> teeth.teeth();
            default -> 0;
        };
    }

    private void angle() {
        if (operation.cut() instanceof Cut.TurnTaper taper
                && taper.way() == Cut.TaperWay.TOP_SLIDE
                && taper.from().isLessThan(taper.to())) {
            Length length = taper.to().minus(taper.from());
            topSlide(
                    Angle.arctan(taper.atFrom().minus(taper.atTo()).abs().half().over(length)), length);
        }
        if (operation.cut() instanceof Cut.ConeInside cone
                && settings.topSlide().isPresent()) {
            topSlide(cone.included().half(), Length.ZERO);
        }
    }

    private void topSlide(Angle wanted, Length along) {
        faults.unless(
                settings.topSlide()
                        .filter(set -> Math.abs(set.degrees() - wanted.degrees()) <= Believable.ANGLE_NEAR)
                        .isPresent(),
                Fault.Code.WRONG_ANGLE,
                () -> "the top slide is not set to half the angle of the taper");
        faults.unless(
                machine instanceof Lathe lathe
                        && !along.times(1 / wanted.cos())
                                .isMoreThan(lathe.slides().topSlideTravel()),
                Fault.Code.WRONG_ANGLE,
                () -> "the top slide does not travel as far as the taper is long");
    }
}
