package chargehand.web.method;

import chargehand.book.method.MethodRecord;
import chargehand.book.part.DrawnPart;
import chargehand.book.shop.ShopTexts;
import chargehand.method.estimate.Estimator;
import chargehand.method.kit.Kit;
import chargehand.method.plan.Method;
import chargehand.method.proved.Aid;
import chargehand.method.proved.ProvedPlanner;
import chargehand.method.rack.Rack;
import chargehand.method.rack.yaml.RackFile;
import chargehand.method.rack.yaml.RackRead;
import chargehand.method.wish.Names;
import chargehand.method.wish.WishText;
import chargehand.method.wish.Wishes;
import chargehand.part.Part;
import chargehand.web.serving.Counter;
import java.util.List;
import java.util.Optional;

/**
 * The ways a method did not take, worked out again from what it was worked out from: only for whoever asks, since it takes
 * some seconds.
 */
record SecondLook(Shop shop, Part part, int count, Wishes wishes, Method best) {
    private static final int MOST_OTHERS = 4;

    /** What the shop had when the method was worked out. */
    record Shop(Kit kit, Rack rack) {
        ProvedPlanner planner() {
            return new ProvedPlanner(kit, rack);
        }
    }

    static Optional<SecondLook> at(Counter counter, MethodRecord planned) {
        return planned.method()
                .flatMap(best -> part(counter, planned)
                        .flatMap(part -> Kits.of(counter, planned.basis().edition())
                                .flatMap(kit -> rack(counter, planned.basis().edition())
                                        .flatMap(rack -> of(planned, best, part, kit, rack)))));
    }

    private static Optional<SecondLook> of(MethodRecord planned, Method best, Part part, Kit kit, Rack rack) {
        var names = Names.of(kit, rack, part);
        return switch (new WishText(names).readAll(planned.basis().wishes())) {
            case WishText.All.Understood(Wishes wishes) ->
                Optional.of(new SecondLook(
                        new Shop(kit, rack), part, planned.basis().count(), wishes, best));
            case WishText.All.NotUnderstood not -> Optional.empty();
        };
    }

    private static Optional<Part> part(Counter counter, MethodRecord planned) {
        return counter.desk().jobs().drawings(planned.job()).stream()
                .filter(issue -> issue.version() == planned.basis().version())
                .findFirst()
                .flatMap(issue -> DrawnPart.of(issue).part());
    }

    private static Optional<Rack> rack(Counter counter, int edition) {
        return counter.desk()
                .keepTexts()
                .texts(edition)
                .flatMap(ShopTexts::rack)
                .map(RackFile::read)
                .flatMap(read -> switch (read) {
                    case RackRead.Sound(Rack rack) -> Optional.of(rack);
                    case RackRead.Refused refused -> Optional.empty();
                });
    }

    List<NotTakenFace> whyNot() {
        return NotTakenFace.all(shop.planner().whyNot(part, count, wishes));
    }

    List<OtherFace> others() {
        return shop.planner().others(part, count, wishes, MOST_OTHERS).stream()
                .map(other -> OtherFace.of(best, other))
                .toList();
    }

    List<Aid> aids() {
        return shop.planner().aids(best);
    }

    EstimateFace estimate() {
        return EstimateFace.of(Estimator.of(best, shop.kit(), shop.rack()));
    }
}
