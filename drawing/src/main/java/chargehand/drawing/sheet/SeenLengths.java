package chargehand.drawing.sheet;

import chargehand.drawing.dimension.GivenLengths;
import chargehand.drawing.dimension.Placing;
import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Picture;
import chargehand.drawing.picture.Point;
import chargehand.part.Body;
import chargehand.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The views of a part, and where in them its lengths stand that may be had otherwise.
 *
 * @param picture the views with their sizes
 * @param spots where lengths stand; one that stands in an enlarged place alone has none
 */
public record SeenLengths(Picture picture, List<Spot> spots) {
    /** As near as an arrow must point to a face (mm). */
    private static final double NEAR = 0.01;

    public SeenLengths {
        spots = List.copyOf(spots);
    }

    /** The words of a length, in the picture. */
    public record Spot(GivenLengths.Given length, Box words) {}

    static SeenLengths of(Part part, Picture picture, List<DrawnView> views) {
        List<Spot> spots = new ArrayList<>();
        if (part.body() instanceof Body.Turned body) {
            for (DrawnView view : views) {
                if (view.shows() == DrawnView.Shows.SIDE) {
                    for (GivenLengths.Given given : GivenLengths.of(part).lengths()) {
                        words(view, body, given)
                                .map(box -> new Spot(given, box))
                                .ifPresent(spots::add);
                    }
                }
            }
        }
        return new SeenLengths(picture, spots);
    }

    private static Optional<Box> words(DrawnView view, Body.Turned body, GivenLengths.Given given) {
        double from = view.scale().x(body.start(given.from()));
        double to = view.scale().x(body.start(given.to()));
        return view.view().placed().stream()
                .filter(placing -> placing.says().equals(given.says()) && isBetween(placing, from, to))
                .flatMap(placing -> placing.texts().stream())
                .findFirst()
                .map(box -> box.moved(view.x(), view.y()));
    }

    /** Whether all its arrows point to one of two faces; of lengths on one line each has but one arrow. */
    private static boolean isBetween(Placing placing, double from, double to) {
        return !placing.tips().isEmpty()
                && placing.tips().stream()
                        .map(Point::x)
                        .allMatch(x -> Math.abs(x - from) < NEAR || Math.abs(x - to) < NEAR);
    }
}
