package loopwright.action;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import loopwright.action.Jobs.Job;
import loopwright.action.Jobs.State;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class JobsTest {
    /** Long enough for a thread to be scheduled on a busy machine; nothing waits this long unless it fails. */
    private static final long PATIENCE = 20_000;

    private final Jobs jobs = new Jobs(1, 2);
    private final CountDownLatch gate = new CountDownLatch(1);

    @AfterEach
    void end() {
        gate.countDown();
        jobs.close();
    }

    private String waitAtGate(loopwright.numerics.Watch watch) {
        try {
            while (!gate.await(5, java.util.concurrent.TimeUnit.MILLISECONDS)) {
                watch.check();
            }
        } catch (InterruptedException e) {
            throw new loopwright.numerics.Watch.Cancelled();
        }
        return "through";
    }

    @Test
    void equalRequestsJoin() {
        AtomicInteger runs = new AtomicInteger();
        Job<Integer> one = jobs.submit("k", "page 1", w -> runs.incrementAndGet());
        Job<Integer> two = jobs.submit("k", "page 2", w -> runs.incrementAndGet());
        assertThat(two).isSameAs(one);
        assertThat(one.await(PATIENCE)).isEqualTo(State.DONE);
        assertThat(jobs.submit("k", "page 3", w -> runs.incrementAndGet()).findResult())
                .contains(1);
    }

    @Test
    void theLatestOfAPageWins() {
        Job<String> first = jobs.submit("a", "page", this::waitAtGate);
        Job<String> second = jobs.submit("b", "page", w -> "done");
        assertThat(first.await(PATIENCE)).isEqualTo(State.CANCELLED);
        assertThat(second.await(PATIENCE)).isEqualTo(State.DONE);
    }

    @Test
    void aPageThatGoesElsewhereLeavesItsJobButNotTheOneItGoesTo() {
        Job<String> job = jobs.submit("a", "page", this::waitAtGate);
        jobs.leaveOthers("page", "a");
        assertThat(job.state().over()).isFalse();
        jobs.leaveOthers("page", "b");
        assertThat(job.await(PATIENCE)).isEqualTo(State.CANCELLED);
    }

    @Test
    void whatAnotherPageWantsIsNotCancelled() {
        Job<String> shared = jobs.submit("a", "page 1", this::waitAtGate);
        jobs.submit("a", "page 2", this::waitAtGate);
        jobs.submit("b", "page 1", w -> "other");
        gate.countDown();
        assertThat(shared.await(PATIENCE)).isEqualTo(State.DONE);
    }

    @Test
    void aCancelledJobStartsAgainWhenAskedForAgain() {
        Job<String> first = jobs.submit("a", "page", this::waitAtGate);
        first.cancel();
        gate.countDown();
        Job<String> again = jobs.submit("a", "page", this::waitAtGate);
        assertThat(again).isNotSameAs(first);
        assertThat(again.await(PATIENCE)).isEqualTo(State.DONE);
    }

    @Test
    void aFailureIsToldOnceAndThenTriedAgain() {
        Job<String> failed = jobs.submit("a", "page", w -> {
            throw new UserFault("no such hole");
        });
        assertThat(failed.await(PATIENCE)).isEqualTo(State.FAILED);
        assertThat(jobs.<String>submit("a", "page", w -> "well").findFailure()).isPresent();
        assertThat(jobs.<String>submit("a", "page", w -> "well").await(PATIENCE))
                .isEqualTo(State.DONE);
    }

    @Test
    void onlyTheLatestResultsAreKept() {
        for (String key : new String[] {"a", "b", "c", "d"}) {
            jobs.submit(key, "page " + key, w -> key).await(PATIENCE);
        }
        assertThat(jobs.find("a")).isEmpty();
        assertThat(jobs.find("d")).isPresent();
    }
}
