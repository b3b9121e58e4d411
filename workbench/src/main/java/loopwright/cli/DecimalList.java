package loopwright.cli;

import java.util.ArrayList;
import java.util.List;
import loopwright.action.UserFault;

/** Reads decimal numbers as a golfer writes them; anything else is one sentence naming the place. */
final class DecimalList {
    private DecimalList() {}

    /** Numbers with commas between: {@code 15.3,15.2,-0.4}. */
    static List<Double> parse(String option, String text) {
        List<Double> out = new ArrayList<>();
        String[] items = text.split(",", -1);
        for (int i = 0; i < items.length; i++) {
            String item = items[i].strip();
            if (!item.matches("-?\\d{1,3}(\\.\\d{1,3})?")) {
                throw new UserFault("Value " + (i + 1) + " of " + option + ", \"" + item
                        + "\", is not a number like 15.3 or -0.4; write numbers with a point and commas between them.");
            }
            out.add(Double.valueOf(item));
        }
        return out;
    }

    /** Whole numbers with commas between; an empty text is an empty list. */
    static List<Integer> parseWhole(String option, String text) {
        List<Integer> out = new ArrayList<>();
        if (text.isBlank()) {
            return out;
        }
        String[] items = text.split(",", -1);
        for (int i = 0; i < items.length; i++) {
            String item = items[i].strip();
            if (!item.matches("\\d{1,3}")) {
                throw new UserFault("Value " + (i + 1) + " of " + option + ", \"" + item
                        + "\", is not a whole number; write whole numbers with commas between them.");
            }
            out.add(Integer.valueOf(item));
        }
        return out;
    }

    /** One number. */
    static double parseOne(String option, String text) {
        List<Double> values = parse(option, text);
        if (values.size() != 1) {
            throw new UserFault(option + " takes one number, not " + values.size() + ".");
        }
        return values.get(0);
    }

    /** A handicap index: "+1.5" is a plus handicap and means 1.5 below zero, as it is written in the game. */
    static double parseIndex(String option, String text) {
        String trimmed = text.strip();
        return trimmed.startsWith("+") ? -parseOne(option, trimmed.substring(1)) : parseOne(option, trimmed);
    }

    /** A whole handicap: "+2" is a plus handicap and means two strokes given back. */
    static int parseHandicap(String option, String text) {
        double handicap = parseIndex(option, text);
        if (handicap != Math.rint(handicap)) {
            throw new UserFault(option + " takes a whole number, not \"" + text + "\".");
        }
        return (int) handicap;
    }

    /** The same written: "18", "+2". */
    static String handicap(int whole) {
        return whole < 0 ? "+" + -whole : Integer.toString(whole);
    }
}
