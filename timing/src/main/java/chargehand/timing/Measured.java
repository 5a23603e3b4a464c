package chargehand.timing;

/**
 * One line of the table.
 *
 * @param what is measured
 * @param took as text with its unit
 * @param aim what it should be, empty where nothing is set
 * @param beside the same done another way, empty where there is none
 */
record Measured(String what, String took, String aim, String beside) {}
