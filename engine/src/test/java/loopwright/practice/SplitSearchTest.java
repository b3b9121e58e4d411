package loopwright.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import loopwright.practice.TimeSplit.Cell;
import org.junit.jupiter.api.Test;

/** Splits of a week against trying every split there is, and what must hold of any of them. */
class SplitSearchTest {
    private static final List<Skill> SHORT_GAME = List.of(Skill.CHIP, Skill.PITCH, Skill.BUNKER_SHOT);

    @Test
    void equalsTryingEverySplit() {
        SplittableRandom random = new SplittableRandom(4);
        for (int trial = 0; trial < 60; trial++) {
            List<Skill> skills = List.of(
                    Skill.DRIVER_DIRECTION, Skill.PARTIAL_WEDGES, Skill.CHIP, Skill.START_LINE, Skill.DECISIONS);
            PracticeHours hours = new PracticeHours(
                    1 + random.nextInt(12),
                    5 + random.nextInt(3),
                    Map.of(
                            Facility.RANGE, 2 + random.nextInt(6),
                            Facility.SHORT_GAME_AREA, 1 + random.nextInt(7),
                            Facility.GREEN, 1 + random.nextInt(7),
                            Facility.COURSE, random.nextInt(3)),
                    random.nextBoolean() ? Map.of(Skill.CHIP, 1) : Map.of(),
                    1 + random.nextInt(6));
            LearningTable curves = curves(skills, random);
            SkillResponse response = response(skills, random);
            SplitSearch search = new SplitSearch(hours, curves, response);
            double best = search.value(search.best());
            double found = new EverySplit(search, hours, SplitSearch.cells(hours, curves)).best();
            double today = response.logOdds(SkillLevels.TODAY);
            // the issue asks for 1 % of what practice gains
            assertThat(best - today).as("trial %d", trial).isBetween(0.99 * (found - today), found - today + 1e-9);
        }
    }

    /** The slow, obvious way. */
    private record EverySplit(SplitSearch search, PracticeHours hours, List<Cell> cells) {
        double best() {
            return best(TimeSplit.NONE, 0, hours.blocks());
        }

        private double best(TimeSplit split, int cell, int left) {
            if (cell == cells.size()) {
                return isAllowed(split) ? search.value(split) : Double.NEGATIVE_INFINITY;
            }
            double best = Double.NEGATIVE_INFINITY;
            for (int b = 0; b <= left; b++) {
                best = Math.max(best, best(split.plus(cells.get(cell), b), cell + 1, left - b));
            }
            return best;
        }

        private boolean isAllowed(TimeSplit split) {
            return split.fullSwings() <= hours.mostFullSwings()
                    && hours.most().entrySet().stream().allMatch(e -> split.of(e.getKey()) <= e.getValue())
                    && hours.least().entrySet().stream().allMatch(e -> split.of(e.getKey()) >= e.getValue());
        }
    }

    @Test
    void sumsToTheHoursAndKeepsLimitsAndWishes() {
        SplittableRandom random = new SplittableRandom(5);
        List<Skill> all = List.of(Skill.values());
        PracticeHours hours = new PracticeHours(
                8,
                16,
                Map.of(Facility.RANGE, 6, Facility.SHORT_GAME_AREA, 16, Facility.GREEN, 16, Facility.COURSE, 4),
                Map.of(Skill.BUNKER_SHOT, 2),
                5);
        for (int trial = 0; trial < 20; trial++) {
            TimeSplit split = new SplitSearch(hours, curves(all, random), response(all, random)).best();
            assertThat(split.total()).isEqualTo(16);
            assertThat(split.of(Facility.RANGE)).isLessThanOrEqualTo(6);
            assertThat(split.of(Facility.COURSE)).isLessThanOrEqualTo(4);
            assertThat(split.fullSwings()).isLessThanOrEqualTo(5);
            assertThat(split.of(Skill.BUNKER_SHOT)).isGreaterThanOrEqualTo(2);
        }
    }

    @Test
    void leavesTimeOverWhereLimitsLeaveNoRoom() {
        SplittableRandom random = new SplittableRandom(6);
        List<Skill> all = List.of(Skill.values());
        PracticeHours hours = new PracticeHours(8, 16, Map.of(Facility.RANGE, 6), Map.of(Skill.CHIP, 4), 3);
        TimeSplit split = new SplitSearch(hours, curves(all, random), response(all, random)).best();
        // three blocks of full swings, and partial wedges and pitches, which load nobody
        assertThat(split.total()).isEqualTo(6);
        assertThat(split.fullSwings()).isLessThanOrEqualTo(3);
    }

    @Test
    void isTheSameUnderOtherNames() {
        SplittableRandom random = new SplittableRandom(7);
        PracticeHours hours = new PracticeHours(8, 9, Map.of(Facility.SHORT_GAME_AREA, 9), Map.of(), 0);
        for (int trial = 0; trial < 20; trial++) {
            List<LearningCurve> curves = new ArrayList<>();
            List<double[]> gains = new ArrayList<>();
            for (int i = 0; i < SHORT_GAME.size(); i++) {
                curves.add(curve(random));
                gains.add(gains(random));
            }
            TimeSplit plain = named(hours, SHORT_GAME, curves, gains);
            List<Skill> renamed = List.of(Skill.BUNKER_SHOT, Skill.CHIP, Skill.PITCH);
            TimeSplit other = named(hours, renamed, curves, gains);
            for (int i = 0; i < SHORT_GAME.size(); i++) {
                assertThat(other.of(renamed.get(i))).isEqualTo(plain.of(SHORT_GAME.get(i)));
            }
        }
    }

    private static TimeSplit named(
            PracticeHours hours, List<Skill> names, List<LearningCurve> curves, List<double[]> gains) {
        Map<Skill, LearningCurve> table = new EnumMap<>(Skill.class);
        SkillResponse response = SkillResponse.today(0);
        for (int i = 0; i < names.size(); i++) {
            table.put(names.get(i), curves.get(i));
            response = response.with(names.get(i), 0.9, gains.get(i)[0], 0.65, gains.get(i)[1]);
        }
        return new SplitSearch(hours, new LearningTable(table), response).best();
    }

    @Test
    void theRuleOfThumbIsHalfAQuarterAndAQuarter() {
        SplittableRandom random = new SplittableRandom(8);
        LearningTable curves = curves(List.of(Skill.values()), random);
        PracticeHours hours = new PracticeHours(
                8, 40, Map.of(Facility.RANGE, 40, Facility.SHORT_GAME_AREA, 40, Facility.GREEN, 40), Map.of(), 40);
        TimeSplit rule = CommonSplit.RULE_OF_ALL.of(hours, curves);
        assertThat(rule.total()).isEqualTo(40);
        assertThat(rule.of(Skill.DRIVER_DIRECTION) + rule.of(Skill.DRIVER_DISTANCE))
                .isEqualTo(10);
        assertThat(rule.of(Skill.FULL_WEDGES) + rule.of(Skill.PARTIAL_WEDGES)).isEqualTo(14);
        assertThat(rule.of(Facility.GREEN)).isEqualTo(3); // half of what is left of the half
        TimeSplit half = CommonSplit.RULE_OF_HALF.of(hours, curves);
        assertThat(half.of(Skill.FULL_WEDGES) + half.of(Skill.PARTIAL_WEDGES)).isBetween(6, 8); // 17.5 % of 40
        TimeSplit equal = CommonSplit.EQUAL.of(hours, curves);
        assertThat(equal.total()).isEqualTo(40);
        assertThat(equal.of(Skill.CHIP)).isBetween(2, 3); // 40 blocks for 14 skills: playing the plan has no place
    }

    @Test
    void aCurveApproachesItsFloorExponentially() {
        LearningCurve curve = new LearningCurve(0.6, 20);
        assertThat(curve.left(0)).isEqualTo(1);
        assertThat(curve.left(20)).isCloseTo(0.6 + 0.4 / Math.E, within(1e-15));
        assertThat(curve.left(1000)).isCloseTo(0.6, within(1e-15));
    }

    private static LearningTable curves(List<Skill> skills, SplittableRandom random) {
        Map<Skill, LearningCurve> out = new EnumMap<>(Skill.class);
        skills.forEach(s -> out.put(s, curve(random)));
        return new LearningTable(out);
    }

    private static LearningCurve curve(SplittableRandom random) {
        return new LearningCurve(0.4 + 0.5 * random.nextDouble(), 5 + 60 * random.nextDouble());
    }

    /** Gains of a step and of a long way, bent either way. */
    private static double[] gains(SplittableRandom random) {
        double step = 0.2 * random.nextDouble();
        return new double[] {step, 3.5 * step * (0.7 + 0.6 * random.nextDouble())};
    }

    private static SkillResponse response(List<Skill> skills, SplittableRandom random) {
        SkillResponse out = SkillResponse.today(-1);
        for (Skill skill : skills) {
            double[] gain = gains(random);
            out = out.with(skill, 0.9, gain[0], 0.65, gain[1]);
        }
        return out;
    }
}
