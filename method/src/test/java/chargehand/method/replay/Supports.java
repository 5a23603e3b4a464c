package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.plan.Blank;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Method;
import chargehand.method.plan.SetUp;
import chargehand.part.End;

/** Holdings without what supports their outer end, or said to run truer. */
final class Supports {
    /** How many of its diameters work stands out unsupported without harm: common practice. */
    private static final double LITTLE = 3;

    private static final Length TRUEST = Length.mm(0.001);

    private Supports() {}

    static boolean isSupported(Holding holding) {
        return !unsupported(holding).equals(holding);
    }

    static Holding unsupported(Holding holding) {
        var none = new Holding.Support.None();
        return switch (holding) {
            case Holding.InChuck held ->
                new Holding.InChuck(
                        held.chuck(), held.jaws(), held.bearing(), held.grip(), held.headstock(), none, held.runOut());
            case Holding.InCollet held ->
                new Holding.InCollet(held.collet(), held.grip(), held.headstock(), none, held.runOut());
            case Holding.InDividingHead held ->
                new Holding.InDividingHead(held.head(), held.grip(), held.headstock(), none, held.runOut());
            default -> holding;
        };
    }

    /** Whether no more than a little of the blank stands out of the grip, counted in diameters gripped. */
    static boolean standsOutLittle(Method method, SetUp setUp) {
        return switch (setUp.holding()) {
            case Holding.InChuck held -> standsOutLittle(method, held.grip(), held.headstock());
            case Holding.InCollet held -> standsOutLittle(method, held.grip(), held.headstock());
            case Holding.InDividingHead held -> standsOutLittle(method, held.grip(), held.headstock());
            default -> false;
        };
    }

    private static boolean standsOutLittle(Method method, Holding.Grip grip, End headstock) {
        Length out = switch (method.stock().blank()) {
            case Blank.RoundBar bar ->
                headstock == End.A ? bar.to().minus(grip.to()) : grip.from().minus(bar.from());
            case Blank.PolygonBar bar ->
                headstock == End.A ? bar.to().minus(grip.to()) : grip.from().minus(bar.from());
            default -> Length.ZERO;
        };
        return out.over(grip.diameter()) <= LITTLE;
    }

    static Holding truer(Holding holding) {
        return switch (holding) {
            case Holding.InChuck held ->
                new Holding.InChuck(
                        held.chuck(),
                        held.jaws(),
                        held.bearing(),
                        held.grip(),
                        held.headstock(),
                        held.support(),
                        TRUEST);
            case Holding.InCollet held ->
                new Holding.InCollet(held.collet(), held.grip(), held.headstock(), held.support(), TRUEST);
            case Holding.InDividingHead held ->
                new Holding.InDividingHead(held.head(), held.grip(), held.headstock(), held.support(), TRUEST);
            case Holding.BetweenCentres held -> new Holding.BetweenCentres(held.driven(), held.dog(), TRUEST);
            case Holding.OnMandrel held ->
                new Holding.OnMandrel(held.mandrel(), held.bore(), held.from(), held.to(), held.headstock(), TRUEST);
            case Holding.OnStub held ->
                new Holding.OnStub(held.mandrel(), held.bore(), held.from(), held.to(), held.headstock(), TRUEST);
            case Holding.OnFaceplate held ->
                new Holding.OnFaceplate(held.headstock(), held.clamped(), held.within(), held.rim(), TRUEST);
            default -> holding;
        };
    }
}
