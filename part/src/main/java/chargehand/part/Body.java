package chargehand.part;

import chargehand.measure.Length;
import java.util.List;

/** The shape of a part, as it is described. */
public sealed interface Body {
    /**
     * A part along an axis.
     *
     * @param outside the sections from end A to end B, at least one
     * @param inside the bores, in any order
     * @param across the features across the axis
     */
    record Turned(List<Section> outside, List<Bore> inside, List<Across> across) implements Body {
        public Turned {
            outside = List.copyOf(outside);
            inside = List.copyOf(inside);
            across = List.copyOf(across);
            if (outside.isEmpty()) {
                throw new IllegalArgumentException("a turned part has at least one section");
            }
        }

        /** The whole length from end A to end B. */
        public Length length() {
            return outside.stream().map(Section::length).reduce(Length.ZERO, Length::plus);
        }

        /** Where the section of this index begins, from end A. */
        public Length start(int index) {
            return outside.subList(0, index).stream().map(Section::length).reduce(Length.ZERO, Length::plus);
        }

        /** The largest diameter of the outside. */
        public Length largestDiameter() {
            return outside.stream()
                    .map(section -> Length.most(section.diameterTowardsA(), section.diameterTowardsB()))
                    .reduce(Length.ZERO, Length::most);
        }
    }

    /**
     * A rectangular block or plate.
     *
     * @param length along x, the longest side as a rule
     * @param width along y
     * @param thickness along z
     * @param holes square to the top face
     */
    record Block(Size length, Size width, Size thickness, List<Hole> holes) implements Body {
        public Block {
            holes = List.copyOf(holes);
        }
    }
}
