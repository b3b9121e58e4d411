package loopwright.strategy;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import loopwright.course.BunkerFace;
import loopwright.course.TreeCover;
import loopwright.numerics.SpreadSequence;
import loopwright.player.FlightShape;
import org.jspecify.annotations.Nullable;

/**
 * What a flight meets on its way from one place, seen as a fan of sectors: for each direction the stretches under trees,
 * found on first use by stepping from tree to tree, and the face of the bunker that the ball lies in.
 */
final class TreeFan {
    static final int SECTORS = 240;
    static final double SECTORS_PER_RADIAN = SECTORS / (2 * Math.PI);

    private static final float REACH_CELLS = 330;
    /** How far is looked first, cells, and twice as far each time that a flight goes farther. */
    private static final float NEAR_CELLS = REACH_CELLS / 8;

    private static final Stretch[] NO_TREES = {};
    private static final List<Sight> CLEAR = Stream.iterate(NEAR_CELLS, r -> r <= REACH_CELLS, r -> 2 * r)
            .map(r -> new Sight(r, NO_TREES))
            .toList();

    private final HoleRaster raster;
    private final double column;
    private final double row;
    private final float openCells;
    private final @Nullable BunkerFace face;
    private static final @Nullable Sight[] NOTHING = {};

    /** By sector; null where nobody has looked. */
    private @Nullable Sight[] sights = NOTHING;
    /** Distance to the bunker's edge by sector, metres; 0 until looked at. */
    private final float[] edgeMetres;

    /** The trees that stand in a sector up to some distance, in cells. */
    private static final class Sight {
        final float reach;
        final Stretch[] trees;

        Sight(float reach, Stretch[] trees) {
            this.reach = reach;
            this.trees = trees;
        }
    }

    /** A stretch of one kind of trees, from and to in cells from the ball. */
    private static final class Stretch {
        final float from;
        final float to;
        private final double topMetres;
        private final double gapMetres;
        /** Expected stops in a cell's length of crowns, and of trunks. */
        private final double crownStops;

        private final double trunkStops;

        Stretch(float from, float to, TreeCover trees) {
            this.from = from;
            this.to = to;
            topMetres = trees.heightMetres();
            gapMetres = trees.gapMetres();
            crownStops = trees.stopsPerMetre(topMetres) * HoleRaster.CELL_METRES;
            trunkStops = trees.stopsPerMetre(0) * HoleRaster.CELL_METRES;
        }

        /** True if a flight is above the tops at both ends of the stretch, so all along it: it rises and falls once. */
        boolean isBelow(double apexMetres, double start, double end) {
            return FlightShape.heightMetres(apexMetres, start) > topMetres
                    && FlightShape.heightMetres(apexMetres, end) > topMetres;
        }

        /** Expected stops in a cell's length of flight at this height. */
        double stops(double heightMetres) {
            return heightMetres > topMetres ? 0 : heightMetres >= gapMetres ? crownStops : trunkStops;
        }
    }

    /** @param face of the bunker that the ball lies in, or null */
    TreeFan(HoleRaster raster, double column, double row, double openMetres, @Nullable BunkerFace face) {
        this.raster = raster;
        this.column = column;
        this.row = row;
        this.openCells = (float) (openMetres / HoleRaster.CELL_METRES);
        this.face = face;
        edgeMetres = new float[face == null ? 0 : SECTORS];
    }

    /** True if the ball lies in a bunker whose face somebody has measured. */
    boolean hasFace() {
        return face != null;
    }

    /** How far a flight gets, cells: its carry, or where a tree stops it; 0 if it falls back from a bunker's face. */
    float flown(int sector, float carryCells, float apexMetres, float patience) {
        if (face != null && !clears(face, sector, carryCells * HoleRaster.CELL_METRES, apexMetres, patience)) {
            return 0;
        }
        Stretch[] trees = trees(sector, carryCells);
        if (trees.length == 0 || trees[0].from >= carryCells) {
            return carryCells;
        }
        double share = 1 / carryCells;
        double left = patience;
        for (int i = 0; i < trees.length && trees[i].from < carryCells; i++) {
            Stretch stretch = trees[i];
            float end = Math.min(stretch.to, carryCells);
            if (stretch.isBelow(apexMetres, stretch.from * share, end * share)) {
                continue;
            }
            for (float s = stretch.from + 0.5f; s < end; s++) {
                left -= stretch.stops(FlightShape.heightMetres(apexMetres, s * share));
                if (left < 0) {
                    return s;
                }
            }
        }
        return carryCells;
    }

    /** Looked at once a reach; two that look at the same time see the same. */
    private Stretch[] trees(int sector, float carryCells) {
        @Nullable Sight[] all = sights;
        if (all == NOTHING) {
            all = new Sight[SECTORS];
            sights = all;
        }
        Sight seen = all[sector];
        if (seen == null || seen.reach < Math.min(carryCells, REACH_CELLS)) {
            seen = look(sector, carryCells);
            all[sector] = seen;
        }
        return seen.trees;
    }

    /** Lets go of what was seen until somebody looks again. */
    void forget() {
        sights = NOTHING;
    }

    /** The luck that a ball has with trees, exponential, serves once more as its luck with the face. */
    private boolean clears(BunkerFace face, int sector, double carryMetres, double apexMetres, double patience) {
        double bearing = bearing(sector);
        if (edgeMetres[sector] == 0) {
            edgeMetres[sector] = (float) face.distanceMetres(bearing);
        }
        double z = SpreadSequence.normal(Math.exp(-patience));
        return FlightShape.clears(apexMetres, carryMetres, z, edgeMetres[sector], face.heightMetres(bearing));
    }

    private static double bearing(int sector) {
        return (sector + 0.5) * 2 * Math.PI / SECTORS;
    }

    private Sight look(int sector, float carryCells) {
        Sight clear = CLEAR.get(0);
        for (int i = 1; i < CLEAR.size() && clear.reach < carryCells; i++) {
            clear = CLEAR.get(i);
        }
        Stretch[] found = treesWithin(sector, clear.reach);
        return found.length == 0 ? clear : new Sight(clear.reach, found);
    }

    private Stretch[] treesWithin(int sector, float reach) {
        double bearing = bearing(sector);
        double dx = Math.sin(bearing);
        double dy = Math.cos(bearing);
        Stretch[] found = NO_TREES;
        TreeCover under = null;
        float from = openCells;
        float s = openCells;
        double chessboard = 1 / Math.max(Math.abs(dx), Math.abs(dy));
        boolean inside = true;
        while (inside && s < reach) {
            double x = column + dx * (s + 0.5);
            double y = row + dy * (s + 0.5);
            int cell = raster.cell(x, y);
            int same = raster.sameTrees(cell);
            TreeCover trees = same > 0 ? null : raster.trees(cell);
            if (under != null && !under.equals(trees)) {
                found = with(found, new Stretch(from, s, under));
            }
            if (trees != null && !trees.equals(under)) {
                from = s;
            }
            under = trees;
            s += (float) Math.max(1, Math.abs(same) * chessboard);
            inside = raster.covers(x, y);
        }
        return under == null ? found : with(found, new Stretch(from, reach, under));
    }

    private static Stretch[] with(Stretch[] found, Stretch next) {
        Stretch[] more = Arrays.copyOf(found, found.length + 1);
        more[found.length] = next;
        return more;
    }
}
