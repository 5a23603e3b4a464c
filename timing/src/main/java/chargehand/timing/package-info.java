/**
 * How long things take, on the machine that asks: run by {@code ./measure}, printed as a table and kept in
 * {@code docs/measured.md}. Nothing here is a test; a slow machine is no fault.
 */
@NullMarked
package chargehand.timing;

import org.jspecify.annotations.NullMarked;
