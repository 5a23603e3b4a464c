package chargehand.trade.cutting;

import chargehand.trade.material.ToolMaterial;
import chargehand.trade.sum.Kind;
import chargehand.trade.sum.Kinds;
import java.util.LinkedHashMap;
import java.util.Map;

/** The kinds of field that a cut asks for. */
final class CutKinds {
    static final Kind<Operation> OPERATION = Kinds.choice("kind of cut", operations());
    static final Kind<ToolMaterial> TOOL = Kinds.choice("tool", tools());

    private CutKinds() {}

    private static Map<String, Operation> operations() {
        var words = new LinkedHashMap<String, Operation>();
        for (Operation operation : Operation.values()) {
            words.put(operation.word(), operation);
        }
        return words;
    }

    private static Map<String, ToolMaterial> tools() {
        var words = new LinkedHashMap<String, ToolMaterial>();
        words.put("hss", ToolMaterial.HSS);
        words.put("high-speed steel", ToolMaterial.HSS);
        words.put("high speed steel", ToolMaterial.HSS);
        words.put("carbide", ToolMaterial.CARBIDE);
        words.put("tungsten carbide", ToolMaterial.CARBIDE);
        return words;
    }
}
