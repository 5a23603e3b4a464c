package chargehand.part;

/** How far in from its end a bore goes. */
public sealed interface Depth {
    /** Out at the other end, or into the bore that meets it. */
    record Through() implements Depth {}

    /** To a full-diameter depth from the end it is made from. */
    record Blind(Size depth) implements Depth {}
}
