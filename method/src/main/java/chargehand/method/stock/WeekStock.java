package chargehand.method.stock;

import chargehand.measure.Length;
import chargehand.method.rack.Piece;
import chargehand.method.rack.Rack;
import chargehand.part.Part;
import chargehand.trade.bars.BarPacking;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Chooses stock for several jobs together, so that they do not all reach for the same bar: of all ways of giving each job a
 * piece of the rack, the one that uses the least metal, an offcut and a reclaimed piece counting for less than a bar, whose
 * pieces go into the bars that are there. A job's pieces all come from one entry of the rack.
 */
public final class WeekStock {
    private static final int MOST_TRIED = 20_000;
    private static final double OTHER_MATERIAL = 1e12;

    private final CuttingUp cuttingUp;
    private final Rack rack;
    private List<Given> best = List.of();
    private double bestCost = Double.MAX_VALUE;
    private int tried;

    private WeekStock(Rack rack, CuttingUp cuttingUp) {
        this.rack = rack;
        this.cuttingUp = cuttingUp;
    }

    /**
     * A job.
     *
     * @param name by which it is told from the others
     * @param count how many, at least one
     */
    public record Want(String name, Part part, int count) {
        public Want {
            if (count < 1) {
                throw new IllegalArgumentException("at least one part is made, not " + count);
            }
        }
    }

    /** A job and the stock it would come from. */
    private record Given(Want want, Candidate candidate) {
        Length need() {
            return candidate.gives().perPiece();
        }

        double cost() {
            double metal = need().mm() * candidate.raw().areaSquareMm() * want.count();
            boolean same = candidate.match() == Candidate.Match.SAME;
            return metal * Thrift.worth(candidate.piece()) + (same ? 0 : OTHER_MATERIAL);
        }
    }

    /** The cutting list. */
    public static WeekList list(List<Want> wants, Rack rack, CuttingUp cuttingUp) {
        return new WeekStock(rack, cuttingUp).list(wants);
    }

    private WeekList list(List<Want> wants) {
        var open = new ArrayList<List<Given>>();
        var unmet = new ArrayList<WeekList.Unmet>();
        for (Want want : wants) {
            Candidates candidates = StockChooser.candidates(want.part(), 1, rack, cuttingUp);
            if (candidates.fit().isEmpty()) {
                unmet.add(new WeekList.Unmet(
                        want.name(),
                        "Nothing on the rack will make it: " + want.part().material()
                                + " of a size that holds the part is wanted."));
            } else {
                open.add(options(want, candidates));
            }
        }
        give(fewestFirst(open), new ArrayList<>(), 0);
        boolean all = !best.isEmpty() || open.isEmpty();
        List<Given> given = all ? best : inTurn(open, unmet);
        return new WeekList(bars(given), unmet, all && tried < MOST_TRIED);
    }

    private static List<List<Given>> fewestFirst(List<List<Given>> open) {
        return open.stream().sorted(Comparator.comparingInt(List::size)).toList();
    }

    private static List<Given> options(Want want, Candidates candidates) {
        return candidates.fit().stream()
                .map(candidate -> new Given(want, candidate))
                .sorted(Comparator.comparingDouble(Given::cost))
                .toList();
    }

    /** Gives the next job each of its pieces in turn, and leaves what cannot become the best. */
    private void give(List<List<Given>> open, List<Given> given, double cost) {
        if (given.size() == open.size()) {
            tried++;
            if (fits(given)) {
                best = List.copyOf(given);
                bestCost = cost;
            }
            return;
        }
        double rest = open.subList(given.size() + 1, open.size()).stream()
                .mapToDouble(options -> options.getFirst().cost())
                .sum();
        for (Given next : open.get(given.size())) {
            if (cost + next.cost() + rest >= bestCost || tried >= MOST_TRIED) {
                return;
            }
            given.add(next);
            if (holds(given, next.candidate().piece())) {
                give(open, given, cost + next.cost());
            }
            given.removeLast();
        }
    }

    /** Whether a piece is long enough for all that is to come from it, end to end. */
    private static boolean holds(List<Given> given, Piece piece) {
        List<Given> here = from(given, piece);
        double needed = here.stream()
                .mapToDouble(each -> each.need().mm() * each.want().count())
                .sum();
        return needed <= offers(here, piece).mm() * piece.count();
    }

    private static List<Given> from(List<Given> given, Piece piece) {
        return given.stream()
                .filter(each -> each.candidate().piece().equals(piece))
                .toList();
    }

    /** What of each bar can be used: what the longest grip among its jobs leaves. */
    private static Length offers(List<Given> here, Piece piece) {
        Length held = here.stream()
                .map(each -> each.candidate().allowances().held())
                .max(Comparator.naturalOrder())
                .orElse(Length.ZERO);
        return piece.length().length().minus(held);
    }

    private static boolean fits(List<Given> given) {
        return pieces(given).stream()
                .allMatch(piece -> packed(from(given, piece), piece).isPresent());
    }

    private static List<Piece> pieces(List<Given> given) {
        return given.stream().map(each -> each.candidate().piece()).distinct().toList();
    }

    private static Optional<BarPacking> packed(List<Given> here, Piece piece) {
        List<BarPacking.Wanted> wanted = here.stream()
                .map(each -> new BarPacking.Wanted(each.need(), each.want().count()))
                .toList();
        return BarPacking.of(wanted, offers(here, piece), piece.count());
    }

    /** Where not all can be served: those who came first, each by the best piece that is still long enough. */
    private static List<Given> inTurn(List<List<Given>> open, List<WeekList.Unmet> unmet) {
        var given = new ArrayList<Given>();
        for (List<Given> options : open) {
            if (!take(given, options)) {
                unmet.add(new WeekList.Unmet(
                        options.getFirst().want().name(),
                        "Once the others are cut, not enough is left of any piece that would make it."));
            }
        }
        return given;
    }

    private static boolean take(List<Given> given, List<Given> options) {
        for (Given option : options) {
            given.add(option);
            if (fits(given)) {
                return true;
            }
            given.removeLast();
        }
        return false;
    }

    private static List<WeekList.Bar> bars(List<Given> given) {
        var bars = new ArrayList<WeekList.Bar>();
        Map<Piece, List<Given>> byPiece = new LinkedHashMap<>();
        given.forEach(each -> byPiece.computeIfAbsent(each.candidate().piece(), piece -> new ArrayList<>())
                .add(each));
        byPiece.forEach((piece, here) -> packed(here, piece)
                .ifPresent(packing -> packing.bars().forEach(bar -> bars.add(bar(piece, here, bar)))));
        return bars;
    }

    private static WeekList.Bar bar(Piece piece, List<Given> here, BarPacking.Filled filled) {
        var cuts = new ArrayList<WeekList.Cut>();
        for (int i = 0; i < here.size(); i++) {
            if (filled.counts().get(i) > 0) {
                Given each = here.get(i);
                cuts.add(new WeekList.Cut(
                        each.want().name(),
                        filled.counts().get(i),
                        each.need(),
                        each.candidate().way()));
            }
        }
        return new WeekList.Bar(piece, cuts, piece.length().length().minus(filled.taken()));
    }
}
