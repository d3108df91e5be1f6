package crumbclock.app;

import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.engine.cost.Cost;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchListener;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Plans several problems, a few at a time. Each plan is the one that the problem would get by itself. */
public final class PlanSideBySide {

    private PlanSideBySide() {
    }

    /**
     * One problem to be planned.
     *
     * @param name for people, while it is planned
     */
    public record Job(String name, Problem problem, SearchLimits limits) {
    }

    /** Hears of all searches, from several threads. */
    public interface Listener {

        /** A search has begun. */
        void began(Job job);

        /** A better plan was found for a job. */
        void improved(Job job, Cost best);

        /** The job has its plan. */
        void finished(Job job);

        /** Asked often: whether to end all searches now; what has not begun is then not planned. */
        boolean stopAsked();
    }

    /**
     * Plans all jobs, in their order.
     *
     * @param atOnce how many searches run at the same time, at least 1; each of them uses two threads
     * @return one answer for each job; empty for those that had not begun when the listener asked to stop. The first job is always planned
     * @throws PlanFault as for a single plan
     */
    public static List<Optional<Plan>> plan(List<Job> jobs, int atOnce, Listener listener) {
        var threads = Executors.newFixedThreadPool(atOnce, task -> {
            var thread = new Thread(task, "plans side by side");
            thread.setDaemon(true);
            return thread;
        });
        try {
            List<Future<Optional<Plan>>> running = new ArrayList<>();
            for (Job job : jobs) {
                boolean always = job == jobs.get(0);
                running.add(threads.submit(() -> plan(job, always, listener)));
            }
            List<Optional<Plan>> plans = new ArrayList<>();
            for (var one : running) {
                plans.add(result(one));
            }
            return plans;
        } finally {
            threads.shutdownNow();
        }
    }

    private static Optional<Plan> plan(Job job, boolean always, Listener listener) {
        if (!always && listener.stopAsked()) {
            return Optional.empty();
        }
        listener.began(job);
        var plan = PlanProblem.plan(job.problem(), job.limits(), new SearchListener() {
            @Override
            public void improved(long schedules, Cost best) {
                listener.improved(job, best);
            }

            @Override
            public boolean stopAsked() {
                return listener.stopAsked();
            }
        });
        listener.finished(job);
        return Optional.of(plan);
    }

    private static Optional<Plan> result(Future<Optional<Plan>> running) {
        try {
            return running.get();
        } catch (ExecutionException failed) {
            throw failed.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(failed.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("planning was interrupted", e);
        }
    }
}
