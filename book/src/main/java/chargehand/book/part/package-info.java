/** The drawings of a job's part as they were written, issue by issue; a draft may be faulty and is kept all the same. */
@NullMarked
package chargehand.book.part;

import org.jspecify.annotations.NullMarked;
