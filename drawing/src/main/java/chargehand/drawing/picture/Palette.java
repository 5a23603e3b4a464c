package chargehand.drawing.picture;

/**
 * The colours of the four inks as numbers 0xRRGGBB.
 *
 * @param ink lines and words
 * @param quiet the tint
 * @param marking what is to be done now
 * @param paper the ground
 */
public record Palette(int ink, int quiet, int marking, int paper) {
    /** For printing: black only, a light grey for the tint. */
    public static final Palette PRINT = new Palette(0x000000, 0xe8e8e8, 0x000000, 0xffffff);

    /** For the screen: warm paper, strong ink, marking-out blue. */
    public static final Palette SCREEN = new Palette(0x1c1b18, 0xe9e4d6, 0x1f3f8f, 0xfffdf7);

    public int colour(Ink role) {
        return switch (role) {
            case INK -> ink;
            case QUIET -> quiet;
            case MARKING -> marking;
            case PAPER -> paper;
        };
    }
}
