package chargehand.method.plan;

import chargehand.measure.Limits;

/**
 * A size to measure.
 *
 * @param what is measured, such as "Ø of the journal"
 * @param limits within which it must lie
 * @param gauge what to measure it with, from the kit
 */
public record Reading(String what, Limits limits, String gauge) {}
