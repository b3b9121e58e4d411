package loopwright.adapter.table;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.zip.GZIPOutputStream;
import loopwright.action.AuditFiles;
import loopwright.action.UserFault;
import loopwright.course.CourseMap;
import loopwright.geo.Box;
import loopwright.geo.Place;
import loopwright.ground.Situation;
import loopwright.ground.Surface;
import loopwright.strategy.AuditTrail;
import loopwright.strategy.MeanSolution;
import loopwright.strategy.PolicyEvaluation;

/** Writes the audit of solved holes into a folder, as the gzipped CSV files of {@code docs/audit.md}. */
public final class AuditFolder implements AuditFiles {
    private static final int SURFACE_SAMPLES = 20_000;

    private final Path folder;

    public AuditFolder(Path folder) {
        this.folder = folder;
    }

    @Override
    public void write(MeanSolution solution, PolicyEvaluation evaluation, long seed) {
        CourseMap map = solution.problem().map();
        String hole = String.format(Locale.ROOT, "hole-%02d-", map.hole().number());
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UserFault("The audit folder " + folder + " cannot be made: " + e.getMessage() + ".", e);
        }
        try (Sheets sheets = new Sheets(hole)) {
            new AuditTrail(solution, evaluation).tell(seed, sheets);
            sheets.surfaces(map, seed);
        } catch (IOException | UncheckedIOException e) {
            throw new UserFault("The audit cannot be written to " + folder + ": " + e.getMessage() + ".", e);
        }
    }

    /** The five tables of one hole. */
    private final class Sheets implements AuditTrail.Sink, AutoCloseable {
        private final List<Writer> open = new ArrayList<>();
        private final Writer cells;
        private final Writer crossings;
        private final Writer states;
        private final Writer options;
        private final Writer outcomes;
        private final Writer surfaces;

        Sheets(String prefix) throws IOException {
            cells = sheet(prefix + "cells", "cell,x,y,surface,replay,value,nodes,weights");
            crossings = sheet(prefix + "crossings", "crossing,x,y,area,penalty,drops");
            states = sheet(prefix + "states", "state,node,x,y,surface,situation,probability,value");
            options = sheet(prefix + "options", "state,option,shot,targetX,targetY,cost");
            outcomes = sheet(prefix + "outcomes", "state,option,cell,crossing,weight");
            surfaces = sheet(prefix + "surfaces", "x,y,surface");
        }

        private Writer sheet(String name, String header) throws IOException {
            Writer w = new BufferedWriter(new OutputStreamWriter(
                    new GZIPOutputStream(Files.newOutputStream(folder.resolve(name + ".csv.gz"))),
                    StandardCharsets.UTF_8));
            open.add(w);
            w.write(header + "\n");
            return w;
        }

        @Override
        public void close() throws IOException {
            for (Writer w : open) {
                w.close();
            }
        }

        private void row(Writer to, Object... fields) {
            try {
                for (int i = 0; i < fields.length; i++) {
                    to.write(i == 0 ? "" : ",");
                    to.write(String.valueOf(fields[i]));
                }
                to.write('\n');
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        @Override
        public void cell(
                int cell, Place centre, Surface surface, double replay, double value, int[] nodes, double[] weights) {
            StringBuilder n = new StringBuilder();
            StringBuilder w = new StringBuilder();
            for (int i = 0; i < nodes.length; i++) {
                n.append(i == 0 ? "" : ";").append(nodes[i]);
                w.append(i == 0 ? "" : ";").append(weights[i]);
            }
            row(cells, cell, centre.x(), centre.y(), surface, replay, value, n, w);
        }

        @Override
        public void crossing(int crossing, Place place, Surface area, int penalty, int[] drops) {
            StringBuilder d = new StringBuilder();
            for (int i = 0; i < drops.length; i++) {
                d.append(i == 0 ? "" : ";").append(drops[i]);
            }
            row(crossings, crossing, place.x(), place.y(), area, penalty, d);
        }

        @Override
        public void state(
                int state, int node, Place place, Surface surface, Situation situation, double p, double value) {
            row(states, state, node, place.x(), place.y(), surface, situation, p, value);
        }

        @Override
        public void option(int state, int option, String shot, Place target, int cost) {
            row(options, state, option, shot, target.x(), target.y(), cost);
        }

        @Override
        public void outcome(int state, int option, int cell, int crossing, double weight) {
            row(outcomes, state, option, cell, crossing, weight);
        }

        /** Surfaces by the exact polygons at random places round the hole. */
        void surfaces(CourseMap map, long seed) {
            Box box = Box.around(map.hole().line().places())
                    .union(map.hole().green().box())
                    .grown(60);
            SplittableRandom random = new SplittableRandom(seed);
            for (int i = 0; i < SURFACE_SAMPLES; i++) {
                double x = box.minX() + random.nextDouble() * box.width();
                double y = box.minY() + random.nextDouble() * box.height();
                row(surfaces, x, y, map.surfaceAt(x, y));
            }
        }
    }
}
