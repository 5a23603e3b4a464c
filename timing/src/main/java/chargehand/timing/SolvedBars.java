package chargehand.timing;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A cutting list put to CP-SAT, the constraint solver of OR-Tools: how many of each length come out of each bar, bars in order of
 * how full they are, as many of them as first-fit decreasing takes. One thread and one second each. It is measured beside the
 * program's own method and is no part of the program.
 *
 * @param bars that its plan takes
 * @param bound that it proved no plan to be below
 */
record SolvedBars(long bars, long bound) {
    static final double SECONDS = 1;
    private static final int SEED = 1;

    boolean isProved() {
        return bars == bound;
    }

    /** Whether the solver is on the class path and its native library fits this machine. */
    static boolean isThere() {
        try {
            Loader.loadNativeLibraries();
            return true;
        } catch (RuntimeException | LinkageError missing) {
            return false;
        }
    }

    static SolvedBars of(BarTimes.CuttingList list) {
        int most = (int) FirstFit.bars(list);
        int least = Math.ceilDiv(
                list.pieces().stream().mapToInt(piece -> piece + list.kerf()).sum(), list.bar() + list.kerf());
        var model = new CpModel();
        List<IntVar> begun = new ArrayList<>();
        for (int bar = 0; bar < most; bar++) {
            begun.add(model.newIntVar(bar < least ? 1 : 0, 1, "bar " + bar));
        }
        fill(model, list, begun);
        model.minimize(LinearExpr.sum(begun.toArray(IntVar[]::new)));
        var solver = new CpSolver();
        solver.getParameters().setMaxTimeInSeconds(SECONDS).setNumWorkers(1).setRandomSeed(SEED);
        CpSolverStatus status = solver.solve(model);
        boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
        long bound = Math.max(least, (long) Math.ceil(solver.bestObjectiveBound() - 1e-6));
        return new SolvedBars(found ? Math.round(solver.objectiveValue()) : most, bound);
    }

    private static void fill(CpModel model, BarTimes.CuttingList list, List<IntVar> begun) {
        Map<Integer, Long> counts = list.pieces().stream()
                .collect(Collectors.groupingBy(Function.identity(), TreeMap::new, Collectors.counting()));
        Map<Integer, LinearExprBuilder> cut = new TreeMap<>();
        int offers = list.bar() + list.kerf();
        LinearExpr before = LinearExpr.constant(offers);
        for (IntVar bar : begun) {
            LinearExprBuilder load = LinearExpr.newBuilder();
            for (Map.Entry<Integer, Long> entry : counts.entrySet()) {
                int need = entry.getKey() + list.kerf();
                IntVar here = model.newIntVar(0, Math.min(entry.getValue(), offers / need), entry.getKey() + " here");
                load.addTerm(here, need);
                cut.computeIfAbsent(entry.getKey(), piece -> LinearExpr.newBuilder())
                        .add(here);
            }
            LinearExpr full = load.build();
            model.addLessOrEqual(full, LinearExpr.term(bar, offers));
            model.addLessOrEqual(full, before);
            before = full;
        }
        cut.forEach((piece, sum) -> model.addEquality(sum.build(), Collections.frequency(list.pieces(), piece)));
    }
}
