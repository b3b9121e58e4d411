package loopwright.adapter.chart;

import java.nio.file.Path;
import loopwright.action.PuttPicture;
import loopwright.action.PuttPictures;

/** Draws single putts. */
public final class ChartedPutts implements PuttPictures {
    @Override
    public void drawPutt(PuttPicture picture, Path target) {
        PictureFile.write(PuttChart.of(picture), target);
    }
}
