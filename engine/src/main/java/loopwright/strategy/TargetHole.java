package loopwright.strategy;

/** A hole of a round that is played for a target: solved for the mean and evaluated, and the table its strokes count in. */
public record TargetHole(MeanSolution mean, PolicyEvaluation evaluation, ScoreTable table) {}
