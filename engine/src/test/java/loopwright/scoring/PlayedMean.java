package loopwright.scoring;

import java.util.function.DoubleSupplier;

/** The mean of scores played by chance, and its standard error. */
public record PlayedMean(double mean, double standardError) {

    /** Plays so many times. */
    public static PlayedMean of(int times, DoubleSupplier score) {
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < times; i++) {
            double one = score.getAsDouble();
            sum += one;
            squares += one * one;
        }
        double mean = sum / times;
        return new PlayedMean(mean, Math.sqrt((squares / times - mean * mean) / times));
    }
}
