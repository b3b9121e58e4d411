package loopwright.adapter.chart;

import java.nio.file.Path;
import loopwright.action.FlightPictures;
import loopwright.action.FlownShot;

/** Draws single flights. */
public final class ChartedFlights implements FlightPictures {
    @Override
    public void drawFlight(FlownShot shot, Path target) {
        PictureFile.write(FlightChart.of(shot), target);
    }
}
