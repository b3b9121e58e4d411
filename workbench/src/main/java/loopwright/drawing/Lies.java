package loopwright.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loopwright.course.AreaKind;

/**
 * How each kind of area looks: a ground, a texture, an edge. Every kind can be told from every other on a grey print
 * ({@code LiesTest} measures it).
 *
 * @param detail 1 on a chart of a hole; below 1 textures are drawn finer, as on a chart of the whole course
 */
public record Lies(double detail, Extent window) {
    private static final double CROWN_PEN = 0.45;

    public List<Mark> marks(AreaKind kind, List<Trace> rings) {
        return switch (kind) {
            case GREEN -> List.of(Mark.filled(Ink.GREEN, rings), Mark.drawn(Pen.of(Ink.GREEN_LINE, 0.9), rings));
            case FAIRWAY -> List.of(Mark.filled(Ink.FAIRWAY, rings), Mark.drawn(Pen.of(Ink.ROUGH_LINE, 0.5), rings));
            case TEE -> List.of(Mark.filled(Ink.FAIRWAY, rings), Mark.drawn(Pen.of(Ink.LINE, 0.7), rings));
            case BUNKER -> sand(rings, 2.6, Ink.SAND, 0.6);
            case WASTE_AREA -> sand(rings, 4.0, Ink.PAPER, 0.4);
            case WOODS -> woods(rings);
            case DEEP_ROUGH ->
                List.of(
                        Mark.filled(Ink.PAPER, rings),
                        Mark.drawn(
                                Pen.of(Ink.ROUGH_LINE, 0.4),
                                Texture.ruled(rings, Math.toRadians(-62), 3.2 * detail, window)));
            case ROUGH ->
                List.of(
                        Mark.filled(Ink.PAPER, rings),
                        Mark.drawn(Pen.of(Ink.ROUGH_LINE, 0.5).dashed(0.8, 2.4), rings));
            case YELLOW_PENALTY_AREA -> water(rings, false);
            case RED_PENALTY_AREA -> water(rings, true);
            case OUT_OF_BOUNDS -> outOfBounds(rings);
            case PATH -> List.of(Mark.filled(Ink.PAPER, rings), Mark.drawn(Pen.of(Ink.FAINT, 0.5), rings));
            case ROAD -> List.of(Mark.filled(Ink.ROAD, rings), Mark.drawn(Pen.of(Ink.SOFT, 0.6), rings));
            case BUILDING -> List.of(Mark.filled(Ink.BUILDING, rings), Mark.drawn(Pen.of(Ink.LINE, 0.7), rings));
            case PRACTICE -> List.of(Mark.drawn(Pen.of(Ink.FAINT, 0.6).dashed(4.0, 2.5), rings));
        };
    }

    private List<Mark> sand(List<Trace> rings, double pitch, Ink ground, double edge) {
        List<Trace> dots = Texture.scattered(rings, pitch * detail, 0.32, window).stream()
                .map(Trace::dot)
                .toList();
        return List.of(
                Mark.filled(ground, rings),
                Mark.drawn(Pen.of(Ink.SAND_DOT, 0.75 * Math.sqrt(detail)), dots),
                Mark.drawn(Pen.of(Ink.SAND_DOT, edge), rings));
    }

    private List<Mark> woods(List<Trace> rings) {
        List<Mark> out = new ArrayList<>();
        out.add(Mark.filled(Ink.CROWN_GROUND, rings));
        double pitch = 9.5 * detail;
        List<Point> centres = Texture.scattered(rings, pitch, 0.22, window);
        out.addAll(crowns(
                centres,
                centres.stream().map(p -> pitch * (0.36 + 0.12 * size(p))).toList()));
        return out;
    }

    /**
     * Tree crowns: a circle of paper, a fine outline, and a heavier arc on the shaded side (light from the north-west).
     * A later crown covers an earlier one; those that do not meet are one mark together.
     */
    public List<Mark> crowns(List<Point> centres, List<Double> radii) {
        List<Mark> out = new ArrayList<>();
        for (List<Integer> layer : crownLayers(centres, radii)) {
            List<Trace> outlines = new ArrayList<>();
            List<Trace> shades = new ArrayList<>();
            for (int i : layer) {
                Point c = centres.get(i);
                double r = radii.get(i);
                outlines.add(Trace.circle(c, r));
                shades.add(Trace.arc(c, r * 0.7, Math.toRadians(-15), Math.toRadians(105)));
            }
            out.add(new Mark.Shape(outlines, Ink.CROWN_GROUND, Pen.of(Ink.CROWN, CROWN_PEN)));
            out.add(Mark.drawn(Pen.of(Ink.CROWN, 0.8 * Math.sqrt(detail)), shades));
        }
        return out;
    }

    private record Cell(long column, long row) {}

    /** Indices of crowns, from the bottom layer up: a crown lies above all earlier ones that it meets. */
    private static List<List<Integer>> crownLayers(List<Point> centres, List<Double> radii) {
        double reach = 2 * radii.stream().mapToDouble(r -> r).max().orElse(0) + CROWN_PEN;
        Map<Cell, List<Integer>> near = new HashMap<>();
        int[] layerOf = new int[centres.size()];
        List<List<Integer>> layers = new ArrayList<>();
        for (int i = 0; i < layerOf.length; i++) {
            Point c = centres.get(i);
            long column = (long) Math.floor(c.x() / reach);
            long row = (long) Math.floor(c.y() / reach);
            for (int n = 0; n < 9; n++) {
                for (int j : near.getOrDefault(new Cell(column + n % 3 - 1, row + n / 3 - 1), List.of())) {
                    if (c.distanceTo(centres.get(j)) < radii.get(i) + radii.get(j) + CROWN_PEN) {
                        layerOf[i] = Math.max(layerOf[i], layerOf[j] + 1);
                    }
                }
            }
            near.computeIfAbsent(new Cell(column, row), cell -> new ArrayList<>())
                    .add(i);
            if (layerOf[i] == layers.size()) {
                layers.add(new ArrayList<>());
            }
            layers.get(layerOf[i]).add(i);
        }
        return layers;
    }

    private static double size(Point p) {
        return Texture.noise(Math.round(p.x() * 16), Math.round(p.y() * 16), 3);
    }

    /** Ruled water; its stakes stand along the edge: filled where red, hollow where yellow. */
    private List<Mark> water(List<Trace> rings, boolean red) {
        List<Mark> out = new ArrayList<>();
        out.add(Mark.filled(Ink.WATER, rings));
        out.add(Mark.drawn(Pen.of(Ink.WATER_LINE, 0.35), Texture.ruled(rings, 0, 2.6 * detail, window)));
        out.add(Mark.drawn(Pen.of(Ink.WATER_LINE, 0.9), rings));
        double radius = Math.max(0.9, 1.5 * detail);
        List<Trace> stakes = rings.stream()
                .flatMap(r -> Texture.stations(r, 26 * detail).stream())
                .filter(window::contains)
                .map(p -> Trace.circle(p, radius))
                .toList();
        out.add(new Mark.Shape(stakes, red ? Ink.WATER_LINE : Ink.PAPER, Pen.of(Ink.WATER_LINE, 0.6)));
        return out;
    }

    private List<Mark> outOfBounds(List<Trace> rings) {
        List<Mark> out = new ArrayList<>();
        out.add(Mark.filled(Ink.PAPER, rings));
        rings.forEach(r -> out.addAll(border(r, false)));
        return out;
    }

    /** The hatched border of out of bounds; the strokes stand on the side that is out. */
    public List<Mark> border(Trace ring, boolean outside) {
        List<Trace> strokes = Texture.fringe(ring, 3.4 * detail, 7 * detail, outside).stream()
                .filter(t -> window.contains(t.points().get(0)))
                .toList();
        return List.of(Mark.drawn(Pen.of(Ink.LINE, 1.0), ring), Mark.drawn(Pen.of(Ink.LINE, 0.45), strokes));
    }
}
