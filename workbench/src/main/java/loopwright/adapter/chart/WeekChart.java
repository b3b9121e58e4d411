package loopwright.adapter.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import loopwright.action.PracticePlan;
import loopwright.action.PracticeReasons;
import loopwright.action.PracticeWords;
import loopwright.drawing.Drawing;
import loopwright.drawing.Extent;
import loopwright.drawing.Face;
import loopwright.drawing.Furniture;
import loopwright.drawing.Ink;
import loopwright.drawing.Mark;
import loopwright.drawing.Paragraph;
import loopwright.drawing.Pen;
import loopwright.drawing.Point;
import loopwright.drawing.Trace;
import loopwright.practice.PracticeWeek;

/** A week of practice on one sheet: sessions with their blocks, a box to tick and a line for the score, and the cautions. */
final class WeekChart {
    private static final double WIDTH = 540;
    private static final double EDGE = 34;
    private static final double TEXT = 10;
    private static final double ROW = 30;
    private static final double BOX = 11;

    private final PracticePlan plan;
    private final List<Mark> marks = new ArrayList<>();
    private double y = EDGE + 16;

    private WeekChart(PracticePlan plan) {
        this.plan = plan;
    }

    static Drawing of(PracticePlan plan) {
        return new WeekChart(plan).draw();
    }

    private Drawing draw() {
        text("A week of practice: " + plan.player().name(), EDGE, 16, Face.BOLD);
        y += 10;
        paragraph(String.format(
                Locale.ROOT,
                "For %s on %s, %s tees; %d weeks like this, adapted to what the drills say.",
                plan.target(),
                plan.course(),
                plan.tees(),
                plan.hours().weeks()));
        new PracticeReasons(plan).first().forEach(this::paragraph);
        int number = 1;
        for (PracticeWeek.Session session : plan.week().sessions()) {
            session(number++, session);
        }
        y += 10;
        paragraph(PracticeReasons.ORDER);
        PracticeReasons.CAUTIONS.forEach(this::paragraph);
        double height = y + EDGE;
        marks.addAll(0, Furniture.neatLine(new Extent(0, 0, WIDTH, height).grown(-12)));
        return new Drawing("A week of practice", WIDTH, height, marks);
    }

    private void session(int number, PracticeWeek.Session session) {
        y += 26;
        text("Session " + number + ", " + session.minutes() + " minutes", EDGE, 12.5, Face.BOLD);
        marks.add(
                Mark.drawn(Pen.of(Ink.LINE, 0.8), Trace.line(new Point(EDGE, y + 5), new Point(WIDTH - EDGE, y + 5))));
        y += 8;
        for (PracticeWeek.Block block : session.blocks()) {
            block(block);
        }
    }

    private void block(PracticeWeek.Block block) {
        double top = y;
        marks.add(
                Mark.drawn(Pen.of(Ink.LINE, 1), Trace.rectangle(new Extent(EDGE, top + 4, EDGE + BOX, top + 4 + BOX))));
        y = top + 13;
        text(
                block.minutes() + " min  " + PracticeWords.of(block.skill()) + ", "
                        + PracticeWords.of(block.facility())
                        + (block.balls() > 0 ? ", up to " + block.balls() + " balls" : ""),
                EDGE + BOX + 8,
                TEXT,
                Face.BOLD);
        y = top + 25;
        text(
                block.drill()
                        .map(d -> "drill " + d.name() + " (" + d.minutes() + " min), score of " + d.most()
                                + ": ______   then freely, a new target for every ball")
                        .orElse(PracticeReasons.withoutDrill(block.skill())),
                EDGE + BOX + 8,
                9,
                Face.REGULAR);
        y = top + ROW;
    }

    private void text(String words, double x, double size, Face face) {
        marks.add(Mark.text(words, new Point(x, y), Mark.Anchor.START, size, face, Ink.LINE));
    }

    private void paragraph(String words) {
        Paragraph p = Paragraph.of(words, WIDTH - 2 * EDGE, 9.5, Face.REGULAR);
        marks.addAll(p.marks(new Point(EDGE, y), Ink.LINE));
        y += p.height() + 3;
    }
}
