package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.kit.Chuck;
import chargehand.method.kit.Lathe;
import chargehand.method.plan.Holding;
import chargehand.part.shape.Solid;
import java.util.Optional;

/** Whether the jaws of a lathe's chuck can hold turned work: closing on it, opening in its bore, or soft and bored to it. */
final class JawsCheck {
    private final TurnedWork work;
    private final Solid wanted;
    private final Lathe lathe;
    private final FaultList faults;

    JawsCheck(TurnedWork work, Solid wanted, Lathe lathe, FaultList faults) {
        this.work = work;
        this.wanted = wanted;
        this.lathe = lathe;
        this.faults = faults;
    }

    void check(Holding.InChuck held, Chuck chuck) {
        switch (held.bearing()) {
            case Holding.Bearing.Closing(boolean packed) -> closing(held, chuck, packed);
            case Holding.Bearing.Opening(boolean packed) -> opening(held, chuck, packed);
            case Holding.Bearing.SoftJaws() -> soft(held, chuck.soft());
            case Holding.Bearing.SplitBush(var outside, var slit) -> bush(held, chuck, new Bush(outside, slit));
        }
    }

    private void closing(Holding.InChuck held, Chuck chuck, boolean packed) {
        trueness(held, measured(chuck, packed));
        GripCheck grip = grip(held);
        grip.jaws(chuck);
        grip.onTeeth(chuck);
        if (!packed) {
            grip.unmarked(wanted);
        }
        grip.wall(Believable.LEAST_WALL_IN_HARD_JAWS);
        grip.rest(chuck.jawLength(), lathe.room().spindleBore(), HoldingCheck.isSupported(held.support()));
        supported(held);
    }

    private void soft(Holding.InChuck held, Optional<Chuck.SoftJaws> soft) {
        faults.unless(
                soft.filter(jaws -> jaws.outside().contain(held.grip().diameter()))
                        .isPresent(),
                Fault.Code.NO_HOLDER,
                () -> "the " + held.chuck() + " has no soft jaws to be bored to "
                        + faults.size(held.grip().diameter()));
        trueness(held, soft.map(Chuck.SoftJaws::runOut).orElse(Length.ZERO));
        GripCheck grip = grip(held);
        grip.round();
        grip.wall(Believable.LEAST_WALL_IN_SOFT_JAWS);
        grip.restSoftly(
                soft.map(Chuck.SoftJaws::jawLength).orElse(held.grip().length()),
                lathe.room().spindleBore(),
                HoldingCheck.isSupported(held.support()));
        supported(held);
    }

    /** A bush as a holding says it is made. */
    private record Bush(Length outside, Length slit) {}

    private void bush(Holding.InChuck held, Chuck chuck, Bush bush) {
        Length wall = bush.outside().minus(held.grip().diameter()).half();
        faults.unless(
                chuck.grips(bush.outside())
                        && !chuck.isIndependent()
                        && !wall.isLessThan(Believable.LEAST_BUSH_WALL)
                        && !wall.isMoreThan(Believable.MOST_BUSH_WALL)
                        && bush.slit().isPositive(),
                Fault.Code.NO_HOLDER,
                () -> "a split bush of " + faults.size(bush.outside()) + " is too thick or too thin to close on "
                        + faults.size(held.grip().diameter()) + ", or the " + held.chuck() + " does not take it");
        trueness(held, Believable.BUSH_RUN_OUT);
        GripCheck grip = grip(held);
        grip.round();
        grip.wall(Believable.LEAST_WALL_IN_SOFT_JAWS);
        grip.rest(chuck.jawLength(), lathe.room().spindleBore(), HoldingCheck.isSupported(held.support()));
        supported(held);
    }

    private void opening(Holding.InChuck held, Chuck chuck, boolean packed) {
        trueness(held, measured(chuck, packed));
        var bore = new BoreGripCheck(work, held.grip(), held.headstock(), faults);
        bore.jaws(chuck);
        if (!packed) {
            bore.unmarked(wanted);
        }
        faults.unless(
                held.support() instanceof Holding.Support.None,
                Fault.Code.NO_HOLDER,
                () -> "nothing holds the outer end of work that is held by its bore");
        faults.unless(
                !work.largest(work.span()).isMoreThan(lathe.room().overSlide()),
                Fault.Code.TOO_BIG,
                () -> "the work does not swing over the slide of the " + lathe.name());
    }

    private GripCheck grip(Holding.InChuck held) {
        return new GripCheck(work, held.grip(), held.headstock(), faults);
    }

    private static Length measured(Chuck chuck, boolean packed) {
        return packed && !chuck.isIndependent() ? chuck.runOut().plus(Believable.PACKING) : chuck.runOut();
    }

    private void trueness(Holding.InChuck held, Length measured) {
        faults.unless(
                !held.runOut().isLessThan(measured),
                Fault.Code.NOT_TRUE,
                () -> "the " + held.chuck() + " runs out by " + faults.size(measured) + " held so, more than is said");
    }

    private void supported(Holding.InChuck held) {
        new SupportCheck(work, held.headstock().other(), faults).onLathe(lathe, held.grip(), held.support());
    }
}
