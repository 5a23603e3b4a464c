package chargehand.drawing.sign;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.Mark;
import java.util.List;

/** Wording at a lettering height, measured once. */
public final class Inscription implements Label {
    private final Wording wording;
    private final double height;
    private final Ink ink;
    private final double width;
    private final double ascent;
    private final double descent;

    /**
     * Wording in an ink.
     *
     * @param height of its capitals and figures (mm)
     */
    public Inscription(Wording wording, double height, Ink ink) {
        this.wording = wording;
        this.height = height;
        this.ink = ink;
        width = wording.width(height);
        ascent = wording.ascent(height);
        descent = wording.descent(height);
    }

    public Inscription(Wording wording, double height) {
        this(wording, height, Ink.INK);
    }

    @Override
    public double width() {
        return width;
    }

    @Override
    public double ascent() {
        return ascent;
    }

    @Override
    public double descent() {
        return descent;
    }

    @Override
    public List<Mark> marks(Local frame) {
        return wording.marks(frame, height, ink);
    }

    /** The wording as one would type it. */
    @Override
    public String toString() {
        return wording.toString();
    }
}
