package chargehand.method.rack;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * What lies on the rack.
 *
 * @param pieces each with a name of its own
 */
public record Rack(List<Piece> pieces) {
    public Rack {
        pieces = List.copyOf(pieces);
        Set<String> names = new HashSet<>();
        for (Piece piece : pieces) {
            if (!names.add(piece.name().toLowerCase(Locale.ROOT))) {
                throw new IllegalArgumentException("two pieces are called '" + piece.name() + "'");
            }
        }
    }

    /** The piece of this name, whichever way it is capitalised. */
    public Optional<Piece> find(String name) {
        return pieces.stream()
                .filter(piece -> piece.name().equalsIgnoreCase(name))
                .findFirst();
    }
}
