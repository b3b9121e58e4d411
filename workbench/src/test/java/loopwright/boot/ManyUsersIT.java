package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Thirty people drag aims on one bench at once; each asks again as soon as he has his answer, as the page does. */
class ManyUsersIT {
    private static final int USERS = 30;
    private static final String HOLE = "tees=white&target=79&hole=3";
    /** What the issue allows on two cores, milliseconds; asserted only in the long run, where nothing else is at work. */
    private static final long ALLOWED_P95 = 400;

    private static final Pattern BALL =
            Pattern.compile("data-handle=\"ball\" transform=\"translate\\(([\\d.]+) ([\\d.]+)\\)");

    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    @TempDir
    private static Path folder;

    @Test
    void aFewSecondsOfDraggingBringNoError() throws Exception {
        drag(Duration.ofSeconds(3));
    }

    @Test
    @Tag("long")
    void aMinuteOfDraggingIsAnsweredInTime() throws Exception {
        Times times = drag(Duration.ofSeconds(60));
        assertThat(times.quantile(0.95)).isLessThan(ALLOWED_P95);
        Runtime runtime = Runtime.getRuntime();
        assertThat(runtime.totalMemory() - runtime.freeMemory()).isLessThan(1_400L << 20);
    }

    private record Times(List<Long> millis) {
        long quantile(double share) {
            return millis.get((int) Math.min(millis.size() - 1, Math.floor(share * millis.size())));
        }
    }

    private static Times drag(Duration span) throws Exception {
        try (OpenBench bench = OpenBench.on(folder.resolve(span.toString()))) {
            String origin = bench.origin();
            Matcher ball = BALL.matcher(get(origin + "/plan/hole/part?" + HOLE).body());
            assertThat(ball.find()).isTrue();
            String from = "&x=" + ball.group(1) + "&y=" + ball.group(2);
            Duration before = cpu();
            long end = System.nanoTime() + span.toNanos();
            ExecutorService users = Executors.newFixedThreadPool(USERS);
            List<Future<List<Long>>> all = new ArrayList<>();
            for (int user = 0; user < USERS; user++) {
                SplittableRandom random = new SplittableRandom(user);
                String page = "user" + user;
                all.add(users.submit(() -> asking(origin + "/plan/hole/aim?" + HOLE + from, page, random, end)));
            }
            List<Long> millis = new ArrayList<>();
            for (Future<List<Long>> one : all) {
                millis.addAll(one.get());
            }
            users.shutdown();
            Collections.sort(millis);
            Times times = new Times(millis);
            System.out.printf(
                    Locale.ROOT,
                    "%d answers to %d users in %d s: median %d ms, p95 %d ms; %.1f ms of processor time each, the"
                            + " users' own included%n",
                    millis.size(),
                    USERS,
                    span.toSeconds(),
                    times.quantile(0.5),
                    times.quantile(0.95),
                    (double) cpu().minus(before).toMillis() / millis.size());
            return times;
        }
    }

    private static Duration cpu() {
        return ProcessHandle.current().info().totalCpuDuration().orElse(Duration.ZERO);
    }

    private static List<Long> asking(String question, String page, SplittableRandom random, long end) throws Exception {
        List<Long> out = new ArrayList<>();
        while (System.nanoTime() < end) {
            String address = String.format(
                    Locale.ROOT,
                    "%s&ax=%.1f&ay=%.1f&club=6-iron&page=%s",
                    question,
                    150 + 60 * random.nextDouble(),
                    150 + 50 * random.nextDouble(),
                    page);
            long start = System.nanoTime();
            HttpResponse<String> answer = get(address);
            out.add((System.nanoTime() - start) / 1_000_000);
            assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        }
        return out;
    }

    private static HttpResponse<String> get(String address) throws Exception {
        return CLIENT.send(HttpRequest.newBuilder(URI.create(address)).build(), HttpResponse.BodyHandlers.ofString());
    }
}
