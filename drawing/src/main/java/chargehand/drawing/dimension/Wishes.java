package chargehand.drawing.dimension;

import chargehand.drawing.view.Side;
import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.LengthWish;
import chargehand.part.Part;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is wanted of single lengths of a turned part, by the faces they run between. */
final class Wishes {
    static final Wishes NONE = new Wishes(Map.of());

    private final Map<FacePair, LengthWish> byFaces;

    private Wishes(Map<FacePair, LengthWish> byFaces) {
        this.byFaces = byFaces;
    }

    /** The wishes of a part that its checks have passed. */
    static Wishes of(Part part, Body.Turned body) {
        Map<FacePair, LengthWish> byFaces = new LinkedHashMap<>();
        for (LengthWish wish : part.drafting().lengths()) {
            Length from = wish.from().position(body).orElseThrow();
            Length to = wish.to().position(body).orElseThrow();
            byFaces.put(FacePair.of(from, to), wish);
        }
        return new Wishes(byFaces);
    }

    boolean isEmpty() {
        return byFaces.isEmpty();
    }

    Optional<LengthWish> find(FacePair faces) {
        return Optional.ofNullable(byFaces.get(faces));
    }

    boolean is(FacePair faces, LengthWish.Giving giving) {
        return find(faces).flatMap(LengthWish::giving).filter(giving::equals).isPresent();
    }

    /** Whether a length is not to be worked to: in brackets, or not there at all. */
    boolean isOut(FacePair faces) {
        return is(faces, LengthWish.Giving.BRACKETED) || is(faces, LengthWish.Giving.LEFT_OUT);
    }

    /** The lengths that are wanted so, in the order of the file. */
    List<FacePair> all(LengthWish.Giving giving) {
        return byFaces.keySet().stream().filter(faces -> is(faces, giving)).toList();
    }

    /** The side of the view that a length is wanted on. */
    Optional<Side> side(AxialDimension length) {
        return find(length.faces()).flatMap(LengthWish::side).map(side -> switch (side) {
            case ABOVE -> Side.ABOVE;
            case BELOW -> Side.BELOW;
        });
    }

    /** How far out a length is wanted: -1 before those that say nothing, 1 beyond them. */
    int rank(AxialDimension length) {
        return find(length.faces())
                .flatMap(LengthWish::tier)
                .map(tier -> switch (tier) {
                    case NEARER -> -1;
                    case FARTHER -> 1;
                })
                .orElse(0);
    }
}
