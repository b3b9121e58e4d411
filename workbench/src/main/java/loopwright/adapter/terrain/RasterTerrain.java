package loopwright.adapter.terrain;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import loopwright.action.ImportRecord;
import loopwright.action.TerrainFiles;
import loopwright.action.UserFault;
import loopwright.course.Course;
import loopwright.course.Hole;
import loopwright.geo.Box;
import loopwright.geo.LatLon;
import loopwright.geo.LocalFrame;
import loopwright.geo.Place;
import loopwright.geo.Region;
import loopwright.ground.HeightField;

/** Heights from elevation rasters, cut to the course; the format is told by the content. */
public final class RasterTerrain implements TerrainFiles {
    private static final double SURROUNDINGS_METRES = 300;
    /** Nodes kept: a square of 3 km at 1 m. */
    private static final long MOST_NODES = 9_000_000;

    @Override
    public Terrain read(Path file, Course course) {
        List<ImportRecord> records = new ArrayList<>();
        Raster raster = open(file, course, records);
        LocalFrame frame = new LocalFrame(course.origin());
        Box wanted = extent(course).grown(SURROUNDINGS_METRES);
        Raster.Window window = window(raster, frame, wanted, file);
        float[] heights = raster.read(window);
        TerrainOddities oddities = new TerrainOddities(file.toString(), records);
        HeightRepair.fillMissing(heights, window.columns(), file, oddities);
        HeightField field = new HeightField(
                window.columns(), window.rows(), heights, GridFit.fit(raster.frame(), window, frame, oddities));
        if (!covers(field, extent(course))) {
            oddities.partlyCovered();
        }
        if (!field.showsGreens()) {
            oddities.tooCoarseForGreens(field.resolutionMetres());
        }
        return new Terrain(field, records);
    }

    private static Raster open(Path file, Course course, List<ImportRecord> records) {
        byte[] head = head(file);
        if (GeoTiff.looksLike(head)) {
            return GeoTiff.open(file);
        }
        if (AsciiGrid.looksLike(new String(head, StandardCharsets.ISO_8859_1))) {
            AsciiGrid grid = AsciiGrid.open(file, course.origin());
            if (grid.zoneAssumed()) {
                new TerrainOddities(file.toString(), records).zoneAssumed(Projections.utmZone(course.origin()));
            }
            return grid;
        }
        throw new UserFault(
                file + " is no elevation raster that can be read; accepted are GeoTIFF and ESRI ASCII grid.");
    }

    private static byte[] head(Path file) {
        if (!Files.isRegularFile(file)) {
            throw new UserFault(file + " does not exist or is no file; check the path.");
        }
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(256);
        } catch (IOException e) {
            throw new UserFault(file + " cannot be read: " + e.getMessage() + ".", e);
        }
    }

    private static Box extent(Course course) {
        List<Place> places = new ArrayList<>();
        for (Hole hole : course.holes()) {
            places.addAll(hole.line().places());
        }
        Box box = Box.around(places);
        return course.boundary().map(Region::box).map(box::union).orElse(box);
    }

    private static boolean covers(HeightField field, Box box) {
        return field.covers(new Place(box.minX(), box.minY()))
                && field.covers(new Place(box.maxX(), box.minY()))
                && field.covers(new Place(box.minX(), box.maxY()))
                && field.covers(new Place(box.maxX(), box.maxY()));
    }

    /** The cells that the box touches. */
    private static Raster.Window window(Raster raster, LocalFrame frame, Box box, Path file) {
        double minColumn = Double.POSITIVE_INFINITY;
        double maxColumn = Double.NEGATIVE_INFINITY;
        double minRow = Double.POSITIVE_INFINITY;
        double maxRow = Double.NEGATIVE_INFINITY;
        for (double x : new double[] {box.minX(), 0, box.maxX()}) {
            for (double y : new double[] {box.minY(), 0, box.maxY()}) {
                double[] at = raster.frame().columnAndRow(frame.toLatLon(new Place(x, y)));
                minColumn = Math.min(minColumn, at[0]);
                maxColumn = Math.max(maxColumn, at[0]);
                minRow = Math.min(minRow, at[1]);
                maxRow = Math.max(maxRow, at[1]);
            }
        }
        int column = (int) Math.max(0, Math.floor(minColumn));
        int row = (int) Math.max(0, Math.floor(minRow));
        long columns = (long) Math.min(raster.columns() - 1, Math.ceil(maxColumn)) - column + 1;
        long rows = (long) Math.min(raster.rows() - 1, Math.ceil(maxRow)) - row + 1;
        if (!(columns >= 2 && rows >= 2)) {
            throw notCovered(raster, frame.origin(), file);
        }
        if (columns * rows > MOST_NODES) {
            throw new UserFault(file + " has " + columns * rows + " heights under the course, more than " + MOST_NODES
                    + "; make a coarser grid (1 m is fine enough).");
        }
        return new Raster.Window(column, row, (int) columns, (int) rows);
    }

    private static UserFault notCovered(Raster raster, LatLon origin, Path file) {
        double[] first = raster.frame().degrees(0, 0);
        double[] last = raster.frame().degrees(raster.columns() - 1, raster.rows() - 1);
        return new UserFault(String.format(
                java.util.Locale.ROOT,
                "%s does not cover the course: it reaches from %.4f, %.4f to %.4f, %.4f (latitude, longitude) and the"
                        + " course lies at %.4f, %.4f; choose a raster of that region.",
                file,
                first[1],
                first[0],
                last[1],
                last[0],
                origin.latitudeDegrees(),
                origin.longitudeDegrees()));
    }
}
