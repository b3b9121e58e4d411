package loopwright.action;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import loopwright.numerics.Watch;

/** Independent pieces of work on all cores, answers in order; the first failure ends the rest. */
final class Cores {
    private Cores() {}

    static <T, R> List<R> all(List<T> pieces, Function<T, R> work, Watch watch) {
        ExecutorService pool = Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        try {
            AtomicInteger done = new AtomicInteger();
            List<Future<R>> tasks = new ArrayList<>();
            for (T piece : pieces) {
                tasks.add(pool.submit(() -> {
                    R result = work.apply(piece);
                    watch.at(done.incrementAndGet(), pieces.size());
                    return result;
                }));
            }
            List<R> out = new ArrayList<>();
            for (Future<R> task : tasks) {
                out.add(task.get());
            }
            return out;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Watch.Cancelled();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(e.getCause());
        } finally {
            pool.shutdownNow();
        }
    }
}
