package chargehand.method.replay;

import chargehand.part.Across;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Feature;
import chargehand.part.InBore;
import chargehand.part.OnEnd;
import chargehand.part.Section;
import chargehand.part.Stays;

/** The features of a part that no cut of a method can make: a method without them does not make the part. */
final class NeverCut {
    private final Body.Turned body;
    private final FaultList faults;

    NeverCut(Body.Turned body, FaultList faults) {
        this.body = body;
        this.faults = faults;
    }

    void check() {
        for (Feature feature : body.features()) {
            faults.unless(
                    feature.isThere() || isCut(feature),
                    Fault.Code.NOT_AS_DRAWN,
                    () -> "'" + feature.name() + "' of the part is not made");
        }
    }

    private static boolean isCut(Feature feature) {
        return switch (feature) {
            case Section.Toothed toothed -> true;
            case Section.Knurled knurled -> false;
            case Section.Curved curved -> false;
            case Section.Round round -> true;
            case Section.Cone cone -> true;
            case Section.Polygon polygon -> true;
            case Section.Threaded threaded -> true;
            case Section.Groove groove -> true;
            case Bore bore -> true;
            case Across.CrossHole hole -> true;
            case Across.Keyway keyway -> true;
            case Across.Flat flat -> false;
            case Across.TaperPin pin -> false;
            case Across.Slit slit -> false;
            case InBore inBore -> true;
            case OnEnd.Drilled drilled -> true;
            case OnEnd.Tapped tapped -> false;
            case OnEnd.Slot slot -> false;
            case OnEnd.Centre centre -> centre.stays() != Stays.MUST;
        };
    }
}
