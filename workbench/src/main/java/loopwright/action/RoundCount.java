package loopwright.action;

import loopwright.scoring.HoleWitness;
import loopwright.scoring.PlayOut;

/** What a simulated round is made of, in the counts that players keep. */
final class RoundCount {
    /** Birdie or better, par, bogey, double, triple or worse. */
    final int[] toPar = new int[5];

    int strokes;
    int putts;
    int threePutts;
    int penalties;
    int fairways;
    int greens;
    int upAndDowns;
    int upAndDownTries;

    void add(int par, PlayOut.HoleScore score, HoleWitness witness) {
        strokes += score.strokes();
        putts += score.putts();
        threePutts += score.putts() >= 3 ? 1 : 0;
        penalties += score.penaltyStrokes();
        toPar[Math.max(-1, Math.min(3, score.strokes() - par)) + 1]++;
        boolean green = score.strokes() - score.putts() <= par - 2;
        greens += green ? 1 : 0;
        boolean drovenGreen = score.strokes() - score.putts() == 1;
        fairways += par > 3 && (witness.secondFromFairway() || drovenGreen) ? 1 : 0;
        if (witness.strokesWhenAround().isPresent()) {
            upAndDownTries++;
            upAndDowns += score.strokes() - witness.strokesWhenAround().getAsInt() <= 2 ? 1 : 0;
        }
    }
}
