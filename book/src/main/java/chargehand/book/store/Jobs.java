package chargehand.book.store;

import chargehand.book.job.Job;
import chargehand.book.job.JobNumber;
import chargehand.book.job.JobPage;
import chargehand.book.job.JobQuery;
import chargehand.book.job.Move;
import chargehand.book.job.Stage;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The jobs and their moves. */
public interface Jobs {
    /** The newest job's number; empty in an empty book. */
    Optional<JobNumber> newest();

    /** Adds a job under a number that is not used yet. */
    void add(Job job);

    /** Puts a job in the place of the one of its number. */
    void replace(Job job);

    Optional<Job> find(JobNumber number);

    JobPage list(JobQuery query);

    /** How many jobs there are at each stage; stages without any are left out. */
    Map<Stage, Integer> counts();

    /** Adds a move to a job's history. */
    void add(Move move);

    /** A job's moves in the order they were made. */
    List<Move> moves(JobNumber number);
}
