package chargehand.part;

import chargehand.measure.Length;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The shape of a part, as it is described. */
public sealed interface Body {
    /**
     * A part along an axis.
     *
     * @param outside the sections from end A to end B, at least one
     * @param inside the bores, in any order
     * @param across the features across the axis
     * @param inBores what is cut into the walls of bores
     * @param onEnds what is made into the faces from the ends
     */
    record Turned(
            List<Section> outside, List<Bore> inside, List<Across> across, List<InBore> inBores, List<OnEnd> onEnds)
            implements Body {
        public Turned {
            outside = List.copyOf(outside);
            inside = List.copyOf(inside);
            across = List.copyOf(across);
            inBores = List.copyOf(inBores);
            onEnds = List.copyOf(onEnds);
            if (outside.isEmpty()) {
                throw new IllegalArgumentException("a turned part has at least one section");
            }
        }

        /** A part with nothing cut into its bores or faces. */
        public Turned(List<Section> outside, List<Bore> inside, List<Across> across) {
            this(outside, inside, across, List.of(), List.of());
        }

        /** The same part with other sections and bores. */
        public Turned with(List<Section> sections, List<Bore> bores) {
            return new Turned(sections, bores, across, inBores, onEnds);
        }

        /** Everything that has a name, in the order of a part file. */
        public List<Feature> features() {
            return Stream.<List<? extends Feature>>of(outside, inside, across, inBores, onEnds)
                    .<Feature>flatMap(List::stream)
                    .toList();
        }

        /** Whether the part comes back to be altered: something of it is there already. */
        public boolean isAltered() {
            return features().stream().anyMatch(Feature::isThere);
        }

        /** Whether an end face is there already: it is where the section at that end is. */
        public boolean isThere(End end) {
            return switch (end) {
                case A -> outside.getFirst().isThere();
                case B -> outside.getLast().isThere();
            };
        }

        /**
         * The part as it comes in to be altered: what is there already, and a plain round of the diameter that each section
         * has which is still to be made, with the radii it is to have in corners that are hollow now too. Nothing where the
         * part is made from stock.
         */
        public Optional<Turned> asItCame() {
            return isAltered()
                    ? Optional.of(new Turned(
                            IntStream.range(0, outside.size())
                                    .mapToObj(this::asItCame)
                                    .toList(),
                            there(inside),
                            there(across),
                            there(inBores),
                            there(onEnds)))
                    : Optional.empty();
        }

        private static <F extends Feature> List<F> there(List<F> features) {
            return features.stream().filter(Feature::isThere).toList();
        }

        private Section asItCame(int index) {
            Section section = outside.get(index);
            if (section.isThere()) {
                return section;
            }
            Stretch stretch = section.stretch();
            Edge atA = isHollowNow(index, index - 1) ? stretch.atA() : new Edge.Plain();
            Edge atB = isHollowNow(index, index + 1) ? stretch.atB() : new Edge.Plain();
            var plain = new Stretch(stretch.name(), stretch.length(), atA, atB, Made.ALREADY, Optional.empty());
            return new Section.Round(plain, stretch.was().orElseThrow());
        }

        /** Whether a section stands against a larger one as the part comes in. */
        private boolean isHollowNow(int index, int other) {
            if (other < 0 || other >= outside.size()) {
                return false;
            }
            Section beside = outside.get(other);
            Length there = other < index ? beside.diameterTowardsB() : beside.diameterTowardsA();
            return beside.stretch()
                    .was()
                    .map(Size::length)
                    .orElse(there)
                    .isMoreThan(outside.get(index).stretch().was().orElseThrow().length());
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
     * @param cuts what is milled into the top face
     */
    record Block(Size length, Size width, Size thickness, List<Hole> holes, List<BlockCut> cuts) implements Body {
        /** A block with nothing but holes. */
        public Block(Size length, Size width, Size thickness, List<Hole> holes) {
            this(length, width, thickness, holes, List.of());
        }

        public Block {
            cuts = List.copyOf(cuts);
            holes = List.copyOf(holes);
        }
    }
}
