package chargehand.method.stock;

import chargehand.measure.Length;
import chargehand.method.kit.Chuck;
import chargehand.method.kit.Kit;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.LatheTool;
import chargehand.method.kit.Saw;
import chargehand.trade.sum.Source;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** How stock is cut up on this shop's saw and lathes, and what each way adds to the length of a piece. */
public final class CuttingUp {
    /** Off a face that was parted, or off a bar's end that was sawn square: 1/32 in. */
    private static final Length FACING = Length.inch(1, 32);

    /** From the jaws to the parting tool. */
    private static final Length CLEAR_OF_JAWS = Length.mm(3);

    /** Where these two come from. */
    static final Source SOURCE = Source.COMMON_PRACTICE;

    private final Kit kit;

    private CuttingUp(Kit kit) {
        this.kit = kit;
    }

    /** The ways that this kit allows. */
    public static CuttingUp with(Kit kit) {
        return new CuttingUp(kit);
    }

    /** One way of cutting a bar up and what it adds. */
    record Cut(Way way, Allowances allowances) {}

    /** The ways open to a turned part. */
    List<Cut> forTurned(Raw raw, Length along) {
        List<Cut> cuts = new ArrayList<>();
        Optional<Length> parting = parting(raw);
        fromBar(raw, parting).ifPresent(cuts::add);
        kit.saws().stream().filter(saw -> cuts(saw, raw)).findFirst().ifPresent(saw -> {
            cuts.add(sawn(saw, along));
            sawnWithStub(saw, raw, parting).ifPresent(cuts::add);
        });
        return cuts;
    }

    /** The ways open to a block. */
    List<Cut> forBlock(Raw raw, Length along) {
        return kit.saws().stream()
                .filter(saw -> cuts(saw, raw))
                .findFirst()
                .map(saw -> List.of(sawn(saw, along)))
                .orElse(List.of());
    }

    private static boolean cuts(Saw saw, Raw raw) {
        return !raw.largestAcross().isMoreThan(saw.largest());
    }

    private Optional<Cut> fromBar(Raw raw, Optional<Length> parting) {
        Stream<Lathe> lathes = kit.lathes().stream()
                .filter(lathe -> !raw.largestAcross().isMoreThan(lathe.room().spindleBore()));
        Optional<Length> jaws = shortestGrip(lathes, raw);
        return jaws.isEmpty() || parting.isEmpty()
                ? Optional.empty()
                : Optional.of(new Cut(
                        Way.FROM_BAR,
                        new Allowances(
                                FACING, parting.get(), Length.ZERO, jaws.get().plus(CLEAR_OF_JAWS))));
    }

    private static Cut sawn(Saw saw, Length along) {
        Length facing = FACING.plus(saw.squareness());
        Length blank = along.plus(facing.times(2));
        Length held = blank.isLessThan(saw.shortestHeld()) ? saw.shortestHeld() : Length.ZERO;
        return new Cut(Way.SAWN, new Allowances(facing, saw.kerf(), Length.ZERO, held));
    }

    private Optional<Cut> sawnWithStub(Saw saw, Raw raw, Optional<Length> parting) {
        Optional<Length> jaws = shortestGrip(kit.lathes().stream(), raw);
        if (jaws.isEmpty() || parting.isEmpty()) {
            return Optional.empty();
        }
        Length stub = parting.get().plus(CLEAR_OF_JAWS).plus(jaws.get());
        return Optional.of(new Cut(
                Way.SAWN_WITH_STUB, new Allowances(FACING.plus(saw.squareness()), saw.kerf(), stub, Length.ZERO)));
    }

    /** The narrowest parting tool that reaches the middle of the bar. */
    private Optional<Length> parting(Raw raw) {
        return kit.tooling().latheTools(LatheTool.Parting.class).stream()
                .filter(tool -> !tool.depth().isLessThan(raw.largestAcross().half()))
                .map(LatheTool.Parting::width)
                .min(Comparator.naturalOrder());
    }

    private static Optional<Length> shortestGrip(Stream<Lathe> lathes, Raw raw) {
        return lathes.flatMap(lathe -> lathe.holders().chucks().stream())
                .filter(chuck -> grips(chuck, raw))
                .map(Chuck::jawLength)
                .min(Comparator.naturalOrder());
    }

    private static boolean grips(Chuck chuck, Raw raw) {
        return switch (raw) {
            case Raw.Round(Length diameter) -> chuck.grips(diameter);
            case Raw.Polygon(int sides, Length flats) -> chuck.grips(flats) && chuck.sitsEvenlyOn(sides);
            case Raw.Flat flat -> false;
        };
    }
}
