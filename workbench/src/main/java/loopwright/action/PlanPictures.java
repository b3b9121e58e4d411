package loopwright.action;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.ground.Surface;

/** Draws every hole of a plan. */
final class PlanPictures {
    private static final double WORTH_MARKING = 0.02;

    private final HolePictures pictures;

    PlanPictures(HolePictures pictures) {
        this.pictures = pictures;
    }

    void draw(RoundPlan plan, Path folder) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UserFault(
                    "The folder " + folder + " for the pictures cannot be made: " + e.getMessage() + ".", e);
        }
        for (RoundPlan.HolePlan hole : plan.holes()) {
            String name = String.format(Locale.ROOT, "hole-%02d.png", hole.number());
            pictures.drawHole(picture(plan, hole), folder.resolve(name));
        }
    }

    static HolePicture picture(RoundPlan plan, RoundPlan.HolePlan planned) {
        Hole hole = plan.course().getHole(planned.number());
        return new HolePicture(
                plan.course(),
                hole,
                plan.tees().name(),
                planned.tee(),
                planned.lengthMetres(),
                String.format(Locale.ROOT, "%.2f", planned.expected()),
                planned.shots().stream().map(PlanPictures::shot).toList(),
                List.of(),
                Optional.empty(),
                notes(plan.course(), planned));
    }

    static HolePicture.Shot shot(RoundPlan.ShotPlan s) {
        return new HolePicture.Shot(
                s.from(),
                s.aim(),
                s.club(),
                s.line(),
                s.sample(),
                s.room(),
                s.alternatives().stream()
                        .map(a -> new HolePicture.Alternative(a.aim(), a.club(), a.costInWords()))
                        .toList());
    }

    /** What the picture does not say by itself; it warns of unsurveyed holes and assumed greens. */
    private static List<String> notes(Course course, RoundPlan.HolePlan hole) {
        List<String> out = new ArrayList<>();
        if (!hole.standIn().isEmpty()) {
            out.add("This set has no tee here: the " + hole.standIn() + " tee stands in.");
        }
        LocalRuleWords.of(course.getHole(hole.number())).forEach(r -> out.add("Local rule: " + r + "."));
        out.add(String.format(
                Locale.ROOT,
                "Par or better %.0f in 100, bogey %.0f, double or worse %.0f; a penalty %.0f.",
                100 * hole.probability(0, hole.par()),
                100 * hole.probability(hole.par() + 1, hole.par() + 1),
                100 * hole.probability(hole.par() + 2, hole.scores().size()),
                100 * hole.penalty()));
        for (RoundPlan.ShotPlan s : hole.shots()) {
            trouble(s).ifPresent(out::add);
        }
        return out;
    }

    private static Optional<String> trouble(RoundPlan.ShotPlan s) {
        List<String> parts = new ArrayList<>();
        for (Map.Entry<Surface, Double> e : s.finish().entrySet()) {
            if (Rooms.isTrouble(e.getKey()) && e.getValue() > WORTH_MARKING) {
                parts.add(String.format(Locale.ROOT, "%s %.0f in 100", Rooms.words(e.getKey()), 100 * e.getValue()));
            }
        }
        parts.sort(null);
        return parts.isEmpty() ? Optional.empty() : Optional.of(s.club() + ": " + String.join(", ", parts) + ".");
    }
}
