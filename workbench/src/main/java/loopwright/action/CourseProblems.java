package loopwright.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import loopwright.geo.LatLon;

/** The oddities of a course's map as they are kept beside the course, so that they can be mended one by one. */
public final class CourseProblems {
    private static final String KEY = "problem ";
    private static final String SEPARATOR = "\n";
    private static final int FIELDS = 8;

    private CourseProblems() {}

    /** One oddity and the name it is kept under. */
    public record Problem(String key, ImportRecord record) {}

    static Map<String, String> written(List<ImportRecord> records) {
        Map<String, String> out = new TreeMap<>();
        for (ImportRecord r : records) {
            out.put(
                    String.format(Locale.ROOT, "%s%04d", KEY, out.size() + 1),
                    String.join(
                            SEPARATOR,
                            r.kind(),
                            Boolean.toString(r.warning()),
                            r.element(),
                            r.where()
                                    .map(w -> Double.toString(w.latitudeDegrees()))
                                    .orElse(""),
                            r.where()
                                    .map(w -> Double.toString(w.longitudeDegrees()))
                                    .orElse(""),
                            r.found(),
                            r.assumed(),
                            r.mend()));
        }
        return out;
    }

    /** What is left of the oddities, warnings first. */
    public static List<Problem> list(BenchStore store, String course) {
        List<Problem> out = new ArrayList<>();
        store.listAnswers(course).forEach((key, text) -> {
            String[] f = text.split(SEPARATOR, -1);
            if (key.startsWith(KEY) && f.length == FIELDS) {
                Optional<LatLon> where = f[3].isEmpty()
                        ? Optional.empty()
                        : Optional.of(new LatLon(Double.parseDouble(f[3]), Double.parseDouble(f[4])));
                boolean warning = Boolean.parseBoolean(f[1]);
                out.add(new Problem(key, new ImportRecord(f[0], warning, f[2], where, f[5], f[6], f[7])));
            }
        });
        out.sort((a, b) -> Boolean.compare(b.record().warning(), a.record().warning()));
        return out;
    }

    /** Somebody has looked at it: it is listed no longer. */
    public static void settle(BenchStore store, String course, String key) {
        Map<String, String> left = new TreeMap<>(store.listAnswers(course));
        left.remove(key);
        store.setAnswers(course, left);
    }
}
