package chargehand.trade.cutting;

import chargehand.trade.sum.Example;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** Cuts that show what can be asked. */
final class CutExamples {
    private static final String ROUGHING = "depth=5 mm|length=170 mm|speeds=32, 50, 80, 125, 200, 320, 500"
            + "|feeds=0.05, 0.1, 0.15, 0.2, 0.3|power=2 hp";
    private static final String FINISHING = "diameter=30 mm|depth=0.5 mm|finish=1.6|nose=0.4 mm";
    private static final String SLENDER = "depth=0.5 mm|finish=1.6|standsOut=120 mm|centre=yes";
    private static final String MILLING = "teeth=4|width=10 mm|depth=3 mm|length=60 mm";

    private CutExamples() {}

    static List<Example> list() {
        return List.of(
                example("roughing a shaft on an old lathe", "kind=turn", "material=EN8", "diameter=50 mm", ROUGHING),
                example("finishing to Ra 1.6", "kind=turn", "material=316", "tool=carbide", FINISHING),
                example("finishing a thin shaft", "kind=turn", "material=EN8", "diameter=12 mm", SLENDER),
                example("drilling", "kind=drill", "material=mild steel", "diameter=20 mm", "depth=40 mm"),
                example("milling a flat", "kind=mill", "material=LG2", "diameter=20 mm", MILLING),
                example("cutting a thread", "kind=thread", "material=EN3", "diameter=20 mm", "pitch=2.5 mm"),
                example("parting off", "kind=part", "material=CZ121", "diameter=1 1/4 in"));
    }

    private static Example example(String about, String... asked) {
        return new Example(
                about,
                Arrays.stream(asked)
                        .flatMap(part -> Arrays.stream(part.split("[|]", -1)))
                        .map(pair -> pair.split("=", 2))
                        .collect(Collectors.toMap(pair -> pair[0], pair -> pair[1])));
    }
}
