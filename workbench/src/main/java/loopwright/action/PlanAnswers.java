package loopwright.action;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import loopwright.action.Jobs.Job;
import loopwright.ground.Surface;

/** Answers what lies round a plan for the bench, in the background, with what the command line asks. */
public final class PlanAnswers {
    private static final int KEPT = 12;

    private final Workroom room;
    private final Advisers advisers;
    private final Jobs rounds;
    private final Jobs tables;

    /** Whom the answers are asked of. */
    public record Advisers(CompareTees tees, ExpectRound expect, WedgeAdviser wedges, ShortGame shortGame) {}

    public PlanAnswers(Workroom room, Advisers advisers, JobBoard board) {
        this.room = room;
        this.advisers = advisers;
        rounds = board.rounds();
        tables = board.open(1, KEPT);
    }

    /**
     * How sets of tees are to be compared, as {@link TeesRequest} says.
     *
     * @param partner another player of the store
     */
    public record TeesWish(
            List<String> mixed,
            double markersMetres,
            boolean winter,
            Optional<Shelf.Entry> partner,
            boolean byDistance) {
        public TeesWish {
            mixed = List.copyOf(mixed);
        }

        private String key() {
            return mixed + " " + markersMetres + " " + winter + " "
                    + partner.map(p -> p.id() + "." + p.version()).orElse("") + " " + byDistance;
        }
    }

    /** Every set of tees, for the player as he is today. */
    public Job<TeesAnswer> tees(PlanChoice choice, TeesWish wish) {
        String key = "tees " + choice.key() + " " + wish.key();
        return rounds.submit(key, key, watch -> {
            TeesRequest request = new TeesRequest(
                    request(choice),
                    wish.mixed(),
                    wish.markersMetres(),
                    wish.winter(),
                    wish.partner().map(p -> room.playerFile(p.id(), p.version())),
                    wish.byDistance());
            return advisers.tees().compare(request, watch);
        });
    }

    /** What a round is made of; counted in strokes whatever the plan counts. */
    public Job<Expectation> expect(PlanChoice choice) {
        if (choice.goal().counting().form() != Counting.Form.STROKES) {
            throw new UserFault("What to expect is counted in strokes; choose strokes as the counting, and a target in"
                    + " strokes.");
        }
        String key = "expect " + choice.key();
        return rounds.submit(key, key, watch -> advisers.expect().expect(request(choice), watch));
    }

    /** The wedge table from the fairway or the rough, in the reader's unit; course and target do not matter. */
    public Job<WedgeTable> wedges(PlanChoice choice, Surface lie, LengthUnit unit) {
        String key = "wedges " + playerKey(choice) + " " + lie + " " + unit;
        return tables.submit(
                key,
                key,
                watch -> advisers.wedges()
                        .table(playerFile(choice), lie, choice.day().day(), unit, choice.seed(), watch));
    }

    /** The short-game table; of the day the speed of the greens matters. */
    public Job<ShortGameTable> shortGame(PlanChoice choice) {
        String key = "short " + playerKey(choice);
        PlanDay day = new PlanDay(PlanDay.USUAL.conditions(), choice.day().day().greens());
        return tables.submit(
                key, key, watch -> advisers.shortGame().table(playerFile(choice), day, choice.seed(), watch));
    }

    private static String playerKey(PlanChoice choice) {
        return choice.player().id() + "." + choice.player().version() + " "
                + String.join("&", choice.day().inputs()) + " " + choice.seed();
    }

    private PlanRequest request(PlanChoice choice) {
        return choice.request(
                room.courseFile(choice.course().id(), choice.course().version()), playerFile(choice));
    }

    private Path playerFile(PlanChoice choice) {
        return room.playerFile(choice.player().id(), choice.player().version());
    }
}
