package loopwright.strategy;

/** One option per state of a {@link NodeSet}. */
final class NodePolicy {
    private final Option[] options;

    NodePolicy(int states) {
        options = new Option[states];
    }

    private NodePolicy(Option[] options) {
        this.options = options;
    }

    NodePolicy copy() {
        return new NodePolicy(options.clone());
    }

    void set(int state, Option option) {
        options[state] = option;
    }

    Option option(int state) {
        return options[state];
    }
}
