package chargehand.paper.stage;

import chargehand.drawing.stage.Hold;
import chargehand.measure.Length;
import chargehand.method.plan.Holding;
import chargehand.method.replay.TurnedWork;
import chargehand.part.End;
import java.util.Optional;

/** A planned holding as the drawing knows it. */
final class Holds {
    private Holds() {}

    static Hold of(Holding holding, TurnedWork work) {
        return switch (holding) {
            case Holding.InChuck chuck -> chuck(chuck);
            case Holding.InCollet collet -> new Hold.Collet(grip(collet.grip()), support(collet.support()));
            case Holding.BetweenCentres centres -> new Hold.Centres(grip(centres.dog()));
            case Holding.OnFaceplate plate -> faceplate(plate, work);
            case Holding.OnStub stub -> new Hold.StubMandrel(new Hold.Grip(stub.from(), stub.to(), stub.bore()));
            case Holding.OnMandrel mandrel ->
                new Hold.Mandrel(new Hold.Grip(mandrel.from(), mandrel.to(), mandrel.bore()));
            case Holding.InDividingHead head -> new Hold.DividingHead(grip(head.grip()), support(head.support()));
            case Holding.LaidAcross laid -> new Hold.Vee(grip(laid.grip()));
            case Holding.InVice vice ->
                clamped(work.outer().start(), work.outer().end(), work);
            case Holding.OnTable table ->
                clamped(work.outer().start(), work.outer().end(), work);
            case Holding.Clamped clamped -> clamped(clamped.from(), clamped.to(), work);
        };
    }

    private static Hold faceplate(Holding.OnFaceplate plate, TurnedWork work) {
        Length back =
                plate.headstock() == End.A ? work.outer().start() : work.outer().end();
        Length from = Length.least(back, plate.clamped());
        Length to = Length.most(back, plate.clamped());
        return new Hold.Faceplate(
                new Hold.Grip(from, to, plate.within()),
                work.outer().most(from, to).times(2));
    }

    private static Hold chuck(Holding.InChuck chuck) {
        return switch (chuck.bearing()) {
            case Holding.Bearing.Closing(boolean packed) -> closing(chuck, packed ? Hold.Jaws.PACKED : Hold.Jaws.HARD);
            case Holding.Bearing.SoftJaws soft -> closing(chuck, Hold.Jaws.SOFT);
            case Holding.Bearing.SplitBush bush -> closing(chuck, Hold.Jaws.PACKED);
            case Holding.Bearing.Opening opening -> new Hold.JawsInside(grip(chuck.grip()));
        };
    }

    private static Hold closing(Holding.InChuck chuck, Hold.Jaws jaws) {
        return new Hold.Chuck(grip(chuck.grip()), support(chuck.support()), jaws);
    }

    private static Hold clamped(Length from, Length to, TurnedWork work) {
        Length radius = work.outer().most(work.outer().start(), work.outer().end());
        return new Hold.Clamped(new Hold.Grip(from, to, radius.times(2)));
    }

    private static Hold.Grip grip(Holding.Grip grip) {
        return new Hold.Grip(grip.from(), grip.to(), grip.diameter());
    }

    private static Hold.Support support(Holding.Support support) {
        return switch (support) {
            case Holding.Support.None none -> new Hold.Support.None();
            case Holding.Support.Centre centre -> new Hold.Support.Centre();
            case Holding.Support.FixedSteady steady -> new Hold.Support.FixedSteady(steady.at(), steady.diameter());
            case Holding.Support.TravellingSteady steady -> new Hold.Support.TravellingSteady();
        };
    }

    /** The end of the part that points to the headstock; where nothing turns, end A lies at the left. */
    static End headstock(Holding holding) {
        return switch (holding) {
            case Holding.InChuck chuck -> chuck.headstock();
            case Holding.InCollet collet -> collet.headstock();
            case Holding.BetweenCentres centres -> centres.driven();
            case Holding.OnMandrel mandrel -> mandrel.headstock();
            case Holding.OnStub stub -> stub.headstock();
            case Holding.OnFaceplate plate -> plate.headstock();
            case Holding.InDividingHead head -> head.headstock();
            case Holding.LaidAcross laid -> End.A;
            case Holding.InVice vice -> End.A;
            case Holding.OnTable table -> End.A;
            case Holding.Clamped clamped -> End.A;
        };
    }

    /** Where jaws or collet begin, for work that stands out of them. */
    static Optional<Length> front(Holding holding) {
        return switch (holding) {
            case Holding.InChuck chuck ->
                Optional.of(front(chuck.grip(), chuck.headstock()))
                        .filter(front -> !(chuck.bearing() instanceof Holding.Bearing.Opening));
            case Holding.InCollet collet -> Optional.of(front(collet.grip(), collet.headstock()));
            case Holding.InDividingHead head -> Optional.of(front(head.grip(), head.headstock()));
            case Holding.BetweenCentres centres -> Optional.empty();
            case Holding.OnMandrel mandrel -> Optional.empty();
            case Holding.OnStub stub -> Optional.empty();
            case Holding.OnFaceplate plate -> Optional.empty();
            case Holding.LaidAcross laid -> Optional.empty();
            case Holding.InVice vice -> Optional.empty();
            case Holding.OnTable table -> Optional.empty();
            case Holding.Clamped clamped -> Optional.empty();
        };
    }

    private static Length front(Holding.Grip grip, End headstock) {
        return headstock == End.A ? grip.to() : grip.from();
    }
}
