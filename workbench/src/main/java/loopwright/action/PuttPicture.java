package loopwright.action;

import java.util.List;
import java.util.Optional;
import loopwright.putting.PlaneGreen;

/**
 * Everything the picture of one putt shows, in metres east and north of the hole; the ball lies south of it.
 *
 * @param slope empty where nobody measured it: the picture then shows no fall and no break
 * @param startRadians from the line ball to hole, + right
 * @param path of the ball as if the hole were covered
 * @param finishes a sample of where misses stop
 * @param words plain sentences, the first the heading
 */
public record PuttPicture(
        double metres,
        Optional<PlaneGreen> slope,
        double startRadians,
        List<double[]> path,
        List<double[]> finishes,
        List<String> words) {
    public PuttPicture {
        path = List.copyOf(path);
        finishes = List.copyOf(finishes);
        words = List.copyOf(words);
    }
}
