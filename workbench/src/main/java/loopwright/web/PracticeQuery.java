package loopwright.web;

import io.javalin.http.Context;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import loopwright.action.Intake;
import loopwright.action.PlanChoice;
import loopwright.action.PracticeChoice;
import loopwright.action.PracticeWords;
import loopwright.action.UserFault;
import loopwright.action.Workroom;
import loopwright.player.Player;
import loopwright.practice.Facility;
import loopwright.practice.LearningCurve;
import loopwright.practice.LearningTable;
import loopwright.practice.Skill;

/** Reads from an address what a practice plan is to be made from; what it leaves out is usual, or stands in the player's file. */
final class PracticeQuery {
    private static final double USUAL_HOURS = 4;
    /** Without a limit of its own a place is open all the hours there are; the course is dear, home is not meant. */
    private static final double COURSE_HOURS = 1;

    private static final double FULL_SWINGS = 3;

    private PracticeQuery() {}

    /** Empty where there is no player or no course yet. */
    static Optional<PracticeChoice> find(Context ctx, Workroom room) {
        return PlanQuery.find(ctx, room.store()).map(round -> {
            Intake intake =
                    new Intake(room.store().records().listIntake(round.player().id()));
            Player player =
                    room.player(round.player().id(), round.player().version()).player();
            return new PracticeChoice(
                    ctx.queryParam("target") == null ? forGoal(round, intake) : round,
                    time(ctx, intake),
                    musts(ctx),
                    rates(ctx, LearningTable.assumed(player)),
                    PlanQuery.text(ctx, "follows", "").equals("yes"));
        });
    }

    private static PlanChoice forGoal(PlanChoice round, Intake intake) {
        PlanChoice.Goal goal = round.goal();
        return intake.goalScore().isEmpty()
                ? round
                : round.withGoal(new PlanChoice.Goal(
                        intake.goalScore().getAsInt(), goal.counting(), goal.forTarget(), goal.howSure()));
    }

    private static PracticeChoice.Time time(Context ctx, Intake intake) {
        double hours = number(ctx, "hours", intake.hoursAWeek().orElse(USUAL_HOURS));
        Map<Facility, Double> places = new EnumMap<>(Facility.class);
        for (Facility place : Facility.values()) {
            double usual = switch (place) {
                case COURSE -> Math.min(hours, COURSE_HOURS);
                case HOME -> 0;
                default -> hours;
            };
            places.put(place, number(ctx, "at-" + PracticeWords.typed(place), usual));
        }
        return new PracticeChoice.Time(
                hours,
                PlanQuery.whole("weeks", PlanQuery.text(ctx, "weeks", "8")),
                PlanQuery.whole("sessions", PlanQuery.text(ctx, "sessions", "3")),
                number(ctx, "swings", FULL_SWINGS),
                places);
    }

    private static Map<Skill, Double> musts(Context ctx) {
        Map<Skill, Double> out = new EnumMap<>(Skill.class);
        for (Skill skill : Skill.values()) {
            double hours = number(ctx, "must-" + PracticeWords.typed(skill), 0);
            if (hours != 0) {
                out.put(skill, hours);
            }
        }
        return out;
    }

    /** Of a curve of which only one number was typed the other stays as assumed. */
    private static Map<Skill, LearningCurve> rates(Context ctx, LearningTable assumed) {
        Map<Skill, LearningCurve> out = new EnumMap<>(Skill.class);
        assumed.curves().forEach((skill, curve) -> {
            double hours = number(ctx, "tau-" + PracticeWords.typed(skill), curve.hours());
            double floor = number(ctx, "floor-" + PracticeWords.typed(skill), curve.floor());
            if (hours != curve.hours() || floor != curve.floor()) {
                if (!(hours > 0 && floor >= 0 && floor <= 1)) {
                    throw new UserFault(Texts.say("practice.noCurve", PracticeWords.of(skill)));
                }
                out.put(skill, new LearningCurve(floor, hours));
            }
        });
        return out;
    }

    private static double number(Context ctx, String name, double usual) {
        return PlanQuery.text(ctx, name, "").isEmpty() ? usual : PlanQuery.decimal(ctx, name);
    }
}
