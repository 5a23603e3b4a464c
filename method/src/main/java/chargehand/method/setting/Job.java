package chargehand.method.setting;

import chargehand.method.holding.Choice;
import chargehand.method.work.Standing;
import java.util.BitSet;

/**
 * What one set-up is to do.
 *
 * @param work as it stands before
 * @param choice how it is held
 * @param todo the numbers of the tasks to do
 * @param pieces how many are made, over which set-up costs are spread
 */
public record Job(Standing work, Choice choice, BitSet todo, int pieces) {
    public Job {
        todo = (BitSet) todo.clone();
    }

    @Override
    public BitSet todo() {
        return (BitSet) todo.clone();
    }
}
