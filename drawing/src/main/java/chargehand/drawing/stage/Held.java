package chargehand.drawing.stage;

import chargehand.drawing.view.AxialScale;
import chargehand.drawing.view.Cut;
import chargehand.drawing.view.Look;
import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.End;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;

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
        Profile stock = bed.along(work.stock());
        Length from = Length.most(Length.ZERO, outer.start());
        Solid solid = new Solid(
                outer.cut(from, outer.end()),
                inner.cut(from, inner.end()),
                inner.cut(from, inner.end()),
                work.threads().stream()
                        .map(bed::along)
                        .filter(place -> place.to().isMoreThan(from))
                        .map(place -> drawn(place, from))
                        .toList(),
                work.flats().stream()
                        .map(bed::along)
                        .filter(place -> !place.from().isLessThan(from))
                        .toList(),
                work.across().stream()
                        .map(bed::along)
                        .filter(feature -> start(feature).isMoreThan(from))
                        .toList());
        Length stockFrom =
                Length.most(stage.hold() instanceof Hold.Clamped ? beyond(outer) : Length.ZERO, stock.start());
        return new Held(
                stage,
                bed,
                solid,
                stock.cut(stockFrom, stock.end()),
                bed.along(stage.hold().grip()));
    }

    /** How far back the rest of a bar is drawn that goes on beyond a saw cut. */
    private static Length beyond(Profile outer) {
        return outer.end().times(BEYOND).negated();
    }

    /** What is drawn of a thread that may run into what holds it. */
    private static Solid.ThreadPlace drawn(Solid.ThreadPlace place, Length from) {
        Profile root = place.root().cut(Length.most(from, place.from()), place.to());
        return new Solid.ThreadPlace(place.name(), place.thread(), place.inside(), root);
    }

    private static Length start(Across feature) {
        return switch (feature) {
            case Across.CrossHole hole -> hole.at().length();
            case Across.Keyway keyway -> keyway.from().length();
        };
    }

    /** Where the drawing of the work begins: at the face of what holds it, or at its own end. */
    private static Length start(Stage stage, Bed rough) {
        Profile outer = stage.work().outer();
        Length end = rough.first(outer.start(), outer.end());
        Length grip =
                rough.first(stage.hold().grip().from(), stage.hold().grip().to());
        return switch (stage.hold()) {
            case Hold.Chuck chuck -> grip;
            case Hold.Collet collet -> grip;
            case Hold.DividingHead head -> grip;
            case Hold.Centres centres -> end;
            case Hold.Mandrel mandrel -> end;
            case Hold.Vee vee -> end;
            case Hold.Clamped clamped -> end;
        };
    }

    Hold.Support support() {
        return switch (stage.hold()) {
            case Hold.Chuck(Hold.Grip grip, Hold.Support support) -> support;
            case Hold.Collet(Hold.Grip grip, Hold.Support support) -> support;
            case Hold.DividingHead(Hold.Grip grip, Hold.Support support) -> support;
            case Hold.Centres centres -> new Hold.Support.Centre();
            case Hold.Mandrel mandrel -> new Hold.Support.Centre();
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

    Look look(AxialScale scale) {
        Profile inner = solid.inner();
        boolean hollow = inner.most(inner.start(), inner.end()).isPositive();
        return new Look(solid, scale, hollow ? Cut.HALF : Cut.NONE);
    }
}
