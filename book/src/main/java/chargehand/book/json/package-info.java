/**
 * Records as JSON and back, without loss: fields are called as in the records, quantities have the unit in the name, the
 * cases of a closed set are told apart by {@code kind}. The book keeps methods so, and people read them so.
 */
@NullMarked
package chargehand.book.json;

import org.jspecify.annotations.NullMarked;
