package chargehand.method.stock;

import chargehand.trade.material.Material;
import java.util.List;
import java.util.Optional;

/** Whether a piece's material will do. */
sealed interface Answer {
    /**
     * It will.
     *
     * @param material as the tables know it; empty where they do not
     * @param cautions what to mind about it
     */
    record WillDo(Candidate.Match match, Optional<Material> material, List<String> cautions) implements Answer {
        public WillDo {
            cautions = List.copyOf(cautions);
        }
    }

    /** It will not. */
    record WillNotDo(String why) implements Answer {}
}
