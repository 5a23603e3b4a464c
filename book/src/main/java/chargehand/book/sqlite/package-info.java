/**
 * The book in one SQLite file. A change is on the disk before it is acknowledged: write-ahead log with full sync, one
 * connection kept open for writing, a few for reading.
 */
@NullMarked
package chargehand.book.sqlite;

import org.jspecify.annotations.NullMarked;
