package loopwright.action;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import loopwright.numerics.Watch;
import loopwright.player.Player;
import loopwright.player.PlayerProfile;
import loopwright.player.SkillDoubt;
import loopwright.practice.CommonSplit;
import loopwright.practice.LearningCurve;
import loopwright.practice.LearningTable;
import loopwright.practice.PracticeHours;
import loopwright.practice.PracticeRound;
import loopwright.practice.PracticeWeek;
import loopwright.practice.PracticeWorld;
import loopwright.practice.RoundOdds;
import loopwright.practice.Skill;
import loopwright.practice.SkillGradient;
import loopwright.practice.SkillLevels;
import loopwright.practice.SkillResponse;
import loopwright.practice.SplitDoubt;
import loopwright.practice.SplitSearch;
import loopwright.practice.TimeSplit;

/** Splits hours of practice by what raises the chance of the target most, and says how far that can be trusted. */
public final class PlanPractice {
    /** Players he may be as well; a standard deviation from eight is good to a quarter. */
    private static final int DRAWS = 8;
    /** Worlds to judge splits under, and of these the ones in which the best split is sought again. */
    private static final int WORLDS = 400;

    private static final int SEARCHED = 60;

    private final CourseFiles courses;
    private final PlayerFiles players;

    public PlanPractice(CourseFiles courses, PlayerFiles players) {
        this.courses = courses;
        this.players = players;
    }

    public PracticePlan plan(PracticeRequest request, Watch watch) {
        PlanRequest asked = request.round();
        PlayerProfile file = players.read(asked.player());
        PlayerProfile profile = request.progress().map(p -> p.of(file)).orElse(file);
        RoundSetup setup = RoundSetup.of(
                courses.read(asked.course()).course(),
                profile,
                asked,
                asked.days().get(0));
        asked.counting().checkTarget(asked.target(), setup.holes().size());
        int limit = asked.counting().limit(asked.target());
        PracticeRound round = new PracticeRounds(setup)
                .solve(limit, new PartWatch(watch, 0, 60))
                .withHabitShare(
                        request.progress().map(PracticeProgress::habitShare).orElse(1.0));
        LearningTable curves = curves(request, round);
        Map<Skill, List<RoundOdds>> levels = levels(round, curves, new PartWatch(watch, 60, 80));
        SkillGradient gradient =
                SkillGradient.of(steps(levels), draws(round, asked.seed(), new PartWatch(watch, 80, 95)));
        PracticePlan plan = plan(request, setup, round, curves, levels, gradient, watch);
        watch.at(100, 100);
        return plan;
    }

    /** What is assumed of learning, and what the coach has set instead. */
    private static LearningTable curves(PracticeRequest request, PracticeRound round) {
        LearningTable assumed = LearningTable.assumed(round.today());
        LearningTable curves = request.progress().map(p -> p.curves(assumed)).orElse(assumed);
        for (Map.Entry<Skill, LearningCurve> set : request.curves().entrySet()) {
            if (curves.curves().containsKey(set.getKey())) {
                LearningCurve curve = request.progress()
                        .map(p -> p.beside(set.getKey(), set.getValue()))
                        .orElse(set.getValue());
                curves = curves.with(set.getKey(), curve);
            }
        }
        return curves;
    }

    /** The change that a step and a long way make, for each skill that applies. */
    private static Map<Skill, List<RoundOdds>> levels(PracticeRound round, LearningTable curves, Watch watch) {
        List<Skill> skills = List.copyOf(curves.curves().keySet());
        List<List<RoundOdds>> found = Cores.all(
                skills,
                s -> SkillResponse.levels(s, curves.get(s).floor()).stream()
                        .map(left -> SkillGradient.change(round, s, left, watch.withoutProgress()))
                        .toList(),
                watch);
        Map<Skill, List<RoundOdds>> out = new EnumMap<>(Skill.class);
        for (int i = 0; i < skills.size(); i++) {
            out.put(skills.get(i), found.get(i));
        }
        return out;
    }

    private static Map<Skill, RoundOdds> steps(Map<Skill, List<RoundOdds>> levels) {
        Map<Skill, RoundOdds> out = new EnumMap<>(Skill.class);
        levels.forEach((skill, changes) -> out.put(skill, changes.get(0)));
        return out;
    }

    private static List<Map<Skill, RoundOdds>> draws(PracticeRound round, long seed, Watch watch) {
        SkillDoubt doubt = new SkillDoubt(round.today());
        SplittableRandom random = new SplittableRandom(seed);
        List<Player> drawn = new ArrayList<>();
        for (int i = 0; i < DRAWS; i++) {
            drawn.add(doubt.draw(random, i % 2 == 0 ? 1 : -1));
        }
        return Cores.all(
                drawn,
                player -> {
                    PracticeRound his = round.of(player, watch.withoutProgress());
                    Map<Skill, RoundOdds> steps = new EnumMap<>(Skill.class);
                    LearningTable.assumed(round.today())
                            .curves()
                            .keySet()
                            .forEach(s ->
                                    steps.put(s, SkillGradient.change(his, s, Skill.STEP, watch.withoutProgress())));
                    return steps;
                },
                watch);
    }

    private static PracticePlan plan(
            PracticeRequest request,
            RoundSetup setup,
            PracticeRound round,
            LearningTable curves,
            Map<Skill, List<RoundOdds>> levels,
            SkillGradient gradient,
            Watch watch) {
        PracticeHours hours = request.hours();
        SkillResponse response = SkillResponse.of(round, curves, levels);
        TimeSplit split = new SplitSearch(hours, curves, response).best();
        List<PracticeWorld> worlds = PracticeWorld.drawn(
                response,
                curves,
                gradient,
                WORLDS,
                new SplittableRandom(setup.round().seed()));
        return new PracticePlan(
                setup.course().name(),
                setup.tees().name(),
                request.round().counting().words(request.round().target()),
                round.today(),
                hours,
                round.at(SkillLevels.TODAY, watch),
                round.at(SkillLevels.PLAN, watch),
                gradient,
                curves,
                request.curves().keySet(),
                split,
                round.at(split.after(hours, curves), watch),
                Cores.all(
                        List.of(CommonSplit.values()),
                        k -> beside(k, split, round, hours, curves, worlds, watch.withoutProgress()),
                        watch.withoutProgress()),
                SplitDoubt.of(split, hours, curves, response, gradient, worlds.subList(0, SEARCHED)),
                PracticeWeek.of(split, request.sessions(), request.drills(), round.today()),
                brings(split, hours, curves, response),
                request.progress());
    }

    /** What every skill's hours bring, the others being practised as well. */
    private static Map<Skill, Double> brings(
            TimeSplit split, PracticeHours hours, LearningTable curves, SkillResponse response) {
        SkillLevels after = split.after(hours, curves);
        double all = response.logOdds(after);
        Map<Skill, Double> out = new EnumMap<>(Skill.class);
        for (Skill skill : curves.curves().keySet()) {
            double without = all - response.gain(skill, after.of(skill));
            out.put(skill, RoundOdds.chance(all) - RoundOdds.chance(without));
        }
        return out;
    }

    private static PracticePlan.Beside beside(
            CommonSplit kind,
            TimeSplit split,
            PracticeRound round,
            PracticeHours hours,
            LearningTable curves,
            List<PracticeWorld> worlds,
            Watch watch) {
        TimeSplit other = kind.of(hours, curves);
        double[] lead = worlds.stream()
                .mapToDouble(w -> w.chance(split, hours) - w.chance(other, hours))
                .toArray();
        double mean = 0;
        int behind = 0;
        for (double l : lead) {
            mean += l / lead.length;
            behind += l <= 0 ? 1 : 0;
        }
        return new PracticePlan.Beside(
                kind, other, round.at(other.after(hours, curves), watch), mean, behind / (double) lead.length);
    }
}
