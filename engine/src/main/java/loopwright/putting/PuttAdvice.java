package loopwright.putting;

import java.util.List;

/**
 * What to do with one putt, and what to expect.
 *
 * @param best the pace that leads to fewest putts
 * @param choices every pace tried, softest first
 * @param one probability of holing it
 * @param two probability of exactly two putts
 * @param threeOrMore probability of three or more
 */
public record PuttAdvice(
        SlopedPace best, List<SlopedPace> choices, double one, double two, double threeOrMore, double expectedPutts) {
    public PuttAdvice {
        choices = List.copyOf(choices);
    }
}
