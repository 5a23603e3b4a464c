/** How far the making has come: ticks, readings and passed hold points, added one after another and never altered. */
@NullMarked
package chargehand.book.progress;

import org.jspecify.annotations.NullMarked;
