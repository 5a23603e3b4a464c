package chargehand.part;

import java.time.LocalDate;
import java.util.Optional;

/**
 * One issue of a drawing, as its table of issues tells it.
 *
 * @param letter of the issue, such as "B"
 * @param what was changed
 * @param date when
 * @param by whose initials
 * @param at the name of the feature that was changed, if it was one
 */
public record DrawingIssue(String letter, String what, LocalDate date, String by, Optional<String> at) {}
