package loopwright.boot;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The allow-list of arrows between packages; {@code docs/architecture.md} shows the same table. */
class ArchitectureTest {
    private static final String ROOT = "loopwright.";

    /** Every package may also use units and numerics. */
    private static final Set<String> EVERYWHERE = Set.of("units", "numerics");

    private static final Set<String> ENGINE = Set.of(
            "units",
            "numerics",
            "geo",
            "ground",
            "flight",
            "course",
            "putting",
            "player",
            "rules",
            "strategy",
            "scoring",
            "practice",
            "handicap");

    private static final Map<String, Set<String>> ALLOWED = new TreeMap<>(Map.ofEntries(
            Map.entry("units", Set.of()),
            Map.entry("numerics", Set.of()),
            Map.entry("geo", Set.of()),
            Map.entry("ground", Set.of("geo")),
            Map.entry("course", Set.of("ground", "geo")),
            Map.entry("flight", Set.of("ground")),
            Map.entry("putting", Set.of("ground")),
            Map.entry("player", Set.of("flight", "putting", "ground")),
            Map.entry("rules", Set.of("course", "ground", "geo")),
            Map.entry("strategy", Set.of("player", "course", "rules", "putting", "flight", "ground", "geo")),
            Map.entry("scoring", Set.of("strategy", "player", "putting", "rules", "course", "ground", "geo")),
            Map.entry("practice", Set.of("scoring", "strategy", "player", "putting", "course", "ground")),
            Map.entry("handicap", Set.of()),
            Map.entry("action", ENGINE),
            Map.entry("drawing", Set.of("course", "ground", "geo")),
            Map.entry("adapter.book", plus(ENGINE, "action", "drawing")),
            Map.entry("adapter.chart", plus(ENGINE, "action", "drawing")),
            Map.entry("adapter.osm", plus(ENGINE, "action")),
            Map.entry("adapter.store", Set.of("action")),
            Map.entry("adapter.table", plus(ENGINE, "action")),
            Map.entry("adapter.terrain", plus(ENGINE, "action")),
            Map.entry("cli", plus(ENGINE, "action")),
            Map.entry("web", plus(ENGINE, "action")),
            Map.entry(
                    "boot",
                    plus(
                            ENGINE,
                            "action",
                            "cli",
                            "web",
                            "adapter.book",
                            "adapter.chart",
                            "adapter.osm",
                            "adapter.store",
                            "adapter.table",
                            "adapter.terrain"))));

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("loopwright");

    @Test
    void everyArrowIsOnTheAllowList() {
        Set<String> forbidden = new TreeSet<>();
        for (JavaClass from : CLASSES) {
            String home = packageOf(from);
            Set<String> allowed = ALLOWED.getOrDefault(home, Set.of());
            for (Dependency d : from.getDirectDependenciesFromSelf()) {
                JavaClass to = d.getTargetClass();
                if (!to.getPackageName().startsWith(ROOT)) {
                    continue;
                }
                String target = packageOf(to);
                if (!target.equals(home) && !EVERYWHERE.contains(target) && !allowed.contains(target)) {
                    forbidden.add(from.getName() + " -> " + to.getName());
                }
            }
        }
        assertThat(forbidden).isEmpty();
    }

    @Test
    void everyPackageIsInTheTable() {
        Set<String> unknown = new TreeSet<>();
        CLASSES.forEach(c -> unknown.add(packageOf(c)));
        unknown.removeAll(ALLOWED.keySet());
        assertThat(unknown).isEmpty();
    }

    @Test
    void everyRowMatchesAClass() {
        Set<String> rows = new TreeSet<>(ALLOWED.keySet());
        CLASSES.forEach(c -> rows.remove(packageOf(c)));
        assertThat(rows).isEmpty();
    }

    @Test
    void packagesFormNoCycle() {
        SlicesRuleDefinition.slices()
                .matching(ROOT + "(**)")
                .should()
                .beFreeOfCycles()
                .check(CLASSES);
    }

    @Test
    void theEngineTouchesNoFilesClockNetworkOrLog() {
        Set<String> forbidden = new TreeSet<>();
        for (JavaClass from : CLASSES) {
            if (!ENGINE.contains(packageOf(from))) {
                continue;
            }
            for (Dependency d : from.getDirectDependenciesFromSelf()) {
                String target = d.getTargetClass().getName();
                if (target.matches("java\\.(io\\.File|nio\\.file|net|time|util\\.logging|util\\.Random$|sql).*")
                        || target.matches("(java\\.lang\\.System\\$|org\\.slf4j|com\\.fasterxml).*")) {
                    forbidden.add(from.getName() + " -> " + target);
                }
            }
        }
        assertThat(forbidden).isEmpty();
    }

    private static Set<String> plus(Set<String> some, String... more) {
        Set<String> out = new TreeSet<>(some);
        out.addAll(Set.of(more));
        return out;
    }

    private static String packageOf(JavaClass c) {
        return c.getPackageName().substring(ROOT.length());
    }
}
