package loopwright.action;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.course.TeeSet;

/** Draws the ground of every hole of a course, one picture each, without a plan. */
public final class DrawHoles {
    private final HolePictures pictures;

    public DrawHoles(HolePictures pictures) {
        this.pictures = pictures;
    }

    /**
     * Writes hole-01.png and so on into a folder, which is made if it does not exist.
     *
     * @param ending "png" or "svg"
     * @return the files, in the order of the holes
     */
    public List<Path> draw(Course course, String tees, Path folder, String ending) {
        TeeSet set = course.findTeeSet(tees)
                .orElseThrow(() -> new UserFault(course.name() + " has no tees called \"" + tees + "\"; it has "
                        + course.teeSets().stream().map(TeeSet::name).collect(Collectors.joining(", "))
                        + ", and back, middle and forward always work."));
        make(folder);
        List<Path> out = new ArrayList<>();
        for (Hole hole : course.holes()) {
            Path file = folder.resolve(String.format(Locale.ROOT, "hole-%02d.%s", hole.number(), ending));
            pictures.drawHole(
                    HolePicture.ofGround(
                            course,
                            hole,
                            set.name(),
                            set.getPlace(hole.number()).place()),
                    file);
            out.add(file);
        }
        return out;
    }

    private static void make(Path folder) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UserFault(
                    "The folder " + folder + " cannot be made (" + e.getMessage() + "); name another place with --out.",
                    e);
        }
    }
}
