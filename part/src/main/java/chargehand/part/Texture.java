package chargehand.part;

/**
 * A surface texture.
 *
 * @param ra the mean roughness Ra (µm), more than zero
 */
public record Texture(double ra) {
    public Texture {
        if (!(ra > 0 && ra <= 1000)) {
            throw new IllegalArgumentException("Ra must lie above 0 and up to 1000 µm, not " + ra);
        }
    }
}
