package loopwright.action;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * Port: what a player has done and agreed, beside his patterns. Erasing a player erases all of it. What a method has
 * returned from is on the disk, whole.
 */
public interface PlayerRecords {
    /** The player file, item to answer; {@link Intake} knows what it means. */
    Map<String, String> listIntake(String player);

    void setIntake(String player, Map<String, String> answers);

    /** Rounds in the order of their days, without their text. */
    List<KeptRound> listRounds(String player);

    /** Texts of all rounds of a player, by id: one reading for a whole report. */
    Map<String, String> listRoundTexts(String player);

    /** A round in the form of {@code docs/rounds.md}; a {@link UserFault} if there is none of this id. */
    String getRoundText(String player, String round);

    /** Keeps rounds, all or none; returns them with their ids. {@code texts} belong to {@code rounds} in order. */
    List<KeptRound> addRounds(String player, List<KeptRound> rounds, List<String> texts);

    /** Puts another text in the place of a round's. */
    void changeRound(String player, KeptRound round, String text);

    void eraseRound(String player, String round);

    /** Lessons in the order of their days. */
    List<KeptLesson> listLessons(String player);

    KeptLesson addLesson(String player, KeptLesson lesson);

    void changeLesson(String player, KeptLesson lesson);

    /** Days behind which old shots count little, each with its reason. */
    Map<LocalDate, String> listBreaks(String player);

    void setBreaks(String player, Map<LocalDate, String> breaks);

    /** Forecasts in the order of their days. */
    List<KeptForecast> listForecasts(String player);

    KeptForecast addForecast(String player, KeptForecast forecast);

    /** Drills played, in the order of their days. */
    List<KeptDrill> listDrills(String player);

    KeptDrill addDrill(String player, KeptDrill drill);
}
