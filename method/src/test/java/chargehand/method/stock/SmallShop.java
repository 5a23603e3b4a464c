package chargehand.method.stock;

import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.measure.Limits;
import chargehand.measure.Pitch;
import chargehand.measure.Power;
import chargehand.measure.SpindleSpeed;
import chargehand.method.kit.Chuck;
import chargehand.method.kit.Dial;
import chargehand.method.kit.Feeds;
import chargehand.method.kit.Holders;
import chargehand.method.kit.HoleTools;
import chargehand.method.kit.Kit;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.LatheTool;
import chargehand.method.kit.Machine;
import chargehand.method.kit.Saw;
import chargehand.method.kit.ScrewCutting;
import chargehand.method.kit.Slides;
import chargehand.method.kit.Speeds;
import chargehand.method.kit.Tooling;
import java.util.List;
import java.util.Optional;

/** A shop of one lathe and one saw: 40 mm through the spindle, 25 mm jaws, a 3 mm parting tool, a 2 mm kerf. */
final class SmallShop {
    static final Length KERF = Length.mm(2);
    static final Length PARTING = Length.mm(3);
    static final Length JAWS = Length.mm(25);

    private SmallShop() {}

    static CuttingUp cuttingUp() {
        return CuttingUp.with(kit(lathe(), saw()));
    }

    static CuttingUp withoutSaw() {
        return CuttingUp.with(kit(lathe()));
    }

    private static Kit kit(Machine... machines) {
        return new Kit(List.of(machines), tooling());
    }

    static Saw saw() {
        return new Saw("saw", LengthUnit.MILLIMETRE, Length.mm(150), KERF, Length.mm(50), Length.mm(0.7));
    }

    private static Lathe lathe() {
        return new Lathe(
                "lathe",
                LengthUnit.MILLIMETRE,
                new Lathe.Room(Length.mm(300), Length.mm(180), Length.mm(1000), Length.mm(40)),
                new Speeds(List.of(SpindleSpeed.rpm(100))),
                Power.watts(1500),
                new Lathe.Driven(Feeds.byHand(), Feeds.byHand()),
                new ScrewCutting(
                        Pitch.ofMm("6"),
                        List.of(),
                        List.of(),
                        new ScrewCutting.Quadrant(1, 40, 130),
                        Optional.empty(),
                        false),
                slides(),
                holders());
    }

    private static Slides slides() {
        Dial dial = new Dial(Length.mm(0.05), Length.mm(5));
        return new Slides(dial, Slides.CrossReads.DIAMETER, Optional.of(dial), Optional.empty(), Length.mm(80));
    }

    private static Holders holders() {
        Chuck chuck = new Chuck(
                "three-jaw",
                3,
                Chuck.Closing.SELF_CENTRING,
                new Limits(Length.mm(5), Length.mm(150)),
                Optional.empty(),
                JAWS,
                Length.mm(0.1),
                Optional.empty());
        return new Holders(
                List.of(chuck),
                List.of(),
                Optional.empty(),
                new Holders.Tailstock(Length.mm(100), Length.mm(10), Holders.Centre.DEAD),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static Tooling tooling() {
        LatheTool parting =
                new LatheTool.Parting("parting tool", LatheTool.Edge.HIGH_SPEED_STEEL, PARTING, Length.mm(30));
        return new Tooling(
                List.of(parting),
                new HoleTools(List.of(), List.of(), List.of(), List.of(), List.of()),
                List.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }
}
