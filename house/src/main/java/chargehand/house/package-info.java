/** The rules of the house that hold in every module, in a form that tests apply. */
@NullMarked
package chargehand.house;

import org.jspecify.annotations.NullMarked;
