package chargehand.app.pages;

import chargehand.book.Objection;
import chargehand.book.method.Finding;
import chargehand.book.method.MethodPlanner;
import chargehand.book.method.PlannerReply;
import chargehand.book.method.ProofFigures;
import chargehand.book.shop.ShopTexts;
import chargehand.method.kit.Kit;
import chargehand.method.kit.yaml.KitFiles;
import chargehand.method.kit.yaml.KitRead;
import chargehand.method.plan.Method;
import chargehand.method.plan.Planned;
import chargehand.method.rack.Rack;
import chargehand.method.rack.yaml.RackFile;
import chargehand.method.rack.yaml.RackRead;
import chargehand.method.replay.Proof;
import chargehand.method.replay.Replay;
import chargehand.method.search.Planner;
import chargehand.part.Part;
import java.util.List;

/** The search and the replay together, as the book asks for them. */
final class Proving implements MethodPlanner {
    @Override
    public PlannerReply plan(Part part, int count, ShopTexts texts) {
        return KitFiles.read(texts.kit()) instanceof KitRead.Sound(Kit kit)
                        && RackFile.read(texts.rack().orElse("")) instanceof RackRead.Sound(Rack rack)
                ? plan(part, count, kit, rack)
                : new PlannerReply.KitFaulty(List.of(new Objection("kit", "The demo kit cannot be read.")));
    }

    private static Finding plan(Part part, int count, Kit kit, Rack rack) {
        return switch (new Planner(kit, rack).plan(part, count)) {
            case Planned.NotHere(List<Planned.Reason> reasons) -> new Finding.NotHere(reasons);
            case Planned.Ready(Method method, long weighed) -> {
                Proof proof = Replay.of(part, method, kit);
                yield new Finding.Found(method, new ProofFigures(proof.made(), proof.worst()), weighed);
            }
        };
    }
}
