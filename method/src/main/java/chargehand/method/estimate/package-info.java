/** What a method comes to for a customer outside: hours by kind of work, material, money, each within a range. */
@NullMarked
package chargehand.method.estimate;

import org.jspecify.annotations.NullMarked;
