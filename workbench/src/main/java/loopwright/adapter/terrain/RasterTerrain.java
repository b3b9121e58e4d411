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
import loopwright.geo.Box;
import loopwright.geo.LocalFrame;
import loopwright.geo.Place;
import loopwright.ground.HeightField;

/** Heights from elevation rasters, cut to the course; the format is told by the content. */
public final class RasterTerrain implements TerrainFiles {
    /** Nodes kept: a square of 3 km at 1 m. */
    private static final long MOST_NODES = 9_000_000;

    @Override
    public Terrain read(Path file, Course course) {
        List<ImportRecord> records = new ArrayList<>();
        Raster raster = open(file, course, records);
        LocalFrame frame = new LocalFrame(course.origin());
        Raster.Window window = window(raster, course, file);
        float[] heights = raster.read(window);
        TerrainOddities oddities = new TerrainOddities(file.toString(), records);
        HeightRepair.fillMissing(heights, window.columns(), file, oddities);
        HeightField field = new HeightField(
                window.columns(), window.rows(), heights, GridFit.fit(raster.frame(), window, frame, oddities));
        if (!covers(field, CourseWindow.extent(course))) {
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

    private static boolean covers(HeightField field, Box box) {
        return field.covers(new Place(box.minX(), box.minY()))
                && field.covers(new Place(box.maxX(), box.minY()))
                && field.covers(new Place(box.minX(), box.maxY()))
                && field.covers(new Place(box.maxX(), box.maxY()));
    }

    private static Raster.Window window(Raster raster, Course course, Path file) {
        Raster.Window window = CourseWindow.of(raster.frame(), raster.columns(), raster.rows(), course, file);
        long nodes = (long) window.columns() * window.rows();
        if (nodes > MOST_NODES) {
            throw new UserFault(file + " has " + nodes + " heights under the course, more than " + MOST_NODES
                    + "; make a coarser grid (1 m is fine enough).");
        }
        return window;
    }
}
