package chargehand.drawing.dimension;

import chargehand.drawing.picture.Box;
import chargehand.drawing.view.Cut;
import chargehand.drawing.view.KeySection;
import chargehand.drawing.view.Look;
import chargehand.drawing.view.Reach;
import chargehand.drawing.view.Side;
import chargehand.drawing.view.SideView;
import chargehand.drawing.view.View;
import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Depth;
import chargehand.part.End;
import chargehand.part.Part;
import chargehand.part.Section;
import chargehand.part.Size;
import chargehand.part.shape.Solid;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** All sizes of a turned part on its side view. */
public final class TurnedSizes {
    private final Subject subject;
    private final List<SmallGrooves.Enlarged> enlarged;
    private final View view;
    private final Wishes wishes;
    private Board board;
    private final List<String> notes = new ArrayList<>();

    private TurnedSizes(Subject subject, Box limits, List<SmallGrooves.Enlarged> enlarged) {
        this.subject = subject;
        this.enlarged = enlarged;
        view = SideView.of(subject.look());
        wishes = Wishes.of(subject.part(), subject.body());
        board = new Board(view, limits);
    }

    /**
     * The side view of a part with its sizes round it.
     *
     * @param limits where sizes may stand, in the view's own frame; where they cannot, they stand outside
     */
    public static Dimensioned of(Part part, Body.Turned body, Look look, Box limits) {
        return of(part, body, look, limits, List.of());
    }

    /**
     * The side view of a part with its sizes round it, but the widths of grooves that are shown larger elsewhere.
     *
     * @param enlarged those grooves, each marked by a ring
     */
    public static Dimensioned of(
            Part part, Body.Turned body, Look look, Box limits, List<SmallGrooves.Enlarged> enlarged) {
        TurnedSizes sizes = new TurnedSizes(new Subject(part, body, look), limits, enlarged);
        sizes.placeCuttingPlanes();
        sizes.placeLengths();
        sizes.placeRest();
        Touch touch = new Touch(sizes.view.marks());
        List<Placing> placed = sizes.board.placed().stream().map(touch::brought).toList();
        return new Dimensioned(sizes.view, placed, sizes.notes);
    }

    /**
     * Lengths below the view; where they would run through each other, those of features within on one side and those of the
     * outside on the other. In a half section each stands by its own half.
     */
    private void placeLengths() {
        List<AxialDimension> outside = AxialScheme.of(subject.body(), subject.text(), wishes).lengths().stream()
                .filter(length -> !isShownLarger(length))
                .toList();
        List<AxialDimension> within = new ArrayList<>(new AcrossWays(subject).positions());
        within.addAll(new InBoreWays(subject).positions());
        bores().forEach(bore -> addDepth(bore, within));
        boolean half = subject.look().cut() == Cut.HALF;
        Split best = splits(outside, once(within), half).stream()
                .map(this::asWished)
                .reduce((one, other) -> cost(other) < cost(one) ? other : one)
                .orElseThrow();
        stack(best.below, Side.BELOW);
        stack(best.above, Side.ABOVE);
    }

    private boolean isShownLarger(AxialDimension length) {
        return enlarged.stream()
                .flatMap(one -> one.sections().stream())
                .anyMatch(index -> length.from().equals(subject.body().start(index))
                        && length.to().equals(subject.body().start(index + 1)));
    }

    /** The same with those lengths on the other side of which that is wanted. */
    private Split asWished(Split split) {
        if (wishes.isEmpty()) {
            return split;
        }
        List<AxialDimension> all = new ArrayList<>(split.below);
        all.addAll(split.above);
        Map<Boolean, List<AxialDimension>> below = all.stream()
                .collect(Collectors.partitioningBy(length -> wishes.side(length)
                        .map(side -> side == Side.BELOW)
                        .orElseGet(() -> split.below.contains(length))));
        return new Split(below.getOrDefault(true, List.of()), below.getOrDefault(false, List.of()));
    }

    /** Which lengths stand below the view and which above it. */
    private record Split(List<AxialDimension> below, List<AxialDimension> above) {}

    /** The ways to part lengths, best liked first. */
    private List<Split> splits(List<AxialDimension> outside, List<AxialDimension> within, boolean half) {
        List<AxialDimension> all = new ArrayList<>(outside);
        all.addAll(within);
        Length whole = subject.body().length();
        List<AxialDimension> overall =
                all.stream().filter(length -> length.length().equals(whole)).toList();
        List<AxialDimension> others =
                all.stream().filter(length -> !length.length().equals(whole)).toList();
        return List.of(
                new Split(once(all), List.of()),
                half ? new Split(within, outside) : new Split(outside, within),
                new Split(once(others), once(overall)));
    }

    private double cost(Split split) {
        return crossings(split.below) + crossings(split.above);
    }

    private double crossings(List<AxialDimension> lengths) {
        return LengthStack.crossings(new AxialTiers(subject.look().scale(), Side.BELOW, wishes::rank).spans(lengths));
    }

    private void stack(List<AxialDimension> lengths, Side side) {
        Reach reach = subject.reach();
        Map<Length, Double> starts = starts();
        new AxialTiers(subject.look().scale(), side, wishes::rank)
                .draw(
                        lengths,
                        List.of(),
                        reach.outside(side) + (hasKeyway() ? CuttingPlane.ROOM : 0),
                        at -> starts.getOrDefault(at, reach.outside(side, at)))
                .forEach(board::add);
    }

    /** The bores to give sizes of: all but those that are there already and are bored away. */
    private List<Bore> bores() {
        List<Bore> within = Solid.boresWithinOthers(subject.body());
        return subject.body().inside().stream()
                .filter(bore -> !(bore.isThere() && within.contains(bore)))
                .toList();
    }

    private boolean hasKeyway() {
        return subject.body().across().stream().anyMatch(Across.Keyway.class::isInstance);
    }

    /** Where extension lines begin that do not begin at a face of the outside (mm below the axis). */
    private Map<Length, Double> starts() {
        Map<Length, Double> starts = new HashMap<>(new AcrossWays(subject).starts());
        for (int i = 0; i <= subject.body().outside().size(); i++) {
            starts.remove(subject.body().start(i));
        }
        return starts;
    }

    private void placeCuttingPlanes() {
        int number = 0;
        for (Across feature : subject.body().across()) {
            if (feature instanceof Across.Keyway keyway) {
                Length middle = KeySection.middle(keyway);
                double outline = Math.max(
                        subject.reach().outside(Side.ABOVE, middle),
                        subject.reach().outside(Side.BELOW, middle));
                board.add(CuttingPlane.at(subject.x(middle), outline, sectionLetter(number++)));
            }
        }
    }

    /** The letter of a section, from K on, clear of the letters of datums and ends. */
    public static String sectionLetter(int number) {
        return String.valueOf((char) ('K' + number % 16));
    }

    /** Each length once: what lies between the same two faces and reads the same says nothing new. */
    private static List<AxialDimension> once(List<AxialDimension> lengths) {
        Set<String> seen = new HashSet<>();
        return lengths.stream()
                .filter(length -> seen.add(length.from() + " " + length.to() + " " + length.wording()))
                .toList();
    }

    /** Depths of bores that are given as lengths; a callout gives the others. */
    private void addDepth(Bore bore, List<AxialDimension> lengths) {
        switch (bore) {
            case Bore.Bored bored -> addDepth(bored, bored.depth(), lengths);
            case Bore.Reamed reamed -> addDepth(reamed, reamed.depth(), lengths);
            case Bore.Counterbored wide -> addDepth(wide, wide.depth(), lengths);
            case Bore.Drilled drilled -> {}
            case Bore.Tapped tapped -> {}
            case Bore.Coned coned -> {}
        }
    }

    private void addDepth(Bore bore, Depth depth, List<AxialDimension> lengths) {
        switch (depth) {
            case Depth.Through() -> {}
            case Depth.Blind(Size size) -> {
                Length whole = subject.body().length();
                boolean fromA = bore.from() == End.A;
                lengths.add(new AxialDimension(
                        fromA ? Length.ZERO : whole.minus(size.length()),
                        fromA ? size.length() : whole,
                        subject.text().size(size)));
            }
        }
    }

    private void placeRest() {
        List<List<Placing>> ways = new ArrayList<>();
        for (int i = 0; i < subject.body().outside().size(); i++) {
            if (!(subject.body().outside().get(i) instanceof Section.Groove)) {
                ways.addAll(new SectionWays(subject, i).all());
            }
        }
        ways.addAll(new GrooveWays(subject).all());
        if (subject.look().cut() != Cut.NONE) {
            bores().forEach(bore -> ways.add(new BoreWays(subject, bore).all()));
        }
        AcrossWays across = new AcrossWays(subject);
        EdgeWays edges = new EdgeWays(subject);
        ways.addAll(across.all());
        ways.addAll(new InBoreWays(subject).all());
        ways.addAll(new CentreWays(subject).all());
        ways.addAll(new EndSlotWays(subject).all());
        ways.addAll(edges.all());
        ways.addAll(new TieWays(subject).all());
        enlarged.forEach(one -> ways.addAll(DetailSizes.rings(subject, one)));
        ways.addAll(new IssueWays(subject).all());
        ways.addAll(new EndNames(subject).all());
        board = Arranger.place(board, ways);
        notes.addAll(edges.notes());
        notes.addAll(new FeatureNotes(subject).all());
    }
}
