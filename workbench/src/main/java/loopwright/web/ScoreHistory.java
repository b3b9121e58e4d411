package loopwright.web;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import loopwright.action.KeptForecast;
import loopwright.action.KeptRound;

/** Scores over 18 holes by day, with the score to reach and the bands of the forecasts; the table of rounds holds the same. */
final class ScoreHistory {
    private static final double REACH = 1.645;
    private static final int WIDTH = 640;
    private static final int HEIGHT = 220;
    private static final int LEFT = 44;
    private static final int FOOT = 26;
    private static final int TOP = 12;
    private static final int ROUND_HOLES = 18;

    private final List<KeptRound> rounds;
    private final List<KeptForecast> forecasts;
    private final OptionalInt goal;

    ScoreHistory(List<KeptRound> rounds, List<KeptForecast> forecasts, OptionalInt goal) {
        this.rounds = rounds.stream()
                .filter(r ->
                        r.holes() == ROUND_HOLES && !r.lesson() && r.score().isPresent())
                .toList();
        this.forecasts =
                forecasts.stream().filter(f -> f.holes() == ROUND_HOLES).toList();
        this.goal = goal;
    }

    boolean isEmpty() {
        return rounds.isEmpty() && forecasts.isEmpty();
    }

    String svg() {
        List<LocalDate> days = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        rounds.forEach(r -> {
            days.add(r.day());
            values.add((double) r.score().getAsInt());
        });
        forecasts.forEach(f -> {
            days.add(f.day());
            values.add(f.mean() - REACH * f.sd());
            values.add(f.mean() + REACH * f.sd());
        });
        goal.ifPresent(g -> values.add((double) g));
        LocalDate first = days.stream().min(LocalDate::compareTo).orElseThrow();
        long span = Math.max(
                1,
                ChronoUnit.DAYS.between(
                        first, days.stream().max(LocalDate::compareTo).orElseThrow()));
        double low = Math.floor(values.stream().mapToDouble(v -> v).min().orElseThrow() - 1);
        double high = Math.ceil(values.stream().mapToDouble(v -> v).max().orElseThrow() + 1);
        Sheet sheet = new Sheet(first, span, low, high);
        StringBuilder out = new StringBuilder("<svg class=\"history\" viewBox=\"0 0 " + WIDTH + " " + HEIGHT
                + "\" role=\"img\" aria-label=\"" + HoleSvg.escaped(Texts.say("history.picture")) + "\">");
        double step = high - low > 24 ? 10 : 5;
        for (double v = Math.ceil(low / step) * step; v <= high; v += step) {
            out.append(String.format(
                    Locale.ROOT,
                    "<path class=\"rule\" d=\"M%d %.1fH%d\"/><text x=\"%d\" y=\"%.1f\">%.0f</text>",
                    LEFT,
                    sheet.y(v),
                    WIDTH - 8,
                    LEFT - 8,
                    sheet.y(v) + 4,
                    v));
        }
        goal.ifPresent(g -> out.append(String.format(
                Locale.ROOT,
                "<path class=\"limit\" d=\"M%d %.1fH%d\"/><text class=\"limit\" x=\"%d\" y=\"%.1f\">%s</text>",
                LEFT,
                sheet.y(g),
                WIDTH - 8,
                WIDTH - 10,
                sheet.y(g) - 4,
                HoleSvg.escaped(Texts.say("history.goal", g)))));
        forecasts.forEach(f -> out.append(String.format(
                Locale.ROOT,
                "<path class=\"band\" d=\"M%.1f %.1fV%.1fM%.1f %.1fh10M%.1f %.1fh10M%.1f %.1fh10\"/>",
                sheet.x(f.day()),
                sheet.y(f.mean() - REACH * f.sd()),
                sheet.y(f.mean() + REACH * f.sd()),
                sheet.x(f.day()) - 5,
                sheet.y(f.mean() - REACH * f.sd()),
                sheet.x(f.day()) - 5,
                sheet.y(f.mean()),
                sheet.x(f.day()) - 5,
                sheet.y(f.mean() + REACH * f.sd()))));
        rounds.forEach(r -> out.append(String.format(
                Locale.ROOT,
                "<circle class=\"score\" cx=\"%.1f\" cy=\"%.1f\" r=\"4\"/>",
                sheet.x(r.day()),
                sheet.y(r.score().getAsInt()))));
        return out.append(String.format(
                        Locale.ROOT,
                        "<text class=\"day\" x=\"%d\" y=\"%d\">%s</text><text x=\"%d\" y=\"%d\">%s</text></svg>",
                        LEFT,
                        HEIGHT - 8,
                        first,
                        WIDTH - 8,
                        HEIGHT - 8,
                        first.plusDays(span)))
                .toString();
    }

    private record Sheet(LocalDate first, long span, double low, double high) {
        double x(LocalDate day) {
            return LEFT + 12 + (WIDTH - LEFT - 40.0) * ChronoUnit.DAYS.between(first, day) / span;
        }

        /** Lower scores lie lower. */
        double y(double score) {
            return TOP + (HEIGHT - TOP - FOOT) * (high - score) / (high - low);
        }
    }
}
