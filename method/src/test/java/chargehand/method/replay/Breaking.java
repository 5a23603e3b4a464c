package chargehand.method.replay;

import java.util.Optional;
import java.util.Random;

/** One kind of change to a good method. */
interface Breaking {
    /** The kind, in capitals. */
    String name();

    /** The method with one thing changed, somewhere at random; nothing where it has no such thing. */
    Optional<Mutant> broken(Good good, Random random);
}
