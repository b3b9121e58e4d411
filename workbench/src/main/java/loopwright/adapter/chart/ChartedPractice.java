package loopwright.adapter.chart;

import java.nio.file.Path;
import loopwright.action.PracticePictures;
import loopwright.action.PracticePlan;

/** Draws drills and weeks of practice. */
public final class ChartedPractice implements PracticePictures {
    @Override
    public void drawDrill(DrillCard card, Path target) {
        PictureFile.write(DrillChart.of(card), target);
    }

    @Override
    public void drawWeek(PracticePlan plan, Path target) {
        PictureFile.write(WeekChart.of(plan), target);
    }
}
