package chargehand.method.search;

import chargehand.measure.Length;
import chargehand.method.kit.Bench;
import chargehand.method.kit.HoleTools;
import chargehand.method.kit.Kit;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.Machine;
import chargehand.method.kit.Mill;
import chargehand.method.kit.RadialDrill;
import chargehand.method.kit.Saw;
import chargehand.method.kit.Vice;
import chargehand.method.plan.Blank;
import chargehand.method.plan.Bound;
import chargehand.method.plan.Method;
import chargehand.method.plan.Planned;
import chargehand.method.plan.Planned.Code;
import chargehand.method.plan.Planned.Reason;
import chargehand.method.plan.SetUp;
import chargehand.method.setting.BlockFaces;
import chargehand.method.setting.BlockFaces.Pair;
import chargehand.method.setting.BlockHoles;
import chargehand.method.setting.BlockMaking;
import chargehand.method.setting.BlockRest;
import chargehand.method.setting.SawWork;
import chargehand.method.stock.Candidate;
import chargehand.method.stock.Candidates;
import chargehand.method.wish.HolderName;
import chargehand.part.Body;
import chargehand.part.End;
import chargehand.part.Hole;
import chargehand.part.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Plans a block: sawn to length, its faces brought to size in a mill's vice pair by pair, broad faces first, then its holes.
 * Every piece of stock, mill, vice and drill that serves is weighed; faces that the stock brings to size are left as drawn.
 */
final class BlockPlanner {
    private static final Length DRILL_NEAR = Length.mm(0.3);

    private final Kit kit;
    private final Part part;
    private final Body.Block body;
    private final Bidden bidden;
    private final List<Reason> reasons = new ArrayList<>();
    private long weighed;

    BlockPlanner(Kit kit, Part part, Body.Block body, Bidden bidden) {
        this.kit = kit;
        this.part = part;
        this.body = body;
        this.bidden = bidden;
    }

    Planned plan(int count, Candidates candidates) {
        missingTools();
        Optional<Method> best = candidates.fit().stream()
                .flatMap(candidate -> methods(candidate, count, candidates).stream())
                .min(Comparator.comparingDouble(method -> method.time().seconds()));
        if (best.isEmpty() && reasons.isEmpty()) {
            reasons.add(noHolding());
        }
        return reasons.isEmpty()
                ? ready(best.orElseThrow(), candidates)
                : new Planned.NotHere(reasons.stream().distinct().toList());
    }

    private Planned ready(Method method, Candidates candidates) {
        var bound = new Bound(method.time(), method.time(), candidates.fit().size(), 0, true);
        return new Planned.Ready(method, weighed, bound);
    }

    private List<Method> methods(Candidate candidate, int count, Candidates candidates) {
        var methods = new ArrayList<Method>();
        Blank.Slab slab = (Blank.Slab) candidate.blank(Length.ZERO, End.B);
        var stock = new FromStock(part, candidate, candidates.passedOver());
        var making = new BlockMaking(part, body, stock.material(), kit);
        for (List<SetUp> setUps : faced(making, slab)) {
            for (List<SetUp> whole : drilled(making, setUps)) {
                weighed++;
                methods.add(stock.method(count, slab, whole));
            }
        }
        return methods;
    }

    /** Sawing and all faces, on each mill and vice that takes the block; sawing alone where no face needs milling. */
    private List<List<SetUp>> faced(BlockMaking making, Blank.Slab slab) {
        SetUp sawing = SawWork.blanks(kit.saws().getFirst(), slab);
        List<Pair> pairs = pairs(slab);
        if (pairs.isEmpty()) {
            return List.of(List.of(sawing));
        }
        var all = new ArrayList<List<SetUp>>();
        for (Mill mill : kit.mills()) {
            for (BlockRest rest : rests(mill)) {
                if (takes(mill, rest, slab) && !kit.tooling().millCutters().isEmpty()) {
                    var faces = new BlockFaces(making, mill, rest);
                    var setUps = new ArrayList<SetUp>(List.of(sawing));
                    pairs.forEach(
                            pair -> setUps.addAll(faces.write(setUps.size() + 1, pair, BlockFaces.raw(slab, pair))));
                    all.add(List.copyOf(setUps));
                }
            }
        }
        return all;
    }

    /** The pairs of faces that the stock does not bring to size. */
    private List<Pair> pairs(Blank.Slab slab) {
        return List.of(Pair.THICKNESS, Pair.WIDTH, Pair.LENGTH).stream()
                .filter(pair -> !BlockFaces.raw(slab, pair).equals(size(pair)))
                .toList();
    }

    private Length size(Pair pair) {
        return switch (pair) {
            case THICKNESS -> body.thickness().length();
            case WIDTH -> body.width().length();
            case LENGTH -> body.length().length();
        };
    }

    /** The vices and the table of a machine, but for those that somebody forbids. */
    private List<BlockRest> rests(Machine machine) {
        var rests = new ArrayList<BlockRest>();
        for (Vice vice : vices(machine)) {
            if (bidden.allowsHolder(machine.name(), vice.name())) {
                rests.add(new BlockRest.InVice(vice));
            }
        }
        if (clamps(machine).isPresent() && bidden.allowsHolder(machine.name(), HolderName.CLAMPS)) {
            rests.add(new BlockRest.OnTable());
        }
        return rests;
    }

    /** A vice opens over the slab; on the table only its edges are milled, the clamps standing on its top. */
    private boolean takes(Mill mill, BlockRest rest, Blank.Slab slab) {
        boolean travels = !slab.length().isMoreThan(mill.travels().along())
                && !slab.width().isMoreThan(mill.travels().across());
        return switch (rest) {
            case BlockRest.InVice(Vice vice) -> travels && !slab.width().isMoreThan(vice.opening());
            case BlockRest.OnTable table ->
                travels && reaches(mill, slab.thickness()) && !pairs(slab).contains(Pair.THICKNESS);
        };
    }

    private static boolean reaches(Machine machine, Length thickness) {
        return clamps(machine).filter(reach -> !thickness.isMoreThan(reach)).isPresent();
    }

    private List<List<SetUp>> drilled(BlockMaking making, List<SetUp> before) {
        if (body.holes().isEmpty()) {
            return List.of(before);
        }
        var all = new ArrayList<List<SetUp>>();
        for (Machine machine : kit.machines()) {
            for (BlockRest rest : rests(machine)) {
                if (takes(machine, rest)) {
                    var setUps = new ArrayList<>(before);
                    setUps.add(new BlockHoles(making, machine, rest).write(before.size() + 1));
                    all.add(List.copyOf(setUps));
                }
            }
        }
        return all;
    }

    /** Whether the finished block goes where its holes are to be made. */
    private boolean takes(Machine machine, BlockRest rest) {
        return switch (rest) {
            case BlockRest.InVice(Vice vice) -> !body.width().length().isMoreThan(vice.opening());
            case BlockRest.OnTable table -> reaches(machine, body.thickness().length()) && isRoom(machine);
        };
    }

    private boolean isRoom(Machine machine) {
        Length length = body.length().length();
        Length width = body.width().length();
        return switch (machine) {
            case RadialDrill drill ->
                !Length.least(length, width).isMoreThan(drill.room().fromColumn());
            case Mill mill ->
                !length.isMoreThan(mill.travels().along())
                        && !width.isMoreThan(mill.travels().across());
            case Lathe lathe -> false;
            case Saw saw -> false;
            case Bench bench -> false;
        };
    }

    private static Optional<Length> clamps(Machine machine) {
        return switch (machine) {
            case RadialDrill drill -> drill.clamps();
            case Mill mill -> mill.clamps();
            case Lathe lathe -> Optional.empty();
            case Saw saw -> Optional.empty();
            case Bench bench -> Optional.empty();
        };
    }

    private static List<Vice> vices(Machine machine) {
        return switch (machine) {
            case RadialDrill drill -> drill.vices();
            case Mill mill -> mill.vices();
            case Lathe lathe -> List.of();
            case Saw saw -> List.of();
            case Bench bench -> List.of();
        };
    }

    private void missingTools() {
        for (Hole hole : body.holes()) {
            missing(hole).ifPresent(reasons::add);
        }
    }

    private Optional<Reason> missing(Hole hole) {
        HoleTools tools = kit.tooling().holeTools();
        boolean owned = switch (hole) {
            case Hole.Drilled drilled -> hasDrill(tools, drilled.diameter().length());
            case Hole.Reamed reamed ->
                tools.reamers().stream()
                        .anyMatch(reamer ->
                                reamer.diameter().equals(reamed.diameter().length()));
            case Hole.Counterbored bored -> false;
            case Hole.Tapped tapped ->
                tools.findTap(tapped.thread().designation()).isPresent();
        };
        return owned
                ? Optional.empty()
                : Optional.of(new Reason(
                        Code.NO_TOOL,
                        hole.name() + " cannot be made: no drill, reamer or tap of its size is owned.",
                        "Buy or borrow the tool, or change the size to one that is owned."));
    }

    private static boolean hasDrill(HoleTools tools, Length diameter) {
        return tools.drills().stream().anyMatch(drill -> drill.diameter().isWithin(DRILL_NEAR, diameter));
    }

    private Reason noHolding() {
        return new Reason(
                Code.NO_HOLDING,
                "No mill or drill here has a vice that opens over the block, or clamps and a table that take it; and what is"
                        + " clamped down has its edges milled and its holes drilled, but not its broad faces.",
                "Plate of its own thickness, or a larger machine.");
    }
}
