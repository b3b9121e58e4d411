package loopwright.ground;

/** How the ball lies on its surface: drawn on arrival, seen before the next choice. */
public enum Situation {
    ORDINARY,
    SITTING_UP,
    DOWN,
    PLUGGED,
    CLEAR,
    WINDOW,
    SIDEWAYS_ONLY
}
