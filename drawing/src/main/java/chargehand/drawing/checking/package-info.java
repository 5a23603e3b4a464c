/**
 * What the checker in a drawing office does: looks at the finished sheet as if it came from somewhere else, and pencils in what
 * is wrong. It tells lines apart by how they look and works the part's sizes out anew from the part.
 */
@NullMarked
package chargehand.drawing.checking;

import org.jspecify.annotations.NullMarked;
