package chargehand.method.setting;

import chargehand.measure.Length;
import chargehand.method.holding.Choice;
import chargehand.method.task.Shape;
import chargehand.method.work.Standing;
import chargehand.part.End;
import chargehand.part.Section;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;

/**
 * The order in which the outside is turned in one holding: from the largest diameter down, each cut taken from the free end
 * as far as its own section goes, so that every smaller section is roughed on the way; necks and grooves last.
 */
final class OutsideCuts {
    private final Shape shape;
    private final End free;
    private final Length[] diameters;
    private final Standing work;
    private final Length face;
    private final Choice.Stretch clear;

    /**
     * The room for the tool.
     *
     * @param face where the work ends towards the free end once it is faced, if it is
     * @param clear the stretch that the holding leaves clear
     */
    record Room(Length face, Choice.Stretch clear) {}

    /**
     * One stretch to turn.
     *
     * @param section the section it brings to size
     * @param from along the axis, less than {@code to}
     * @param to along the axis
     * @param start the largest diameter met on the way
     * @param finish the diameter it leaves
     */
    record Turning(int section, Length from, Length to, Length start, Length finish) {
        Length length() {
            return to.minus(from);
        }
    }

    private OutsideCuts(Standing work, End free, Room room) {
        this.shape = work.shape();
        this.free = free;
        this.work = work;
        this.face = room.face();
        this.clear = room.clear();
        this.diameters = new Length[shape.count()];
        for (int i = 0; i < diameters.length; i++) {
            diameters[i] = work.diameter(i);
        }
    }

    /**
     * The stretches for these sections, grooves left out.
     *
     * @param free the end the tool comes from
     */
    static List<Turning> list(Standing work, BitSet sections, End free, Room room) {
        var cuts = new OutsideCuts(work, free, room);
        var order = sections.stream()
                .boxed()
                .filter(index -> !(cuts.shape.section(index) instanceof Section.Groove))
                .sorted(Comparator.comparing((Integer index) -> cuts.shape.isNeck(index))
                        .thenComparing(index -> cuts.shape.diameter(index), Comparator.reverseOrder())
                        .thenComparing(index -> cuts.fromFree(index), Comparator.reverseOrder()))
                .toList();
        var turnings = new ArrayList<Turning>();
        for (int index : order) {
            if (cuts.diameters[index].isMoreThan(cuts.shape.diameter(index))) {
                turnings.add(cuts.turn(index, sections));
            }
        }
        return turnings;
    }

    private int fromFree(int index) {
        return free == End.A ? index : shape.count() - 1 - index;
    }

    /** Takes a section to its own diameter, and with it all that lies towards the free end and will be smaller. */
    private Turning turn(int index, BitSet sections) {
        Length finish = shape.diameter(index);
        Length start = diameters[index];
        Length inner = innerBorder(index);
        Length outer = shape.border(index, free);
        diameters[index] = finish;
        int next = shape.neighbour(index, free);
        while (shape.isSection(next)
                && sections.get(next)
                && !shape.diameter(next).isMoreThan(finish)) {
            start = Length.most(start, diameters[next]);
            diameters[next] = Length.least(diameters[next], finish);
            outer = shape.border(next, free);
            next = shape.neighbour(next, free);
        }
        if (!shape.isSection(next)) {
            outer = face;
        }
        return new Turning(index, Length.least(inner, outer), Length.most(inner, outer), start, finish);
    }

    /**
     * The section's border towards the headstock; the last one is turned on past the slot in which it will be parted, as far
     * as the jaws leave room.
     */
    private Length innerBorder(int index) {
        End back = free.other();
        boolean last = !shape.isSection(shape.neighbour(index, back));
        Length border = shape.border(index, back);
        return work.slot()
                .filter(slot -> last && work.isOnBar() && slot.bar() == back)
                .map(Standing.Slot::barSide)
                .map(side -> nearer(side, back == End.A ? clear.from() : clear.to()))
                .map(side -> back.distance(border, side).isPositive() ? side : border)
                .orElse(border);
    }

    /** Whichever of two positions lies nearer to the free end. */
    private Length nearer(Length one, Length other) {
        return free.distance(one, other).isPositive() ? other : one;
    }
}
