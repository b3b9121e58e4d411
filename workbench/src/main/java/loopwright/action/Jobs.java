package loopwright.action;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Function;
import loopwright.numerics.Watch;
import org.jspecify.annotations.Nullable;

/**
 * Long work in a bounded pool. A job's key tells its inputs: equal requests join, and a finished job answers the next
 * one at once. Of the jobs a page asked for only the latest matters: one that no page wants any longer is cancelled.
 */
public final class Jobs implements AutoCloseable {
    private final ExecutorService pool;
    private final int keep;
    private final Map<String, Job<?>> jobs = new LinkedHashMap<>(16, 0.75f, true);
    private final Map<String, String> keyOfPage = new HashMap<>();

    /** At most {@code workers} jobs run at once; results of the {@code keep} used last are kept. */
    public Jobs(int workers, int keep) {
        this.keep = keep;
        pool = Executors.newFixedThreadPool(workers, task -> {
            Thread thread = new Thread(task, "job");
            thread.setDaemon(true);
            return thread;
        });
    }

    /** What a job is doing. */
    public enum State {
        WAITING,
        RUNNING,
        DONE,
        FAILED,
        CANCELLED;

        public boolean over() {
            return this == DONE || this == FAILED || this == CANCELLED;
        }
    }

    /** One piece of work and what became of it. */
    public static final class Job<T> implements Watch {
        private final String key;
        private final List<Runnable> listeners = new ArrayList<>();
        private State state = State.WAITING;
        private long done;
        private long total;
        private @Nullable T result;
        private @Nullable RuntimeException failure;

        private Job(String key) {
            this.key = key;
        }

        public String key() {
            return key;
        }

        public synchronized State state() {
            return state;
        }

        public synchronized long done() {
            return done;
        }

        public synchronized long total() {
            return total;
        }

        /** The result, once the job is done. */
        public synchronized Optional<T> findResult() {
            return Optional.ofNullable(result);
        }

        /** What went wrong, once the job has failed. */
        public synchronized Optional<RuntimeException> findFailure() {
            return Optional.ofNullable(failure);
        }

        /** Calls back after every change from now on, from any thread. */
        public synchronized void onChange(Runnable listener) {
            listeners.add(listener);
        }

        public synchronized void forget(Runnable listener) {
            listeners.remove(listener);
        }

        public void cancel() {
            change(State.CANCELLED, null, null);
        }

        /** Waits until the job is over, at most so long. */
        public synchronized State await(long millis) {
            long end = System.nanoTime() + millis * 1_000_000;
            while (!state.over()) {
                long left = (end - System.nanoTime()) / 1_000_000;
                if (left <= 0) {
                    break;
                }
                try {
                    wait(left);
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                    break;
                }
            }
            return state;
        }

        @Override
        public boolean cancelled() {
            return state() == State.CANCELLED;
        }

        @Override
        public void at(long newDone, long newTotal) {
            synchronized (this) {
                done = Math.max(done, newDone);
                total = newTotal;
            }
            tell();
        }

        private void run(Function<Watch, T> work) {
            if (cancelled()) {
                return;
            }
            change(State.RUNNING, null, null);
            try {
                change(State.DONE, work.apply(this), null);
            } catch (Cancelled e) {
                change(State.CANCELLED, null, null);
            } catch (RuntimeException e) {
                change(State.FAILED, null, e);
            } catch (Error e) {
                change(State.FAILED, null, new IllegalStateException(e));
            }
        }

        private void change(State to, @Nullable T value, @Nullable RuntimeException trouble) {
            synchronized (this) {
                if (state.over()) {
                    return;
                }
                state = to;
                result = value;
                failure = trouble;
                notifyAll();
            }
            tell();
        }

        private void tell() {
            List<Runnable> now;
            synchronized (this) {
                now = List.copyOf(listeners);
            }
            now.forEach(Runnable::run);
        }
    }

    /**
     * Starts work, or joins the same work under way or finished.
     *
     * @param key tells the inputs and the kind of result
     * @param page who asks; its former job is left, and cancelled if nobody else wants it
     */
    @SuppressWarnings({"unchecked", "FutureReturnValueIgnored"})
    public synchronized <T> Job<T> submit(String key, String page, Function<Watch, T> work) {
        Job<?> known = jobs.get(key);
        leave(page, key);
        keyOfPage.put(page, key);
        if (known != null && known.state() == State.FAILED) {
            // told once; who asks again after that tries again
            jobs.remove(key);
            return (Job<T>) known;
        }
        if (known != null && known.state() != State.CANCELLED) {
            return (Job<T>) known;
        }
        Job<T> job = new Job<>(key);
        jobs.put(key, job);
        pool.submit(() -> job.run(work));
        forgetOldest();
        return job;
    }

    /** The former job of a page is left, and cancelled if nobody else wants it, unless it is this one. */
    public synchronized void leaveOthers(String page, String key) {
        if (!key.equals(keyOfPage.get(page))) {
            leave(page, key);
        }
    }

    private void leave(String page, String next) {
        String former = keyOfPage.remove(page);
        if (former != null && !former.equals(next) && !keyOfPage.containsValue(former)) {
            Job<?> job = jobs.get(former);
            if (job != null) {
                job.cancel();
            }
        }
    }

    private void forgetOldest() {
        int spare = jobs.size() - keep;
        for (Job<?> old : List.copyOf(jobs.values())) {
            if (spare > 0 && old.state().over()) {
                jobs.remove(old.key());
                keyOfPage.values().remove(old.key());
                spare--;
            }
        }
    }

    /** A job that is known by its key. */
    public synchronized Optional<Job<?>> find(String key) {
        return Optional.ofNullable(jobs.get(key));
    }

    @Override
    public void close() {
        synchronized (this) {
            jobs.values().forEach(Job::cancel);
        }
        pool.shutdownNow();
    }
}
