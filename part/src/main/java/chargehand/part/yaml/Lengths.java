package chargehand.part.yaml;

import chargehand.measure.Length;
import chargehand.measure.LengthReader;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.Unreadable;
import chargehand.measure.Written;

/** Reads the lengths of a part file, so bounded that no sum of a few of them is beyond what a length can be. */
final class Lengths {
    private static final Length MOST = Length.mm(100_000);

    private Lengths() {}

    /**
     * Reads a length.
     *
     * @throws Unreadable saying what was found and what would do
     */
    static Written read(String text, LengthUnit bareUnit) {
        Written written = LengthReader.read(text, bareUnit);
        if (written.length().abs().isMoreThan(MOST)) {
            throw new Unreadable(LengthText.in(written.length(), written.unit())
                    + " is more than anything a shop makes: check the figure and its unit.");
        }
        return written;
    }
}
