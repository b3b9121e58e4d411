package loopwright.ground;

/** What a ball can lie on. The order is not a ranking; layers are decided by {@code course.AreaKind}. */
public enum Surface {
    TEE,
    FAIRWAY,
    GREEN,
    ROUGH,
    DEEP_ROUGH,
    BUNKER,
    WASTE_AREA,
    WOODS,
    PATH,
    YELLOW_PENALTY_AREA,
    RED_PENALTY_AREA,
    OUT_OF_BOUNDS;

    public boolean isPenaltyArea() {
        return this == YELLOW_PENALTY_AREA || this == RED_PENALTY_AREA;
    }

    /** True where the ball is played as it lies (penalty areas are always left by relief in this model). */
    public boolean isPlayable() {
        return !isPenaltyArea() && this != OUT_OF_BOUNDS;
    }
}
