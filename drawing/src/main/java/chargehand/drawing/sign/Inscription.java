package chargehand.drawing.sign;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.Mark;
import java.util.List;

/**
 * Wording at a lettering height.
 *
 * @param height of its capitals and figures (mm)
 */
public record Inscription(Wording wording, double height, Ink ink) implements Label {
    public Inscription(Wording wording, double height) {
        this(wording, height, Ink.INK);
    }

    @Override
    public double width() {
        return wording.width(height);
    }

    @Override
    public double ascent() {
        return wording.ascent(height);
    }

    @Override
    public double descent() {
        return wording.descent(height);
    }

    @Override
    public List<Mark> marks(Local frame) {
        return wording.marks(frame, height, ink);
    }
}
