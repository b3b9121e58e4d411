package loopwright.action;

import java.nio.file.Path;
import java.util.List;
import loopwright.course.Course;
import loopwright.ground.HeightField;

/** Port: reads heights of the ground from elevation rasters. */
public interface TerrainFiles {
    /**
     * Heights under a course and its surroundings, in its local frame.
     *
     * @throws UserFault if the file cannot be used or does not cover the course
     */
    Terrain read(Path file, Course course);

    /** Heights, and a record for everything that had to be assumed about them. */
    record Terrain(HeightField heights, List<ImportRecord> records) {
        public Terrain {
            records = List.copyOf(records);
        }
    }
}
