package chargehand.method.search;

/**
 * How much is looked at.
 *
 * @param pieces how many are made
 * @param thorough whether set-ups are weighed too that leave out what they could do
 * @param patience when to give up
 * @param bidden what somebody asks of the method
 */
record Effort(int pieces, boolean thorough, Patience patience, Bidden bidden) {}
