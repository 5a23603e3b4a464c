package chargehand.method.search;

/** How soon a search gives up. */
enum Haste {
    /** When it has weighed thousands of set-ups, and once more as many where they do less than they could. */
    NONE,
    /** When it has weighed some hundreds. */
    SOME
}
