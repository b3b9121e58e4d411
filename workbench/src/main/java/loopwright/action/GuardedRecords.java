package loopwright.action;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/** What players have done, for a visitor who sees some of them; rounds he may add, all else is kept by coaches. */
final class GuardedRecords implements PlayerRecords {
    private final PlayerRecords records;
    private final UnaryOperator<String> own;
    private final Runnable requireCoach;

    /** {@code own} passes the id of a player who may be seen, and refuses others. */
    GuardedRecords(PlayerRecords records, UnaryOperator<String> own, Runnable requireCoach) {
        this.records = records;
        this.own = own;
        this.requireCoach = requireCoach;
    }

    private String coached(String player) {
        requireCoach.run();
        return own.apply(player);
    }

    @Override
    public Map<String, String> listIntake(String player) {
        return records.listIntake(own.apply(player));
    }

    @Override
    public void setIntake(String player, Map<String, String> answers) {
        records.setIntake(coached(player), answers);
    }

    @Override
    public List<KeptRound> listRounds(String player) {
        return records.listRounds(own.apply(player));
    }

    @Override
    public Map<String, String> listRoundTexts(String player) {
        return records.listRoundTexts(own.apply(player));
    }

    @Override
    public String getRoundText(String player, String round) {
        return records.getRoundText(own.apply(player), round);
    }

    @Override
    public List<KeptRound> addRounds(String player, List<KeptRound> rounds, List<String> texts) {
        return records.addRounds(own.apply(player), rounds, texts);
    }

    @Override
    public void changeRound(String player, KeptRound round, String text) {
        records.changeRound(own.apply(player), round, text);
    }

    @Override
    public void eraseRound(String player, String round) {
        records.eraseRound(coached(player), round);
    }

    @Override
    public List<KeptLesson> listLessons(String player) {
        return records.listLessons(own.apply(player));
    }

    @Override
    public KeptLesson addLesson(String player, KeptLesson lesson) {
        return records.addLesson(coached(player), lesson);
    }

    @Override
    public void changeLesson(String player, KeptLesson lesson) {
        records.changeLesson(coached(player), lesson);
    }

    @Override
    public Map<LocalDate, String> listBreaks(String player) {
        return records.listBreaks(own.apply(player));
    }

    @Override
    public void setBreaks(String player, Map<LocalDate, String> breaks) {
        records.setBreaks(coached(player), breaks);
    }

    @Override
    public List<KeptForecast> listForecasts(String player) {
        return records.listForecasts(own.apply(player));
    }

    @Override
    public KeptForecast addForecast(String player, KeptForecast forecast) {
        return records.addForecast(coached(player), forecast);
    }

    @Override
    public List<KeptDrill> listDrills(String player) {
        return records.listDrills(own.apply(player));
    }

    @Override
    public KeptDrill addDrill(String player, KeptDrill drill) {
        return records.addDrill(own.apply(player), drill);
    }
}
