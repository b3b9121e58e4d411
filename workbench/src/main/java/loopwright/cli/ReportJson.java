package loopwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import loopwright.action.PlayerReport;
import loopwright.action.Standing;
import loopwright.scoring.ClubMiss;
import loopwright.scoring.Gain;
import loopwright.scoring.OrdinaryMiss;
import loopwright.scoring.RoundReview;
import loopwright.scoring.ScoreGap;
import loopwright.scoring.ShotAttribution;

/** A report as the JSON of {@code docs/schema/report.schema.json}. */
final class ReportJson {
    private ReportJson() {}

    static Map<String, Object> of(PlayerReport r) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("player", r.name());
        out.put("target", r.target());
        out.put("rounds", r.rounds());
        out.put("round", r.latest().id());
        out.put("day", r.latest().day().toString());
        out.put("tour", review(r.tour()));
        r.benchmark().ifPresent(b -> out.put("benchmark", review(b)));
        r.past().ifPresent(p -> out.put("past", review(p)));
        out.put("causes", r.causes().stream().map(ReportJson::cause).toList());
        out.put("ordinary", r.ordinary().stream().map(ReportJson::ordinary).toList());
        r.gap().ifPresent(g -> out.put("gap", gap(g)));
        out.put("misses", r.misses().stream().map(ReportJson::miss).toList());
        out.put("standing", standing(r.standing()));
        return out;
    }

    private static Map<String, Object> review(RoundReview review) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("baseline", review.baseline());
        out.put("start", review.start());
        out.put("end", review.end());
        out.put("strokes", review.strokes());
        out.put("total", review.total());
        out.put("rows", review.rows().stream().map(ReportJson::row).toList());
        return out;
    }

    private static Map<String, Object> row(Gain gain) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("part", gain.band().part().name());
        out.put("fromMetres", gain.band().from().metres());
        if (!gain.band().isOpen()) {
            out.put("belowMetres", gain.band().below().metres());
        }
        out.put("strokes", gain.strokes());
        out.put("gained", gain.gained());
        return out;
    }

    private static Map<String, Object> cause(ShotAttribution s) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("hole", s.hole());
        out.put("stroke", s.shot());
        out.put("club", s.club());
        out.put("knowledge", s.knowledge().name());
        out.put("decision", s.decision());
        out.put("execution", s.execution());
        out.put("luck", s.luck());
        out.put("doubt", s.doubt());
        s.fartherMisses().ifPresent(f -> out.put("fartherMisses", f));
        return out;
    }

    private static Map<String, Object> ordinary(OrdinaryMiss m) {
        return Map.of(
                "hole", m.hole(),
                "stroke", m.shot(),
                "club", m.club(),
                "fromMetres", m.from().metres(),
                "leftMetres", m.left().metres(),
                "farther", m.farther());
    }

    private static Map<String, Object> gap(ScoreGap gap) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("rounds", gap.rounds());
        out.put("separated", gap.separated());
        out.put("roundsNeeded", gap.roundsNeeded());
        out.put("tied", gap.tied().stream().map(Enum::name).toList());
        out.put(
                "rows",
                gap.rows().stream()
                        .map(row -> Map.of(
                                "obstacle", row.obstacle().name(),
                                "cost", row.cost(),
                                "low", row.low(),
                                "high", row.high(),
                                "rounds", row.rounds()))
                        .toList());
        return out;
    }

    private static Map<String, Object> miss(ClubMiss m) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("club", m.club());
        out.put("noted", m.noted());
        out.put("biasDegrees", Math.toDegrees(m.bias()));
        out.put("biasErrorDegrees", Math.toDegrees(m.biasError()));
        out.put("spread", m.spread());
        out.put("approaches", List.of(m.approaches(), m.onGreen(), m.left(), m.right(), m.shortOf(), m.longOf()));
        return out;
    }

    static Map<String, Object> standing(Standing s) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("outcomes", s.outcomes().size());
        out.put("gap", s.gap());
        out.put("error", s.error());
        out.put("calibrated", s.calibrated());
        if (!s.foretold().isEmpty()) {
            out.put("brier", s.brier());
        }
        out.put(
                "chances",
                s.chances().stream()
                        .map(c -> Map.of(
                                "low",
                                c.low(),
                                "high",
                                c.high(),
                                "forecasts",
                                c.forecasts(),
                                "meant",
                                c.meant(),
                                "beaten",
                                c.beaten()))
                        .toList());
        return out;
    }
}
