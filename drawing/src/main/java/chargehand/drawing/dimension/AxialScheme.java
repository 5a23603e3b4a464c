package chargehand.drawing.dimension;

import chargehand.drawing.sign.Wording;
import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.LengthWish;
import chargehand.part.Section;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Chooses the lengths that define the outside of a turned part: a least spanning tree over its faces, so that every face is
 * placed once and none twice. Lengths with a tolerance of their own come first, then the widths of grooves and threads, the
 * whole length, flanges, and then lengths from the face that matters most.
 */
public final class AxialScheme {
    /** So many flanges each have their own width; with more, lengths are given from the datum. */
    private static final int FEW = 2;

    private final Body.Turned body;
    private final SizeText text;
    private final List<Length> faces;
    private final Length datum;

    private AxialScheme(Body.Turned body, SizeText text) {
        this.body = body;
        this.text = text;
        TreeSet<Length> all = new TreeSet<>();
        for (int i = 0; i <= body.outside().size(); i++) {
            all.add(body.start(i));
        }
        faces = List.copyOf(all);
        datum = new DatumFace(body).at();
    }

    /** The lengths to give, from end A on, shorter ones first where two begin alike. */
    public static List<AxialDimension> of(Body.Turned body, SizeText text) {
        return of(body, text, Wishes.NONE).lengths;
    }

    /** The same where somebody wants some lengths otherwise. */
    static Chosen of(Body.Turned body, SizeText text, Wishes wishes) {
        return new AxialScheme(body, text).chosen(wishes);
    }

    /**
     * What a drawing gives.
     *
     * @param lengths from end A on, those in brackets among them
     * @param circles what is wanted and follows from other lengths, each with those that it follows from
     */
    record Chosen(List<AxialDimension> lengths, Map<AxialDimension, List<AxialDimension>> circles) {}

    private Chosen chosen(Wishes wishes) {
        List<Edge> candidates = candidates();
        FaceTree usual = new FaceTree();
        List<FacePair> chosen = candidates.stream()
                .map(Edge::faces)
                .filter(faces -> usual.join(faces.from(), faces.to()))
                .toList();
        WishedTree tree = new WishedTree(chosen, liked(candidates), wishes);
        if (!tree.isWhole(faces.size())) {
            throw new IllegalStateException("the faces of a part hang together by its sections");
        }
        List<AxialDimension> lengths =
                new ArrayList<>(tree.given().stream().map(this::dimension).toList());
        references(candidates, tree, wishes).forEach(faces -> lengths.add(reference(faces)));
        lengths.sort(Comparator.comparing(AxialDimension::from).thenComparing(AxialDimension::to));
        Map<AxialDimension, List<AxialDimension>> circles = new LinkedHashMap<>();
        tree.circles()
                .forEach((faces, others) -> circles.put(
                        reference(faces), others.stream().map(this::dimension).toList()));
        return new Chosen(lengths, circles);
    }

    /** Candidates as they are liked, and then any two faces, which are wanted only where others are not to be given. */
    private List<FacePair> liked(List<Edge> candidates) {
        Set<FacePair> liked = new LinkedHashSet<>();
        candidates.forEach(edge -> liked.add(edge.faces()));
        for (Length one : faces) {
            faces.stream().filter(one::isLessThan).forEach(other -> liked.add(new FacePair(one, other)));
        }
        return List.copyOf(liked);
    }

    /** What stands in brackets: the width of a flange that follows from others, and what is wanted so. */
    private Set<FacePair> references(List<Edge> candidates, WishedTree tree, Wishes wishes) {
        Set<FacePair> references = new LinkedHashSet<>();
        candidates.stream()
                .filter(edge -> isFlange(edge) && flanges() <= FEW)
                .map(Edge::faces)
                .filter(faces -> !wishes.is(faces, LengthWish.Giving.LEFT_OUT))
                .forEach(references::add);
        references.addAll(wishes.all(LengthWish.Giving.BRACKETED));
        references.addAll(tree.circles().keySet());
        references.removeAll(tree.given());
        return references;
    }

    /**
     * A length that might be given.
     *
     * @param cost how little it is wanted
     */
    private record Edge(Length from, Length to, int cost) {
        Length length() {
            return to.minus(from);
        }

        FacePair faces() {
            return new FacePair(from, to);
        }
    }

    /** In the order they are wanted; of those from the datum first the ones that place a groove by its far side. */
    private List<Edge> candidates() {
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < body.outside().size(); i++) {
            edges.add(new Edge(body.start(i), body.start(i + 1), ownCost(i)));
        }
        edges.add(new Edge(faces.getFirst(), faces.getLast(), Cost.OVERALL));
        for (Length face : faces) {
            if (!face.equals(datum)) {
                edges.add(new Edge(Length.least(face, datum), Length.most(face, datum), Cost.FROM_DATUM));
            }
        }
        edges.sort(Comparator.comparingInt(Edge::cost)
                .thenComparingInt(edge -> edge.cost == Cost.FROM_DATUM && isGrooveFarSide(edge) ? 0 : 1)
                .thenComparing(Edge::length)
                .thenComparing(Edge::from));
        return edges;
    }

    private boolean isGrooveFarSide(Edge edge) {
        for (int i = 0; i < body.outside().size(); i++) {
            if (body.outside().get(i) instanceof Section.Groove) {
                boolean before = edge.to.equals(datum) && body.start(i).equals(edge.from);
                boolean after = edge.from.equals(datum) && body.start(i + 1).equals(edge.to);
                if (before || after) {
                    return true;
                }
            }
        }
        return false;
    }

    /** How little the own length of a section is wanted. */
    private int ownCost(int index) {
        Section section = body.outside().get(index);
        if (section.stretch().length().isToleranced()) {
            return Cost.TOLERANCED;
        }
        return switch (section) {
            case Section.Groove groove -> Cost.GROOVE;
            case Section.Threaded threaded -> Cost.THREAD;
            case Section.Cone cone -> Cost.CONE;
            case Section.Polygon polygon -> isFlange(index) ? flange(index) : Cost.THREAD;
            case Section.Round round -> isFlange(index) ? flange(index) : Cost.CHAIN;
            case Section.Toothed toothed -> isFlange(index) ? Cost.FLANGE : Cost.THREAD;
            case Section.Curved curved -> Cost.CONE;
            case Section.Knurled knurled -> isFlange(index) ? Cost.FLANGE : Cost.THREAD;
        };
    }

    /** A flange at the datum, or one of few, has its own width; many in a row would add up their tolerances. */
    private int flange(int index) {
        boolean atDatum =
                body.start(index).equals(datum) || body.start(index + 1).equals(datum);
        return atDatum || flanges() <= FEW ? Cost.FLANGE : Cost.CHAIN;
    }

    private long flanges() {
        return IntStream.range(0, body.outside().size()).filter(this::isFlange).count();
    }

    private boolean isFlange(Edge edge) {
        return edge.cost == Cost.FLANGE;
    }

    /** Whether a section stands out from both its neighbours. */
    private boolean isFlange(int index) {
        if (index == 0 || index == body.outside().size() - 1) {
            return false;
        }
        Section own = body.outside().get(index);
        Length before = body.outside().get(index - 1).diameterTowardsB();
        Length after = body.outside().get(index + 1).diameterTowardsA();
        return own.diameterTowardsA().isMoreThan(before)
                && own.diameterTowardsB().isMoreThan(after);
    }

    /** As written where it is the length of one section, worked out otherwise. */
    private AxialDimension dimension(FacePair edge) {
        for (int i = 0; i < body.outside().size(); i++) {
            if (body.start(i).equals(edge.from()) && body.start(i + 1).equals(edge.to())) {
                return new AxialDimension(
                        edge.from(),
                        edge.to(),
                        text.size(body.outside().get(i).stretch().length()));
            }
        }
        return new AxialDimension(edge.from(), edge.to(), text.length(edge.length()));
    }

    /** A width that one looks for though it follows from the other lengths: in brackets. */
    private AxialDimension reference(FacePair edge) {
        Wording bracketed = Wording.of("(").then(text.length(edge.length())).then(Wording.of(")"));
        return new AxialDimension(edge.from(), edge.to(), bracketed);
    }

    /** What is wanted most costs least (the order is our own; the standards leave it to the draughtsman). */
    private static final class Cost {
        static final int TOLERANCED = 0;
        static final int GROOVE = 1;
        static final int THREAD = 2;
        static final int CONE = 3;
        static final int OVERALL = 4;
        static final int FLANGE = 5;
        static final int FROM_DATUM = 6;
        static final int CHAIN = 8;

        private Cost() {}
    }
}
