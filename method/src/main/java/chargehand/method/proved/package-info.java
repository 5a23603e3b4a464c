/** Planning and proving together: no method leaves here that its replay did not make. */
@NullMarked
package chargehand.method.proved;

import org.jspecify.annotations.NullMarked;
