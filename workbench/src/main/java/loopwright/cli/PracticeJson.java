package loopwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loopwright.action.PracticePlan;
import loopwright.action.PracticeProgress;
import loopwright.action.PracticeReasons;
import loopwright.action.PracticeWords;
import loopwright.practice.PracticeHours;
import loopwright.practice.RoundOdds;
import loopwright.practice.Skill;
import loopwright.practice.SkillGain;
import loopwright.practice.TimeSplit;

/** A practice plan as the JSON of {@code docs/schema/practice-plan.schema.json}. */
final class PracticeJson {
    private PracticeJson() {}

    static Map<String, Object> of(PracticePlan p) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("player", p.player().name());
        out.put("course", p.course());
        out.put("tees", p.tees());
        out.put("target", p.target());
        out.put("weeks", p.hours().weeks());
        out.put("minutesAWeek", p.hours().blocks() * PracticeHours.MINUTES);
        out.put("byHabit", odds(p.byHabit()));
        out.put("byPlan", odds(p.byPlan()));
        out.put("canBeSaid", p.canBeSaid());
        out.put("reasons", new PracticeReasons(p).first());
        out.put("trust", new PracticeReasons(p).trust());
        out.put("skills", p.gradient().gains().stream().map(g -> skill(p, g)).toList());
        out.put("split", split(p.split()));
        out.put("after", odds(p.after()));
        out.put("beside", p.beside().stream().map(PracticeJson::beside).toList());
        p.progress()
                .ifPresent(done -> out.put(
                        "progress",
                        done.lines().stream().map(PracticeJson::progress).toList()));
        return out;
    }

    private static Map<String, Object> progress(PracticeProgress.Line l) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("skill", PracticeWords.typed(l.skill()));
        out.put("hours", l.hours());
        out.put("playings", l.playings());
        out.put("left", l.left());
        out.put("low", l.low());
        out.put("high", l.high());
        return out;
    }

    private static Map<String, Object> skill(PracticePlan p, SkillGain g) {
        Skill skill = g.skill();
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("skill", PracticeWords.typed(skill));
        out.put("strokes", -g.strokes());
        out.put("chance", g.chance());
        out.put("chanceLow", g.chanceLow());
        out.put("chanceHigh", g.chanceHigh());
        out.put("measured", p.isMeasured(skill));
        out.put("floor", p.curves().get(skill).floor());
        out.put("hoursToLearn", p.curves().get(skill).hours());
        out.put("setByCoach", p.setByCoach().contains(skill));
        out.put("minutesAWeek", p.split().of(skill) * PracticeHours.MINUTES);
        out.put("minutesLow", p.doubt().usual(skill).low() * PracticeHours.MINUTES);
        out.put("minutesHigh", p.doubt().usual(skill).high() * PracticeHours.MINUTES);
        return out;
    }

    private static List<Map<String, Object>> split(TimeSplit split) {
        return split.blocks().entrySet().stream()
                .map(e -> {
                    Map<String, Object> out = new LinkedHashMap<>();
                    out.put("skill", PracticeWords.typed(e.getKey().skill()));
                    out.put("facility", PracticeWords.typed(e.getKey().facility()));
                    out.put("minutesAWeek", e.getValue() * PracticeHours.MINUTES);
                    return out;
                })
                .toList();
    }

    private static Map<String, Object> beside(PracticePlan.Beside b) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("kind", PracticeWords.typed(b.kind()));
        out.put("split", split(b.split()));
        out.put("after", odds(b.after()));
        out.put("lead", b.lead());
        out.put("notBetter", b.behind());
        return out;
    }

    private static Map<String, Object> odds(RoundOdds odds) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("expected", odds.expected());
        out.put("chance", odds.chance());
        return out;
    }
}
