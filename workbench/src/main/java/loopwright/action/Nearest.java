package loopwright.action;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;

/** The known word that a mistyped one most likely meant. */
final class Nearest {
    private Nearest() {}

    /** Fewest letters changed, added or left out; {@code known} is not empty. */
    static String to(String typed, Collection<String> known) {
        String word = typed.strip().toLowerCase(Locale.ROOT);
        return known.stream()
                .min(Comparator.comparingInt(k -> edits(word, k.toLowerCase(Locale.ROOT))))
                .orElseThrow(() -> new IllegalArgumentException("nothing is known"));
    }

    private static int edits(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
