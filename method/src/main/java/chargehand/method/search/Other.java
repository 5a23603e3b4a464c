package chargehand.method.search;

import chargehand.method.plan.Planned;
import chargehand.method.wish.Wishes;

/**
 * Another method than the quickest.
 *
 * @param wishes within which it is the quickest: what was asked before, and what is left out to come to it
 * @param ready the method
 */
public record Other(Wishes wishes, Planned.Ready ready) {}
