package loopwright.adapter.table;

import java.nio.file.Path;
import loopwright.action.AuditFiles;
import loopwright.action.UserFault;
import loopwright.strategy.MeanSolution;
import loopwright.strategy.PolicyEvaluation;

/** Writes the audit of solved holes into a folder. */
public final class AuditFolder implements AuditFiles {
    private final Path folder;

    public AuditFolder(Path folder) {
        this.folder = folder;
    }

    @Override
    public void write(MeanSolution solution, PolicyEvaluation evaluation, long seed) {
        throw new UserFault("--audit " + folder + " cannot be written yet.");
    }
}
