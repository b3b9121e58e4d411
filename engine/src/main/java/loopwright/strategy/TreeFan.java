package loopwright.strategy;

import java.util.Arrays;
import loopwright.course.TreeCover;
import loopwright.player.FlightShape;

/**
 * The trees round one place, seen as a fan of sectors: for each direction the stretches under trees and their
 * tops, found on first use by stepping from tree to tree.
 */
final class TreeFan {
    static final int SECTORS = 240;
    static final double SECTORS_PER_RADIAN = SECTORS / (2 * Math.PI);

    private static final double REACH_CELLS = 330;
    private static final float[] NOT_LOOKED = {};
    private static final float[] CLEAR = {};

    private final HoleRaster raster;
    private final double column;
    private final double row;
    private final float openCells;
    /** Start, end (cells) and top (metres) of each stretch, by sector; empty until looked at. */
    private final float[][] stretches;

    TreeFan(HoleRaster raster, double column, double row, double openMetres) {
        this.raster = raster;
        this.column = column;
        this.row = row;
        this.openCells = (float) (openMetres / HoleRaster.CELL_METRES);
        this.stretches = new float[SECTORS][];
        Arrays.fill(stretches, NOT_LOOKED);
    }

    /** How far a flight gets, cells: its carry, or where a tree stops it. */
    float flown(int sector, float carryCells, float apexMetres, float patience) {
        float[] trees = stretches[sector];
        if (trees == NOT_LOOKED) {
            trees = look(sector);
            stretches[sector] = trees;
        }
        float left = patience;
        for (int i = 0; i < trees.length && trees[i] < carryCells; i += 3) {
            TreeCover cover = new TreeCover(trees[i + 2], Math.min(TreeCover.WOODS_DEFAULT.gapMetres(), trees[i + 2]));
            float end = Math.min(trees[i + 1], carryCells);
            for (float s = trees[i] + 0.5f; s < end; s++) {
                double height = FlightShape.heightMetres(apexMetres, s / carryCells);
                left -= (float) (cover.stopsPerMetre(height) * HoleRaster.CELL_METRES);
                if (left < 0) {
                    return s;
                }
            }
        }
        return carryCells;
    }

    private float[] look(int sector) {
        double bearing = (sector + 0.5) * 2 * Math.PI / SECTORS;
        double dx = Math.sin(bearing);
        double dy = Math.cos(bearing);
        float[] found = CLEAR;
        int n = 0;
        float s = openCells;
        while (s < REACH_CELLS) {
            int cell = raster.cell(column + dx * (s + 0.5), row + dy * (s + 0.5));
            int distance = raster.treeDistance(cell);
            if (distance > 0) {
                s += distance;
                continue;
            }
            float top = raster.treeTop(cell);
            if (n > 0 && found[n - 2] == s && found[n - 1] == top) {
                found[n - 2] = s + 1;
            } else {
                found = Arrays.copyOf(found, n + 3);
                found[n] = s;
                found[n + 1] = s + 1;
                found[n + 2] = top;
                n += 3;
            }
            s += 1;
        }
        return found;
    }
}
