package chargehand.drawing.stage;

import chargehand.drawing.view.AxialScale;
import chargehand.drawing.view.Bearing;
import chargehand.drawing.view.Cut;
import chargehand.drawing.view.Look;
import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.End;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The work of a stage laid along the bed, as far as it is drawn: what lies within the spindle is left out.
 *
 * @param solid the work when the set-up is done, from 0
 * @param stock its outside before
 * @param grip where it is held
 */
record Held(Stage stage, Bed bed, Solid solid, Profile stock, Hold.Grip grip) {
    /** How much of the rest of a bar is drawn, as a part of the work's length. */
    private static final double BEYOND = 0.15;

    static Held of(Stage stage) {
        Bed rough = new Bed(stage.headstock(), Length.ZERO);
        Length start = start(stage, rough);
        Bed bed = new Bed(stage.headstock(), stage.headstock() == End.A ? start : start.negated());
        Work work = stage.work();
        Profile outer = bed.along(work.outer());
        Profile inner = bed.along(work.inner());
        Drawn drawn = new Drawn(Length.most(Length.ZERO, outer.start()), outer.end());
        Profile hollow = inner.cut(drawn.from, drawn.to);
        Solid solid = new Solid(
                outer.cut(drawn.from, drawn.to),
                hollow,
                hollow,
                work.threads().stream().map(bed::along).flatMap(drawn::of).toList(),
                work.flats().stream().map(bed::along).flatMap(drawn::of).toList(),
                work.across().stream().map(bed::along).filter(drawn::holds).toList());
        return new Held(
                stage,
                bed,
                solid,
                stock(stage, bed, solid),
                bed.along(stage.hold().grip()));
    }

    /** The raw outline as far as it is drawn; that of the work itself where none of it would be. */
    private static Profile stock(Stage stage, Bed bed, Solid solid) {
        Profile stock = bed.along(stage.work().stock());
        Length least = stage.hold() instanceof Hold.Clamped ? beyond(solid.outer()) : Length.ZERO;
        Length from = Length.most(least, stock.start());
        return from.isLessThan(stock.end()) ? stock.cut(from, stock.end()) : solid.outer();
    }

    /** The stretch of the bed on which work is drawn. */
    private record Drawn(Length from, Length to) {
        private boolean holds(Across feature) {
            return switch (feature) {
                case Across.CrossHole hole ->
                    hole.at().length().isMoreThan(from) && hole.at().length().isLessThan(to);
                case Across.Keyway keyway ->
                    keyway.begins().isMoreThan(from) && keyway.ends().isLessThan(to);
                case Across.TaperPin pin ->
                    pin.at().length().isMoreThan(from) && pin.at().length().isLessThan(to);
                case Across.Slit slit ->
                    !slit.begins().isLessThan(from) && !slit.ends().isMoreThan(to);
                case Across.Flat flat ->
                    !flat.begins().isLessThan(from) && !flat.ends().isMoreThan(to);
            };
        }

        /** What is drawn of a thread. */
        private Stream<Solid.ThreadPlace> of(Solid.ThreadPlace place) {
            Length first = Length.most(from, place.from());
            Length last = Length.least(to, place.to());
            return first.isLessThan(last)
                    ? Stream.of(new Solid.ThreadPlace(
                            place.name(),
                            place.thread(),
                            place.inside(),
                            place.root().cut(first, last)))
                    : Stream.empty();
        }

        /** What is drawn of flats. */
        private Stream<Solid.FlatsPlace> of(Solid.FlatsPlace place) {
            Length first = Length.most(from, place.from());
            Length last = Length.least(to, place.to());
            return first.isLessThan(last)
                    ? Stream.of(new Solid.FlatsPlace(
                            place.name(), place.sides(), place.across(), place.corners(), first, last))
                    : Stream.empty();
        }
    }

    /** How far back the rest of a bar is drawn that goes on beyond a saw cut. */
    private static Length beyond(Profile outer) {
        return outer.end().times(BEYOND).negated();
    }

    /** Where the drawing of the work begins: at the face of what holds it, or at its own end. */
    private static Length start(Stage stage, Bed rough) {
        Profile outer = stage.work().outer();
        Length end = rough.first(outer.start(), outer.end());
        Length jaws =
                rough.first(stage.hold().grip().from(), stage.hold().grip().to());
        Length within = Length.most(jaws, end);
        Length grip = within.isLessThan(rough.last(outer.start(), outer.end())) ? within : end;
        return switch (stage.hold()) {
            case Hold.Chuck chuck -> grip;
            case Hold.Collet collet -> grip;
            case Hold.DividingHead head -> grip;
            case Hold.Centres centres -> end;
            case Hold.Mandrel mandrel -> end;
            case Hold.JawsInside inside -> end;
            case Hold.Faceplate plate -> end;
            case Hold.StubMandrel stub -> end;
            case Hold.Vee vee -> end;
            case Hold.Clamped clamped -> end;
        };
    }

    Hold.Support support() {
        return switch (stage.hold()) {
            case Hold.Chuck(Hold.Grip grip, Hold.Support support, var jaws) -> support;
            case Hold.Collet(Hold.Grip grip, Hold.Support support) -> support;
            case Hold.DividingHead(Hold.Grip grip, Hold.Support support) -> support;
            case Hold.Centres centres -> new Hold.Support.Centre();
            case Hold.Mandrel mandrel -> new Hold.Support.Centre();
            case Hold.JawsInside jaws -> new Hold.Support.None();
            case Hold.Faceplate plate -> new Hold.Support.None();
            case Hold.StubMandrel stub -> new Hold.Support.None();
            case Hold.Vee vee -> new Hold.Support.None();
            case Hold.Clamped clamped -> new Hold.Support.None();
        };
    }

    /** The furthest position that is drawn. */
    Length end() {
        return Length.most(solid.length(), stock.end());
    }

    /** The largest radius of work and stock. */
    Length radius() {
        return Length.most(
                solid.outer().most(solid.outer().start(), solid.length()), stock.most(stock.start(), stock.end()));
    }

    /** Cut below the axis only where something inside matters; what is cut across lies on top, where the tool comes from. */
    Look look(AxialScale scale) {
        boolean inside = stage.hold() instanceof Hold.Mandrel
                || stage.hold() instanceof Hold.StubMandrel
                || stage.hold() instanceof Hold.JawsInside
                || stage.surfaces().stream().anyMatch(Surface.Inside.class::isInstance);
        return new Look(solid, scale, inside ? Cut.HALF : Cut.NONE, cutAcross().map(Bearing::up));
    }

    /** The first feature across that is cut in this set-up. */
    private Optional<Across> cutAcross() {
        return stage.surfaces().stream()
                .filter(Surface.Feature.class::isInstance)
                .flatMap(surface -> at(((Surface.Feature) surface).at()).stream())
                .findFirst();
    }

    /** The feature across that has its middle or begins at a position of the part. */
    Optional<Across> at(Length position) {
        Length here = bed.along(position);
        return solid.across().stream()
                .filter(feature -> switch (feature) {
                    case Across.CrossHole hole -> hole.at().length().equals(here);
                    case Across.Keyway keyway -> covers(keyway, here);
                    case Across.Flat flat -> covers(flat, here);
                    case Across.TaperPin pin -> pin.at().length().equals(here);
                    case Across.Slit slit -> covers(slit, here);
                })
                .findFirst();
    }

    private static boolean covers(Across feature, Length at) {
        return !at.isLessThan(feature.begins()) && !at.isMoreThan(feature.ends());
    }
}
