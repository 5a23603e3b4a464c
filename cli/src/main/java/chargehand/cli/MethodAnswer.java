package chargehand.cli;

import chargehand.method.estimate.Estimate;
import chargehand.method.plan.NotTaken;
import chargehand.method.proved.ProvedPlanner;
import chargehand.method.search.Other;
import chargehand.method.wish.Wishes;
import java.util.List;

/**
 * What is said of a method that was found.
 *
 * @param wishes that it keeps to
 * @param proved the method with its proof
 * @param notTaken why it is not held otherwise; empty unless asked
 * @param others the next best methods; empty unless asked
 * @param estimate what it comes to for a customer outside
 */
record MethodAnswer(
        Wishes wishes,
        ProvedPlanner.Outcome.Proved proved,
        List<NotTaken> notTaken,
        List<Other> others,
        Estimate estimate) {}
