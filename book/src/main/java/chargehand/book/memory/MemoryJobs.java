package chargehand.book.memory;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.summingInt;

import chargehand.book.job.Job;
import chargehand.book.job.JobLine;
import chargehand.book.job.JobNumber;
import chargehand.book.job.JobPage;
import chargehand.book.job.JobQuery;
import chargehand.book.job.Move;
import chargehand.book.job.Stage;
import chargehand.book.method.MethodRecord;
import chargehand.book.part.Face;
import chargehand.book.part.PartIssue;
import chargehand.book.store.Jobs;
import chargehand.book.store.Words;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The jobs in memory. */
record MemoryJobs(Rows<Job> jobs, JobRows<Move> history, MemoryParts parts, MemoryMethods methods) implements Jobs {
    private static final Comparator<Job> NEWEST =
            Comparator.comparing(Job::number).reversed();
    private static final Comparator<Job> WANTED = Comparator.comparing(
                    (Job job) -> job.request().wantedBy().orElse(LocalDate.MAX))
            .thenComparing(Job::number);

    MemoryJobs copy(MemoryParts copiedParts, MemoryMethods copiedMethods) {
        return new MemoryJobs(jobs.copy(), history.copy(), copiedParts, copiedMethods);
    }

    @Override
    public Optional<JobNumber> newest() {
        return jobs.last().map(Job::number);
    }

    @Override
    public void add(Job job) {
        jobs.add(job.number().number(), job);
    }

    @Override
    public void replace(Job job) {
        jobs.replace(job.number().number(), job);
    }

    @Override
    public Optional<Job> find(JobNumber number) {
        return jobs.find(number.number());
    }

    @Override
    public JobPage list(JobQuery query) {
        List<Job> found = jobs.list().stream()
                .filter(job -> query.stages().contains(job.stage()))
                .filter(job -> Words.of(query.text()).allBegin(Words.of(text(job))))
                .sorted(order(query))
                .toList();
        List<JobLine> lines = found.stream()
                .skip(query.before())
                .limit(query.size())
                .map(this::line)
                .toList();
        return new JobPage(lines, found.size(), query);
    }

    private static Comparator<Job> order(JobQuery query) {
        return switch (query.order()) {
            case NEWEST -> NEWEST;
            case WANTED -> WANTED;
        };
    }

    private String text(Job job) {
        Face face = face(job);
        return String.join(
                "\n",
                job.number().toString(),
                job.request().asset(),
                job.request().wants(),
                job.request().asker(),
                face.title(),
                face.drawing(),
                face.material());
    }

    private JobLine line(Job job) {
        boolean planned =
                methods.latest(job.number()).filter(MethodRecord::isFound).isPresent();
        return new JobLine(job, face(job).title(), face(job).drawn(), planned);
    }

    private Face face(Job job) {
        return parts.latest(job.number()).map(PartIssue::face).orElse(Face.FAULTY);
    }

    @Override
    public Map<Stage, Integer> counts() {
        return jobs.list().stream().collect(groupingBy(Job::stage, summingInt(job -> 1)));
    }

    @Override
    public void add(Move move) {
        history.add(move.job(), history.list(move.job()).size() + 1, move);
    }

    @Override
    public List<Move> moves(JobNumber number) {
        return history.list(number);
    }
}
