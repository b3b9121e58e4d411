package loopwright.action;

import loopwright.strategy.MeanSolution;
import loopwright.strategy.PolicyEvaluation;

/** Port: writes out a solved hole so that another program can check it. */
public interface AuditFiles {
    /** Writes the files of one hole; {@code seed} selects the nodes of which all options are written. */
    void write(MeanSolution solution, PolicyEvaluation evaluation, long seed);
}
