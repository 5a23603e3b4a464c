package chargehand.drawing.lettering;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The weights in which the font is carried. */
public enum Weight {
    REGULAR("IBMPlexSans-Regular.ttf", 400),
    SEMI_BOLD("IBMPlexSans-SemiBold.ttf", 600),
    BOLD("IBMPlexSans-Bold.ttf", 700);

    /** The family's name. */
    public static final String FAMILY = "IBM Plex Sans";

    private final String file;
    private final int number;

    Weight(String file, int number) {
        this.file = file;
        this.number = number;
    }

    /** The weight as style sheets number it, 400 for regular. */
    public int number() {
        return number;
    }

    /** The name of its font file. */
    public String file() {
        return file;
    }

    /** Opens its font file (TrueType); the caller closes it. */
    public InputStream open() {
        InputStream font = Weight.class.getResourceAsStream(file);
        if (font == null) {
            throw new UncheckedIOException(new IOException("the font " + file + " is missing from the program"));
        }
        return font;
    }
}
