package loopwright.strategy;

import java.util.ArrayList;
import java.util.List;

/** The best few options of one state, cheapest first, at most two with the same shot. */
final class Shortlist {
    private static final int LENGTH = 6;
    private static final int SAME_SHOT = 2;

    private final List<Option> options = new ArrayList<>(LENGTH + 1);
    private final List<Double> values = new ArrayList<>(LENGTH + 1);

    void offer(Option option, double value) {
        boolean tooDear = options.size() == LENGTH && !(value < values.get(LENGTH - 1));
        if (tooDear || options.contains(option)) {
            return;
        }
        int at = options.size();
        while (at > 0 && value < values.get(at - 1)) {
            at--;
        }
        options.add(at, option);
        values.add(at, value);
        dropWorstTwin(option.shot());
        if (options.size() > LENGTH) {
            options.remove(LENGTH);
            values.remove(LENGTH);
        }
    }

    private void dropWorstTwin(int shot) {
        int seen = 0;
        for (int i = 0; i < options.size(); i++) {
            if (options.get(i).shot() == shot && ++seen > SAME_SHOT) {
                options.remove(i);
                values.remove(i);
                return;
            }
        }
    }

    /** Those that cost at most this much more than the cheapest. */
    List<Option> within(double margin) {
        int n = 0;
        while (n < values.size() && values.get(n) <= values.get(0) + margin) {
            n++;
        }
        return List.copyOf(options.subList(0, n));
    }

    List<Option> options() {
        return List.copyOf(options);
    }
}
