package loopwright.adapter.chart;

import java.nio.file.Path;
import loopwright.action.LengthUnit;
import loopwright.action.PatternPictures;
import loopwright.player.Player;
import loopwright.player.ShotLog;

/** Draws the shot patterns of a player. */
public final class ChartedPatterns implements PatternPictures {
    @Override
    public void drawPatterns(Player player, ShotLog shots, LengthUnit lengths, Path target) {
        PictureFile.write(PatternChart.of(player, shots, lengths), target);
    }
}
