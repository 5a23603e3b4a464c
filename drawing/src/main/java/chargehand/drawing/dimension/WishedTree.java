package chargehand.drawing.dimension;

import chargehand.measure.Length;
import chargehand.part.LengthWish;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The lengths that define a part when somebody wants some given and others not. What the rules choose stands, less what is
 * not to be given; what is wanted besides is added unless it follows from what stands, because then the part would be said
 * twice; faces that are without a place after that get the length that the rules like next.
 */
final class WishedTree {
    private final Set<FacePair> given = new LinkedHashSet<>();
    private final Map<FacePair, List<FacePair>> circles = new HashMap<>();
    private final FaceTree tree = new FaceTree();

    /**
     * Chooses.
     *
     * @param usual what the rules choose
     * @param liked all that might be given, best liked first; they place every face
     */
    WishedTree(List<FacePair> usual, List<FacePair> liked, Wishes wishes) {
        usual.stream().filter(faces -> !wishes.isOut(faces)).forEach(this::give);
        wishes.all(LengthWish.Giving.PLAIN).stream()
                .filter(faces -> !given.contains(faces))
                .forEach(this::add);
        liked.stream().filter(faces -> !wishes.isOut(faces)).forEach(this::give);
        liked.forEach(this::give);
    }

    private boolean give(FacePair faces) {
        boolean says = tree.join(faces.from(), faces.to());
        if (says) {
            given.add(faces);
        }
        return says;
    }

    private void add(FacePair faces) {
        if (!give(faces)) {
            circles.put(faces, way(faces.from(), faces.to()));
        }
    }

    /** The lengths to give. */
    Set<FacePair> given() {
        return given;
    }

    /** What is wanted and follows from other lengths, each with those that it follows from. */
    Map<FacePair, List<FacePair>> circles() {
        return circles;
    }

    boolean isWhole(int faces) {
        return tree.isWhole(faces);
    }

    /** The given lengths that lead from one face to another. */
    private List<FacePair> way(Length from, Length to) {
        Map<Length, List<FacePair>> ways = new HashMap<>(Map.of(from, List.of()));
        Deque<Length> next = new ArrayDeque<>(List.of(from));
        while (!next.isEmpty()) {
            Length face = next.remove();
            for (FacePair pair : given) {
                Length other = pair.from().equals(face) ? pair.to() : pair.from();
                boolean touches = pair.from().equals(face) || pair.to().equals(face);
                if (touches && !ways.containsKey(other)) {
                    List<FacePair> way = new ArrayList<>(ways.getOrDefault(face, List.of()));
                    way.add(pair);
                    ways.put(other, List.copyOf(way));
                    next.add(other);
                }
            }
        }
        return ways.getOrDefault(to, List.of());
    }
}
