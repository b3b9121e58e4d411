package loopwright.adapter.osm;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * An invented map in OSM XML for measuring how reading grows: courses of eighteen holes in a row, 4 km apart, and houses
 * with streets, most of them far from golf. {@code java -cp benchmarks.jar loopwright.adapter.osm.SyntheticTown FILE
 * COURSES HOUSES} writes one.
 */
final class SyntheticTown {
    private static final double LATITUDE = 45;
    private static final double DEGREES_PER_METRE = 1 / 111_000.0;
    private static final int RING = 24;

    private final Writer nodes;
    private final StringBuilder ways = new StringBuilder();
    private long lastNode;
    private long lastWay;

    private SyntheticTown(Writer nodes) {
        this.nodes = nodes;
    }

    public static void main(String[] arguments) throws IOException {
        write(Path.of(arguments[0]), Integer.parseInt(arguments[1]), Integer.parseInt(arguments[2]));
    }

    static void write(Path file, int courses, int houses) throws IOException {
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write("<osm version=\"0.6\">\n");
            SyntheticTown town = new SyntheticTown(out);
            for (int c = 0; c < courses; c++) {
                town.course(c);
            }
            for (int h = 0; h < houses; h++) {
                town.house(h);
            }
            out.write(town.ways + "</osm>\n");
        }
    }

    private void course(int number) throws IOException {
        double x = number * 4000.0;
        ring(x + 900, 300, 1000, "leisure=golf_course", "name=Synthetic course " + number);
        for (int hole = 1; hole <= 18; hole++) {
            double at = x + hole * 90;
            line("golf=hole|ref=" + hole + "|par=4", at, 0, at, 360);
            ring(at, 360, 12, "golf=green");
            ring(at, 240, 30, "golf=fairway");
            ring(at + 18, 350, 5, "golf=bunker");
            ring(at, 0, 5, "golf=tee");
            ring(at + 40, 200, 15, "natural=wood");
        }
    }

    /** In blocks north of the first course, out of its sight. */
    private void house(int number) throws IOException {
        ring(20.0 * (number % 500), 20_000 + 20.0 * (number / 500), 6, "building=yes");
    }

    private void ring(double x, double y, double radius, String... tags) throws IOException {
        long first = lastNode + 1;
        for (int i = 0; i < RING; i++) {
            double turn = 2 * Math.PI * i / RING;
            node(x + radius * Math.sin(turn), y + radius * Math.cos(turn));
        }
        way(first, true, String.join("|", tags));
    }

    private void line(String tags, double x0, double y0, double x1, double y1) throws IOException {
        node(x0, y0);
        node(x1, y1);
        way(lastNode - 1, false, tags);
    }

    private void node(double x, double y) throws IOException {
        nodes.write(String.format(
                Locale.ROOT,
                "<node id=\"%d\" lat=\"%.7f\" lon=\"%.7f\"/>%n",
                ++lastNode,
                LATITUDE + y * DEGREES_PER_METRE,
                10 + x * DEGREES_PER_METRE * 1.414));
    }

    private void way(long first, boolean closed, String tags) {
        ways.append("<way id=\"").append(++lastWay).append("\">");
        for (long n = first; n <= lastNode; n++) {
            ways.append("<nd ref=\"").append(n).append("\"/>");
        }
        if (closed) {
            ways.append("<nd ref=\"").append(first).append("\"/>");
        }
        for (String tag : tags.split("\\|", -1)) {
            String[] pair = tag.split("=", 2);
            ways.append("<tag k=\"")
                    .append(pair[0])
                    .append("\" v=\"")
                    .append(pair[1])
                    .append("\"/>");
        }
        ways.append("</way>\n");
    }
}
