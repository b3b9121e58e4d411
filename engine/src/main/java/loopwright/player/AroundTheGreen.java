package loopwright.player;

import java.util.List;
import java.util.stream.Stream;

/**
 * The putt from off the green and the lob, for a player who has not measured them. All assumed, the two numbers of a row for
 * the tour and a 90-golfer: the putt is rolled through grass that takes more of the pace than a green, is never blown
 * across the green, and now and then held up at once; the lob flies high and stops soon, with twice the pitch's mishits.
 * They were set such that a player of the tour's level gains nothing on Broadie's Table 9 from 10 yd, as he chips there.
 */
final class AroundTheGreen {
    private static final double LONGEST_PUTT_METRES = 18;
    private static final double[] PUTT_FLOOR = {.45, .55};
    private static final double[] PUTT_SHARE = {.11, .13};
    private static final double[] PUTT_DIRECTION = {2.4, 3.2};
    private static final double[] HELD_UP = {.04, .06};

    private static final double SHORTEST_LOB_METRES = 5;
    private static final double LONGEST_LOB_METRES = 25;
    private static final double LOB_RUN_SHARE = 0.08;
    /** Length and direction of a lob are spread so much wider than a pitch's. */
    private static final double LOB_WIDER = 1.25;

    private static final double LOB_MISHITS = 2;
    private static final double MOST_LOB_MISHITS = 0.6;

    private AroundTheGreen() {}

    static List<TouchShot> assumed(Player player) {
        Stream<TouchShot> lob = player.touchShots().stream()
                .filter(t -> t.kind() == TouchShot.Kind.PITCH && t.maxMetres() > SHORTEST_LOB_METRES)
                .limit(1)
                .map(AroundTheGreen::lob);
        return Stream.concat(Stream.of(putt(player.level())), lob).toList();
    }

    private static TouchShot putt(double level) {
        double direction = Math.toRadians(PriorTable.at(level, PUTT_DIRECTION));
        Mishit heldUp = new Mishit(Mishit.Kind.FAT, PriorTable.at(level, HELD_UP), .5, .15, 0, 1.5 * direction, true);
        return new TouchShot(
                TouchShot.Kind.FRINGE_PUTT,
                1,
                LONGEST_PUTT_METRES,
                PriorTable.at(level, PUTT_FLOOR),
                PriorTable.at(level, PUTT_SHARE),
                direction,
                1,
                List.of(heldUp),
                Evidence.ASSUMED);
    }

    private static TouchShot lob(TouchShot pitch) {
        double rate = pitch.mishits().stream().mapToDouble(Mishit::rate).sum();
        double factor = rate == 0 ? 1 : Math.min(LOB_MISHITS, MOST_LOB_MISHITS / rate);
        return new TouchShot(
                TouchShot.Kind.LOB,
                SHORTEST_LOB_METRES,
                Math.min(LONGEST_LOB_METRES, pitch.maxMetres()),
                LOB_WIDER * pitch.distanceSdFloorMetres(),
                LOB_WIDER * pitch.distanceSdShare(),
                LOB_WIDER * pitch.directionSdRadians(),
                LOB_RUN_SHARE,
                pitch.mishits().stream().map(m -> m.withRate(m.rate() * factor)).toList(),
                Evidence.ASSUMED);
    }
}
