package loopwright.flight;

/**
 * A ball as a body. The standard one has the greatest mass and least diameter the Equipment Rules allow (Part 4: 45.93
 * g, 42.67 mm), as balls in play do to within a percent.
 */
public record GolfBall(double massKg, double diameterMetres) {
    public static final GolfBall STANDARD = new GolfBall(0.04593, 0.04267);

    public GolfBall {
        if (!(massKg > 0.01 && massKg < 0.1) || !(diameterMetres > 0.02 && diameterMetres < 0.1)) {
            throw new IllegalArgumentException("a golf ball weighs 10 to 100 g and measures 20 to 100 mm");
        }
    }

    public double radiusMetres() {
        return diameterMetres / 2;
    }

    public double areaSquareMetres() {
        return Math.PI * diameterMetres * diameterMetres / 4;
    }
}
