package chargehand.web.serving;

import chargehand.drawing.sheet.PartDrawing;
import chargehand.drawing.sheet.SeenLengths;
import chargehand.part.Part;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.locks.ReentrantLock;

/** The views of parts as elements of a page. Arranging sizes takes a while, so those drawn last are kept. */
public final class Sketches {
    private static final int KEPT = 200;

    private final ReentrantLock lock = new ReentrantLock();
    private final Map<Part, Sketch> drawn = new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Part, Sketch> eldest) {
            return size() > KEPT;
        }
    };

    /**
     * A drawing as an element of a page.
     *
     * @param plain to be looked at
     * @param touched to be touched: each length that may be had otherwise leads to where the page offers that
     */
    private record Sketch(String plain, String touched) {}

    /** The views of a part with their sizes. */
    public String of(Part part) {
        return sketch(part).plain;
    }

    /** The same, its lengths leading to what the page offers about each. */
    public String touched(Part part) {
        return sketch(part).touched;
    }

    private Sketch sketch(Part part) {
        return kept(part).orElseGet(() -> {
            SeenLengths seen = PartDrawing.seen(part);
            Sketch sketch = new Sketch(Plate.of(seen.picture()), Plate.of(seen));
            lock.lock();
            try {
                drawn.put(part, sketch);
            } finally {
                lock.unlock();
            }
            return sketch;
        });
    }

    private Optional<Sketch> kept(Part part) {
        lock.lock();
        try {
            return Optional.ofNullable(drawn.get(part));
        } finally {
            lock.unlock();
        }
    }
}
