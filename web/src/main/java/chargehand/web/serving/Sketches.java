package chargehand.web.serving;

import chargehand.drawing.sheet.PartDrawing;
import chargehand.part.Part;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.locks.ReentrantLock;

/** The views of parts as elements of a page. Arranging sizes takes a while, so those drawn last are kept. */
public final class Sketches {
    private static final int KEPT = 200;

    private final ReentrantLock lock = new ReentrantLock();
    private final Map<Part, String> drawn = new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Part, String> eldest) {
            return size() > KEPT;
        }
    };

    /** The views of a part with their sizes. */
    public String of(Part part) {
        String kept = kept(part);
        if (!kept.isEmpty()) {
            return kept;
        }
        String plate = Plate.of(PartDrawing.views(part));
        lock.lock();
        try {
            drawn.put(part, plate);
        } finally {
            lock.unlock();
        }
        return plate;
    }

    private String kept(Part part) {
        lock.lock();
        try {
            return drawn.getOrDefault(part, "");
        } finally {
            lock.unlock();
        }
    }
}
