package chargehand.app;

import chargehand.book.Objection;
import chargehand.book.method.Finding;
import chargehand.book.method.MethodPlanner;
import chargehand.book.method.PlannerReply;
import chargehand.book.method.ProofFigures;
import chargehand.book.shop.ShopTexts;
import chargehand.method.kit.Kit;
import chargehand.method.kit.yaml.FileFault;
import chargehand.method.kit.yaml.KitFiles;
import chargehand.method.kit.yaml.KitRead;
import chargehand.method.proved.ProvedPlanner;
import chargehand.method.rack.Rack;
import chargehand.method.rack.yaml.RackFile;
import chargehand.method.rack.yaml.RackRead;
import chargehand.method.wish.Names;
import chargehand.method.wish.WishText;
import chargehand.method.wish.Wishes;
import chargehand.part.Part;
import chargehand.part.yaml.tree.Fault;
import java.util.List;
import java.util.Optional;

/** Plans for a book: reads the shop's own texts of kit and rack, searches, and proves. */
public final class ShopPlanner implements MethodPlanner {
    @Override
    public PlannerReply plan(Part part, int count, List<String> wishes, ShopTexts texts) {
        return switch (KitFiles.read(texts.kit())) {
            case KitRead.Refused(List<FileFault> faults) ->
                new PlannerReply.KitFaulty(faults.stream()
                        .map(fault -> objection(ShopTexts.KIT + fault.file(), fault.fault()))
                        .toList());
            case KitRead.Sound(Kit kit) ->
                withRack(new Asked(part, count, wishes), kit, texts.rack().orElse(""));
        };
    }

    private record Asked(Part part, int count, List<String> wishes) {}

    private static PlannerReply withRack(Asked asked, Kit kit, String rack) {
        return switch (RackFile.read(rack)) {
            case RackRead.Refused(List<Fault> faults) ->
                new PlannerReply.KitFaulty(faults.stream()
                        .map(fault -> objection(ShopTexts.RACK, fault))
                        .toList());
            case RackRead.Sound(Rack sound) -> within(asked, kit, sound);
        };
    }

    private static PlannerReply within(Asked asked, Kit kit, Rack rack) {
        var names = Names.of(kit, rack, asked.part());
        return switch (new WishText(names).readAll(asked.wishes())) {
            case WishText.All.NotUnderstood(List<String> says) ->
                new PlannerReply.WishesFaulty(
                        says.stream().map(say -> new Objection("wishes", say)).toList());
            case WishText.All.Understood(Wishes wishes) ->
                finding(new ProvedPlanner(kit, rack).plan(asked.part(), asked.count(), wishes));
        };
    }

    private static Finding finding(ProvedPlanner.Outcome outcome) {
        return switch (outcome) {
            case ProvedPlanner.Outcome.Proved proved ->
                new Finding.Found(
                        proved.method(),
                        new ProofFigures(proved.proof().made(), proved.proof().worst()),
                        proved.weighed(),
                        Optional.of(proved.bound()));
            case ProvedPlanner.Outcome.NotHere notHere -> new Finding.NotHere(notHere.reasons());
        };
    }

    private static Objection objection(String file, Fault fault) {
        return new Objection(file + ", line " + fault.line(), fault.say());
    }
}
