package loopwright.adapter.chart;

import java.nio.file.Path;
import java.util.List;
import loopwright.action.HoleAlbum;
import loopwright.action.HolePicture;
import loopwright.action.HolePictures;
import loopwright.action.WholeFile;
import loopwright.drawing.PdfFile;

/** Draws holes with their plans. */
public final class ChartedHoles implements HolePictures, HoleAlbum {
    @Override
    public void drawHole(HolePicture picture, Path target) {
        PictureFile.write(HoleChart.of(picture), target);
    }

    @Override
    public void drawHoles(String title, List<HolePicture> pictures, Path target) {
        WholeFile.write(
                target, PdfFile.of(title, pictures.stream().map(HoleChart::of).toList()));
    }
}
