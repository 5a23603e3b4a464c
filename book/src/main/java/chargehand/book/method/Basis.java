package chargehand.book.method;

import java.util.List;

/**
 * What a method was worked out from.
 *
 * @param issue the issue of the drawing, as written on it
 * @param version the saving of the drawing
 * @param count how many pieces
 * @param edition the edition of the kit and rack
 * @param wishes what was asked of the method beside the part, each as people write it, such as {@code without small lathe}
 */
public record Basis(String issue, int version, int count, int edition, List<String> wishes) {
    public Basis {
        wishes = List.copyOf(wishes);
    }

    /** Nothing was asked beside the part. */
    public Basis(String issue, int version, int count, int edition) {
        this(issue, version, count, edition, List.of());
    }
}
