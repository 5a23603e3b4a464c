package chargehand.timing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The rule of thumb for cutting lists: the longest piece first, each from the first bar begun that still has room for it. */
final class FirstFit {
    private FirstFit() {}

    /** How many bars it takes. A last piece may fall off with its cut beyond the end of the bar. */
    static long bars(BarTimes.CuttingList list) {
        List<Integer> room = new ArrayList<>();
        list.pieces().stream().sorted(Comparator.reverseOrder()).forEach(piece -> {
            int need = piece + list.kerf();
            int bar = 0;
            while (bar < room.size() && room.get(bar) < need) {
                bar++;
            }
            if (bar == room.size()) {
                room.add(list.bar() + list.kerf());
            }
            room.set(bar, room.get(bar) - need);
        });
        return room.size();
    }
}
