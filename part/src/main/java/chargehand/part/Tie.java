package chargehand.part;

import chargehand.measure.Written;

/**
 * Two features tied to each other: how far one may run out when the part turns on the other.
 *
 * @param of the name of the feature that is measured
 * @param to the name of the feature it is turned on (the datum)
 * @param runOut the total indicator reading allowed
 */
public record Tie(String of, String to, Written runOut) {}
