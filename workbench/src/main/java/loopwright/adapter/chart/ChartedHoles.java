package loopwright.adapter.chart;

import java.nio.file.Path;
import loopwright.action.HolePicture;
import loopwright.action.HolePictures;

/** Draws holes with their plans. */
public final class ChartedHoles implements HolePictures {
    @Override
    public void drawHole(HolePicture picture, Path target) {
        PictureFile.write(HoleChart.of(picture), target);
    }
}
