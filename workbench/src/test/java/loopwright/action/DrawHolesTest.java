package loopwright.action;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import loopwright.course.Course;
import loopwright.demo.DemoCourse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrawHolesTest {
    private static final Course DEMO = DemoCourse.create();

    @Test
    void drawsEveryHoleFromTheTeesAskedFor(@TempDir Path folder) {
        List<HolePicture> drawn = new ArrayList<>();
        List<Path> files = new DrawHoles((picture, target) -> drawn.add(picture))
                .draw(DEMO, "forward", folder.resolve("new"), "svg");
        assertThat(drawn)
                .hasSize(18)
                .allMatch(p -> p.tees().equals("red") && p.shots().isEmpty());
        assertThat(files.get(8)).isEqualTo(folder.resolve("new").resolve("hole-09.svg"));
        assertThat(folder.resolve("new")).isDirectory();
    }

    @Test
    void unknownTeesAreRefusedWithTheNamesThereAre(@TempDir Path folder) {
        assertThatThrownBy(() -> new DrawHoles((p, t) -> {}).draw(DEMO, "gold", folder, "png"))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("no tees called \"gold\"; it has black, blue, white, yellow, red");
    }

    @Test
    void aFileInTheWayIsNamed(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("taken"), "x");
        assertThatThrownBy(() -> new DrawHoles((p, t) -> {}).draw(DEMO, "back", file, "png"))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining(file.toString());
    }
}
