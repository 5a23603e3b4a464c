package chargehand.web.machine;

import chargehand.book.method.MethodRecord;
import chargehand.book.progress.Progress;
import chargehand.book.progress.StepAt;
import chargehand.book.use.JobFile;
import chargehand.method.plan.Operation;
import chargehand.method.plan.SetUp;
import chargehand.web.serving.Counter;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.util.List;

/** One operation of a job, as an address names it. */
record Bench(JobFile file, MethodRecord planned, Progress progress, StepAt at, Operation operation) {
    static Bench of(Counter counter, Context context) {
        JobFile file = counter.job(context);
        Progress progress = file.progress().orElseThrow(() -> none(file));
        StepAt at = new StepAt(number(context, "setUp"), number(context, "operation"), number(context, "piece"));
        Operation operation = progress.operation(at)
                .orElseThrow(() -> new NotFoundResponse("The method of this job has no " + at + "."));
        return new Bench(file, file.planned().orElseThrow(), progress, at, operation);
    }

    static NotFoundResponse none(JobFile file) {
        return new NotFoundResponse("Job " + file.job().number() + " has no method yet to work by.");
    }

    private static int number(Context context, String name) {
        String written = context.pathParam(name);
        return written.matches("[0-9]{1,6}") ? Integer.parseInt(written) : 0;
    }

    SetUp setUp() {
        return progress.method().setUps().get(at.setUp() - 1);
    }

    String job() {
        return "/jobs/" + file.job().number();
    }

    String address(StepAt step) {
        return job() + "/machine/" + step.setUp() + "/" + step.operation() + "/" + step.piece();
    }

    String address() {
        return address(at);
    }

    /** The step before this one in the order of the work, or the job's own page. */
    String before() {
        List<StepAt> steps = progress.steps().toList();
        int index = steps.indexOf(at);
        return index > 0 ? address(steps.get(index - 1)) : job();
    }

    /** The step after this one, or the job's own page. */
    String after() {
        List<StepAt> steps = progress.steps().toList();
        int index = steps.indexOf(at);
        return index + 1 < steps.size() ? address(steps.get(index + 1)) : job();
    }
}
