package loopwright.player;

/**
 * A club of the bag.
 *
 * @param name the trade's word: "driver", "3-wood", "5-hybrid", "7-iron", "pitching wedge", "56-wedge", "putter"
 */
public record Club(String name, Family family) {

    /** Families share their mishit rates. */
    public enum Family {
        DRIVER,
        WOOD,
        HYBRID,
        IRON,
        WEDGE,
        PUTTER
    }

    public Club {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a club needs a name");
        }
    }
}
