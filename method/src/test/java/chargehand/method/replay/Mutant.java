package chargehand.method.replay;

import chargehand.method.plan.Method;

/**
 * A method with one thing changed.
 *
 * @param harmless whether the part is made as safely as before by the rule that its {@link Breaking} states; judged from
 *     the change alone, before any replay
 */
record Mutant(Method method, boolean harmless) {
    static Mutant harmful(Method method) {
        return new Mutant(method, false);
    }
}
