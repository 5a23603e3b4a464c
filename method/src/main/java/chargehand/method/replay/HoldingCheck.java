package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.kit.Bench;
import chargehand.method.kit.Chuck;
import chargehand.method.kit.ColletSet;
import chargehand.method.kit.DividingHead;
import chargehand.method.kit.Kit;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.Machine;
import chargehand.method.kit.Mill;
import chargehand.method.kit.RadialDrill;
import chargehand.method.kit.Saw;
import chargehand.method.plan.Holding;
import chargehand.part.End;
import chargehand.part.shape.Solid;
import java.util.Optional;

/** Whether turned work, as it is put in, can be held as a set-up says, on the machine it names. */
final class HoldingCheck {
    private final Kit kit;
    private final TurnedWork work;
    private final Solid wanted;
    private final FaultList faults;

    /** @param wanted the finished part, whose surfaces are not to be marked */
    HoldingCheck(Kit kit, TurnedWork work, Solid wanted, FaultList faults) {
        this.kit = kit;
        this.work = work;
        this.wanted = wanted;
        this.faults = faults;
    }

    void check(Machine machine, Holding holding) {
        switch (machine) {
            case Lathe lathe -> onLathe(lathe, holding);
            case Mill mill -> onMill(mill, holding);
            case RadialDrill drill -> onDrill(drill, holding);
            case Saw saw ->
                faults.unless(
                        holding instanceof Holding.Clamped,
                        Fault.Code.NO_HOLDER,
                        () -> "a saw holds work in its own vice");
            case Bench bench -> {}
        }
    }

    private void onLathe(Lathe lathe, Holding holding) {
        switch (holding) {
            case Holding.InChuck chuck -> chucked(lathe, chuck);
            case Holding.InCollet collet -> colleted(lathe, collet);
            case Holding.BetweenCentres centres -> new CentresCheck(work, lathe, faults).between(centres);
            case Holding.OnMandrel mandrel ->
                new MandrelCheck(work, faults).on(lathe, mandrel, kit.tooling().mandrels());
            case Holding.OnFaceplate plate -> new FaceplateCheck(work, wanted, lathe, faults).check(plate);
            case Holding.OnStub stub ->
                new MandrelCheck(work, faults).on(lathe, stub, kit.tooling().mandrels());
            case Holding.InDividingHead head -> noHolder(lathe, head.head());
            case Holding.LaidAcross laid -> noHolder(lathe, laid.vice());
            case Holding.InVice vice -> noHolder(lathe, vice.vice());
            case Holding.OnTable table -> noHolder(lathe, "table");
            case Holding.Clamped clamped -> noHolder(lathe, clamped.with());
        }
    }

    private void noHolder(Machine machine, String holder) {
        faults.add(Fault.Code.NO_HOLDER, "the " + machine.name() + " has no " + holder + " to hold turned work in");
    }

    private void chucked(Lathe lathe, Holding.InChuck held) {
        Optional<Chuck> chuck = lathe.holders().chucks().stream()
                .filter(each -> each.name().equals(held.chuck()) && each.jaws() == held.jaws())
                .findFirst();
        if (chuck.isEmpty()) {
            noHolder(lathe, held.jaws() + "-jaw chuck called " + held.chuck());
            return;
        }
        new JawsCheck(work, wanted, lathe, faults).check(held, chuck.get());
    }

    private void colleted(Lathe lathe, Holding.InCollet held) {
        Optional<ColletSet> collets = lathe.holders().collets().stream()
                .filter(each -> each.name().equals(held.collet()))
                .findFirst();
        if (collets.isEmpty()) {
            noHolder(lathe, held.collet());
            return;
        }
        trueness(held.runOut(), collets.get().runOut(), held.collet());
        var grip = new GripCheck(work, held.grip(), held.headstock(), faults);
        grip.collet(collets.get());
        grip.wall(Believable.LEAST_WALL_IN_SOFT_JAWS);
        grip.rest(collets.get().gripLength(), lathe.room().spindleBore(), isSupported(held.support()));
        supported(lathe, held.grip(), held.headstock(), held.support());
    }

    private void trueness(Length claimed, Length measured, String holder) {
        faults.unless(
                !claimed.isLessThan(measured),
                Fault.Code.NOT_TRUE,
                () -> "the " + holder + " runs out by " + faults.size(measured) + " as measured, more than is said");
    }

    static boolean isSupported(Holding.Support support) {
        return !(support instanceof Holding.Support.None);
    }

    private void supported(Lathe lathe, Holding.Grip grip, End headstock, Holding.Support support) {
        new SupportCheck(work, headstock.other(), faults).onLathe(lathe, grip, support);
    }

    private void onMill(Mill mill, Holding holding) {
        switch (holding) {
            case Holding.InDividingHead held -> inHead(mill, held);
            case Holding.LaidAcross laid ->
                new GripCheck(work, laid.grip(), End.A, faults).laid(mill.vices(), mill.vees(), laid.vice());
            case Holding.InChuck chuck -> noHolder(mill, chuck.chuck());
            case Holding.InCollet collet -> noHolder(mill, collet.collet());
            case Holding.BetweenCentres centres -> noHolder(mill, "pair of centres");
            case Holding.OnMandrel mandrel -> onMandrel(mill, mandrel);
            case Holding.OnStub stub -> noHolder(mill, stub.mandrel());
            case Holding.OnFaceplate plate -> noHolder(mill, "faceplate");
            case Holding.InVice vice -> noHolder(mill, vice.vice());
            case Holding.OnTable table -> standing(mill, table);
            case Holding.Clamped clamped -> noHolder(mill, clamped.with());
        }
    }

    /** A mandrel goes between the dividing head and its tail centre. */
    private void onMandrel(Mill mill, Holding.OnMandrel held) {
        boolean carried = mill.dividingHead().filter(DividingHead::tailCentre).isPresent();
        if (!carried) {
            noHolder(mill, held.mandrel());
            return;
        }
        new MandrelCheck(work, faults).seated(held, kit.tooling().mandrels());
        faults.unless(
                !work.largest(work.span())
                        .half()
                        .isMoreThan(mill.dividingHead().orElseThrow().centreHeight()),
                Fault.Code.TOO_BIG,
                () -> "the work does not swing over the table of the " + mill.name());
    }

    /** Work that stands on an end, under clamps. */
    private void standing(Mill mill, Holding.OnTable held) {
        faults.unless(
                mill.clamps()
                                .filter(reach -> !work.span().length().isMoreThan(reach))
                                .isPresent()
                        && (held.down() == Holding.Face.LEFT || held.down() == Holding.Face.RIGHT)
                        && !work.onBar(),
                Fault.Code.NO_HOLDER,
                () -> "clamps of the " + mill.name() + " do not hold the work standing on an end");
    }

    private void inHead(Mill mill, Holding.InDividingHead held) {
        Optional<DividingHead> head =
                mill.dividingHead().filter(each -> each.name().equals(held.head()));
        if (head.isEmpty()) {
            noHolder(mill, held.head());
            return;
        }
        var grip = new GripCheck(work, held.grip(), held.headstock(), faults);
        trueness(held.runOut(), head.get().chuck().runOut(), held.head());
        grip.jaws(head.get().chuck());
        grip.wall(Believable.LEAST_WALL_IN_HARD_JAWS);
        grip.rest(head.get().chuck().jawLength(), head.get().spindleBore(), isSupported(held.support()));
        if (held.support() instanceof Holding.Support.Centre) {
            faults.unless(
                    head.get().tailCentre(),
                    Fault.Code.NO_CENTRE_HOLE,
                    () -> "the " + held.head() + " has no tail centre");
            new SupportCheck(work, held.headstock().other(), faults).centred();
        }
    }

    private void onDrill(RadialDrill drill, Holding holding) {
        if (holding instanceof Holding.LaidAcross laid) {
            new GripCheck(work, laid.grip(), End.A, faults).laid(drill.vices(), drill.vees(), laid.vice());
        } else {
            noHolder(drill, "place for such a holding");
        }
    }
}
