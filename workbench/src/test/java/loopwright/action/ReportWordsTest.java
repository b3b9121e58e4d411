package loopwright.action;

import static org.assertj.core.api.Assertions.assertThat;

import loopwright.scoring.Obstacle;
import loopwright.scoring.OrdinaryMiss;
import loopwright.units.Distance;
import org.junit.jupiter.api.Test;

class ReportWordsTest {
    private static final ReadLengths METRES = new ReadLengths(LengthUnit.METRES, true);

    private static OrdinaryMiss miss(double leftMetres) {
        return new OrdinaryMiss(3, 2, "7-iron", Distance.ofYards(150), Distance.ofMetres(leftMetres), 0.6);
    }

    @Test
    void obstaclesAreToldInTheReadersUnits() {
        assertThat(ReportWords.obstacle(Obstacle.WEDGES)).isEqualTo("approaches of 40 to 125 yd");
        assertThat(ReportWords.obstacle(Obstacle.WEDGES, METRES)).isEqualTo("approaches of 37 to 114 m");
        assertThat(ReportWords.obstacle(Obstacle.SHORT_PUTTS)).isEqualTo("missed putts of up to 6 ft");
        assertThat(ReportWords.obstacle(Obstacle.SHORT_PUTTS, METRES)).isEqualTo("missed putts of up to 1.8 m");
    }

    @Test
    void missesAreToldInTheReadersUnits() {
        assertThat(ReportWords.ordinaryMiss(miss(9.7536))).contains("from 150 yd to 32 ft;");
        assertThat(ReportWords.ordinaryMiss(miss(9.7536), METRES)).contains("from 137 m to 9.8 m;");
        assertThat(ReportWords.ordinaryMiss(miss(45.72))).contains("to 50 yd;");
        assertThat(ReportWords.ordinaryMiss(miss(45.72), METRES)).contains("to 46 m;");
        assertThat(ReportWords.ordinaryMiss(miss(0), METRES)).contains("into the hole;");
    }
}
