package chargehand.drawing.stage;

import chargehand.drawing.view.AxialScale;
import chargehand.drawing.view.Shortening;
import chargehand.measure.Length;
import java.util.ArrayList;
import java.util.List;

/** How large a stage is drawn: to fill its picture, long plain stretches left out where the work is slender. */
final class StageScale {
    /** Small work is drawn no larger than this. */
    private static final double MOST = 3;

    private static final double LEAST = 0.02;

    /** Room above and below for sizes and callouts (mm). */
    private static final double SIZES = 34;

    /** Room at the sides for words (mm). */
    private static final double WORDS = 12;

    private static final double SMALLER = 0.9;

    private StageScale() {}

    static AxialScale of(Held held, double width, double height) {
        double tall = 2
                * Math.max(
                        HoldSize.of(held.stage().hold()).radius(), held.radius().mm());
        double room = width - HoldLines.BODY - WORDS - (isSupported(held) ? HoldLines.CENTRE : WORDS);
        double whole = room / held.end().mm();
        double scale = Math.min(MOST, (height - SIZES) / tall);
        if (whole >= scale / 2) {
            return AxialScale.of(Math.min(whole, scale));
        }
        AxialScale broken = Shortening.of(held.solid(), scale, stays(held));
        while (broken.x(held.end()) > room && scale > LEAST) {
            scale *= SMALLER;
            broken = Shortening.of(held.solid(), scale, stays(held));
        }
        return broken;
    }

    private static boolean isSupported(Held held) {
        return !(held.support() instanceof Hold.Support.None);
    }

    /** What must not fall into a break: the grip, a steady. */
    private static List<Shortening.Stay> stays(Held held) {
        List<Shortening.Stay> stays = new ArrayList<>();
        stays.add(new Shortening.Stay(held.grip().from(), held.grip().to()));
        if (held.support() instanceof Hold.Support.FixedSteady(Length at, Length diameter)) {
            Length here = held.bed().along(at);
            stays.add(new Shortening.Stay(here.minus(diameter), here.plus(diameter)));
        }
        return stays;
    }
}
