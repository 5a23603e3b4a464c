package chargehand.drawing.sign;

import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Mark;
import java.util.List;

/** Something written at a size or a leader that takes up room. */
public interface Label {
    /** How wide it is (mm). */
    double width();

    /** How far it rises above its base line (mm). */
    double ascent();

    /** How far it sinks below its base line (mm). */
    double descent();

    /** Its marks, beginning at a frame's origin. */
    List<Mark> marks(Local frame);

    /**
     * This label as it stands at a leader.
     *
     * @param leaderLeft whether the leader comes from the left rather than from the right
     */
    default Label reached(boolean leaderLeft) {
        return this;
    }

    /** The upright box it covers in a frame turned by whole quarters. */
    default Box box(Local frame) {
        return Box.around(List.of(
                frame.at(0, -descent()),
                frame.at(width(), -descent()),
                frame.at(0, ascent()),
                frame.at(width(), ascent())));
    }
}
