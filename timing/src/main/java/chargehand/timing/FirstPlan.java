package chargehand.timing;

import chargehand.method.search.Planner;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The first planning that a process ever does, with the virtual machine still cold, in a process started for it. */
final class FirstPlan {
    private FirstPlan() {}

    /** Plans one part once and prints the seconds it took. */
    public static void main(String... args) throws Exception {
        DemoWorkshop workshop = DemoWorkshop.read(Path.of(args[0]));
        DemoWorkshop.Drawn drawn = workshop.drawn().get(Integer.parseInt(args[1]));
        long begun = System.nanoTime();
        new Planner(workshop.kit(), workshop.rack()).plan(drawn.part(), drawn.count());
        System.out.println((System.nanoTime() - begun) / 1e9);
    }

    /** The times of the first planning of the part of this number in the demo's list, in so many processes. */
    static Stopwatch of(Path demo, int number, int processes) throws IOException, InterruptedException {
        var seconds = new ArrayList<Double>();
        for (int process = 0; process < processes; process++) {
            seconds.add(Double.parseDouble(ownProcess(demo, number)));
        }
        return new Stopwatch(seconds, List.of());
    }

    /** Run as this process is run: the same settings, archive and class path. */
    private static String ownProcess(Path demo, int number) throws IOException, InterruptedException {
        var runtime = ManagementFactory.getRuntimeMXBean();
        var command = new ArrayList<String>();
        command.add(ProcessHandle.current().info().command().orElseThrow());
        command.addAll(runtime.getInputArguments());
        command.addAll(List.of("-cp", runtime.getClassPath(), FirstPlan.class.getName()));
        command.addAll(List.of(demo.toString(), Integer.toString(number)));
        var process = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (var out = process.inputReader()) {
            List<String> lines = out.lines().toList();
            if (process.waitFor() != 0 || lines.size() != 1) {
                throw new IllegalStateException("planning in a process of its own said " + lines);
            }
            return lines.getFirst();
        }
    }
}
