package chargehand.method.replay;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.method.plan.Cut;
import chargehand.part.End;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Station;
import chargehand.trade.thread.PipeGauge;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What each cut leaves of turned work. It does as it is told, whether that makes sense or not; others judge. */
final class Cutting {
    private static final Angle DRILL_POINT = Angle.degrees(118);

    /** How fast the 60° mouth of a centre hole closes as the face is cut back: 2 tan 30°. */
    private static final double CENTRE_CLOSES = 2 * Math.tan(Math.toRadians(30));

    private final TurnedWork work;
    private final HollowCorners hollow;

    /**
     * Cuts into work as it stands.
     *
     * @param hollow the hollow corners that will be given their radius later in the same set-up
     */
    Cutting(TurnedWork work, HollowCorners hollow) {
        this.work = work;
        this.hollow = hollow;
    }

    /** The work after a cut. */
    TurnedWork after(Cut cut) {
        return switch (cut) {
            case Cut.FaceEnd face -> faced(face);
            case Cut.CentreHole centre -> centred(centre);
            case Cut.DrillAxial drill -> drilled(drill);
            case Cut.BoreTo bore -> hollowed(bore.end(), bore.diameter(), bore.to());
            case Cut.ReamTo ream -> hollowed(ream.end(), ream.diameter(), ream.to());
            case Cut.ConeInside cone -> coned(cone);
            case Cut.TurnDiameter turn -> turned(turn.from(), turn.to(), turn.diameter(), turn.diameter());
            case Cut.TurnTaper taper -> turned(taper.from(), taper.to(), taper.atFrom(), taper.atTo());
            case Cut.CutGroove groove -> turned(groove.from(), groove.to(), groove.diameter(), groove.diameter());
            case Cut.FinishEdge edge -> edged(edge);
            case Cut.PartOff part -> parted(part);
            case Cut.SawOff saw -> sawn(saw);
            case Cut.ThreadOutside thread -> threaded(thread);
            case Cut.ThreadInside thread -> tapped(thread);
            case Cut.MillFlats flats -> milled(flats);
            case Cut.DrillAcross hole -> work.with(work.features().withHole(hole));
            case Cut.MillKeyway keyway -> work.with(work.features().withKeyway(keyway));
            case Cut.SlotInBore slot -> work.with(work.features().withSlot(slot));
            case Cut.RecessInBore recess ->
                Span.between(recess.from(), recess.to())
                        .map(span -> work.opened(
                                Carving.level(span, recess.diameter().half())))
                        .orElse(work);
            case Cut.CutTeeth teeth -> work.with(work.features().withTeeth(teeth));
            case Cut.DrillCircle holes -> work.with(work.features().withCircle(holes));
            case Cut.MillFace face -> work;
            case Cut.DrillHole hole -> work;
            case Cut.ReamHole hole -> work;
            case Cut.TapHole hole -> work;
            case Cut.Deburr deburr -> work;
        };
    }

    private TurnedWork faced(Cut.FaceEnd face) {
        Length far = work.face(face.end().other());
        return Span.between(face.at(), far)
                .filter(left -> left.border(face.end()).equals(face.at()))
                .flatMap(left -> left.common(work.span()))
                .map(left -> closedCentres(work.cutTo(left), face))
                .orElse(work);
    }

    private TurnedWork closedCentres(TurnedWork faced, Cut.FaceEnd face) {
        Length closes = face.end().distance(face.at(), work.face(face.end())).times(CENTRE_CLOSES);
        var centres = work.features().centres().stream()
                .map(centre -> centre.end() == face.end()
                        ? new Features.CentreHole(
                                centre.end(), centre.diameter().minus(closes))
                        : centre)
                .filter(centre -> centre.diameter().isPositive())
                .toList();
        return faced.with(faced.features().withCentres(centres));
    }

    private TurnedWork centred(Cut.CentreHole cut) {
        var centres = new ArrayList<>(work.features().centres());
        centres.add(new Features.CentreHole(cut.end(), cut.diameter()));
        return work.with(work.features().withCentres(centres));
    }

    private TurnedWork drilled(Cut.DrillAxial drill) {
        Length radius = drill.diameter().half();
        Length tip = drill.end()
                .other()
                .from(drill.to(), radius.times(1 / DRILL_POINT.half().tan()));
        boolean comesOut = !drill.end()
                .other()
                .distance(work.face(drill.end().other()), drill.to())
                .isNegative();
        TurnedWork straight = hollowed(drill.end(), drill.diameter(), drill.to());
        return comesOut
                ? straight
                : straight.opened(Carving.line(new Station(drill.to(), radius), new Station(tip, Length.ZERO)));
    }

    private TurnedWork hollowed(End end, Length diameter, Length to) {
        return Span.between(work.face(end), to)
                .filter(span -> span.border(end).equals(work.face(end)))
                .map(span -> work.opened(Carving.level(span, diameter.half())))
                .orElse(work);
    }

    private TurnedWork coned(Cut.ConeInside cone) {
        Length mouth = cone.mouth().half();
        Length narrow = cone.narrow().half();
        Length depth = mouth.minus(narrow).times(1 / cone.included().half().tan());
        return depth.isPositive()
                ? work.opened(Carving.line(
                        new Station(cone.at(), mouth),
                        new Station(cone.end().other().from(cone.at(), depth), narrow)))
                : work;
    }

    private TurnedWork turned(Length from, Length to, Length atFrom, Length atTo) {
        if (!from.isLessThan(to)) {
            return work;
        }
        Profile path = new Profile(List.of(new Station(from, atFrom.half()), new Station(to, atTo.half())));
        return work.turned(hollow.sparing(path));
    }

    private TurnedWork edged(Cut.FinishEdge edge) {
        return EdgeCut.path(work, edge)
                .map(path -> edge.inside() ? work.opened(path) : work.turned(path))
                .orElse(work);
    }

    private TurnedWork parted(Cut.PartOff part) {
        Length border = part.partSide() == End.A ? part.from() : part.to();
        return Span.between(work.face(part.partSide()), border)
                .filter(left -> left.border(part.partSide()).equals(work.face(part.partSide())))
                .filter(left -> left.meets(work.span()))
                .map(left -> work.cutTo(left).offTheBar())
                .orElse(work);
    }

    private TurnedWork sawn(Cut.SawOff saw) {
        return Span.between(saw.from(), saw.to())
                .filter(left -> left.meets(work.span()))
                .map(work::cutTo)
                .orElse(work);
    }

    private TurnedWork threaded(Cut.ThreadOutside cut) {
        return Span.between(cut.from(), cut.to())
                .map(over -> new Features.ThreadCut(cut.thread(), false, over))
                .map(thread -> work.with(work.features().withThread(thread)))
                .orElse(work);
    }

    /** A taper tap opens the hole to its crests as well. */
    private TurnedWork tapped(Cut.ThreadInside cut) {
        Optional<Span> over = Span.between(work.face(cut.end()), cut.to());
        if (over.isEmpty()) {
            return work;
        }
        var thread = new Features.ThreadCut(cut.thread(), true, over.get());
        TurnedWork tapped = work.with(work.features().withThread(thread));
        return cut.thread().isTaper() ? tapped.opened(crests(cut, over.get())) : tapped;
    }

    private static Profile crests(Cut.ThreadInside cut, Span over) {
        Length mouth = cut.thread().minorInternal().half();
        Length fall = over.length().times(1 / PipeGauge.TAPER_ONE_IN).half();
        return Carving.line(
                new Station(over.border(cut.end()), mouth),
                new Station(over.border(cut.end().other()), mouth.minus(fall)));
    }

    private TurnedWork milled(Cut.MillFlats cut) {
        return Span.between(cut.from(), cut.to())
                .map(over -> new Features.FlatsCut(cut.sides(), cut.flats(), over))
                .map(flats -> work.with(work.features().withFlats(flats)))
                .orElse(work);
    }
}
