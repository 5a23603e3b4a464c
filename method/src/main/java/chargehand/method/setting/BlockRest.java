package chargehand.method.setting;

import chargehand.method.kit.Vice;

/** What a block rests in while it is milled or drilled. */
public sealed interface BlockRest {
    /** A machine vice. */
    record InVice(Vice vice) implements BlockRest {}

    /** The machine's own table, clamps holding it down. */
    record OnTable() implements BlockRest {}
}
