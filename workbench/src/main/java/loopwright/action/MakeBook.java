package loopwright.action;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import loopwright.course.Hole;
import loopwright.ground.Surface;
import loopwright.numerics.Watch;
import loopwright.strategy.MeasuredGreen;

/** Makes the book of a round: plans it, asks every hole for what the book tells besides, and words the pages. */
public final class MakeBook {
    private final PlanRound planning;
    private final ApproachAdviser approaches;
    private final WedgeAdviser wedges;

    public MakeBook(PlanRound planning, ApproachAdviser approaches, WedgeAdviser wedges) {
        this.planning = planning;
        this.approaches = approaches;
        this.wedges = wedges;
    }

    /**
     * A book with the plan its numbers come from.
     *
     * @param charts the holes as the coach sees them: contours, alternatives and what they cost
     */
    public record Made(Book book, RoundPlan plan, List<HolePicture> charts) {
        public Made {
            charts = List.copyOf(charts);
        }
    }

    public Made make(BookRequest request, Watch watch) {
        BriefHoles briefing = new BriefHoles();
        RoundPlan plan = planning.plan(request.plan(), briefing, watch);
        ApproachAnswer approach = approaches.approach(
                new ApproachRequest(
                        request.plan().withHoleLocations(List.of()), Optional.empty(), OptionalDouble.empty()),
                watch.withoutProgress());
        WedgeTable table = wedges.table(
                request.plan().player(),
                Surface.FAIRWAY,
                request.plan().days().get(0),
                request.unit(),
                request.plan().seed(),
                watch.withoutProgress());
        return new Made(book(request, plan, briefing, approach, table), plan, charts(plan, briefing));
    }

    private static List<HolePicture> charts(RoundPlan plan, BriefHoles briefing) {
        return plan.holes().stream()
                .map(h -> PlanPictures.picture(plan, h).withStrokes(briefing.strokes(h.number())))
                .toList();
    }

    private static Book book(
            BookRequest request, RoundPlan plan, BriefHoles briefing, ApproachAnswer approach, WedgeTable wedges) {
        HolePages holes = new HolePages(plan, request.unit());
        CardPages cards = new CardPages(plan, request.unit());
        Optional<Expectation> expectation = plan.counting().form() == Counting.Form.STROKES
                ? Optional.of(briefing.expectation(request.plan().target()))
                : Optional.empty();
        List<Book.Page> pages = new ArrayList<>();
        pages.add(cards.cover(briefing.setup().profile().player().name(), request.day()));
        for (RoundPlan.HolePlan h : plan.holes()) {
            Hole hole = plan.course().getHole(h.number());
            pages.add(holes.hole(h, briefing.of(h.number())));
            pages.add(holes.green(
                    h, of(approach, h.number()), HolePages.slopes(MeasuredGreen.find(plan.course(), hole), hole)));
        }
        pages.add(cards.card(briefing::of, hole -> of(approach, hole)));
        pages.add(cards.expectations(holes, expectation));
        pages.add(cards.wedges(wedges));
        pages.add(cards.pencilCard());
        cards.stateOfPlay(holes).ifPresent(pages::add);
        return new Book("Book of " + plan.course().name(), request.unit(), pages);
    }

    private static ApproachAnswer.HoleApproach of(ApproachAnswer approach, int hole) {
        return approach.holes().stream()
                .filter(h -> h.number() == hole)
                .findFirst()
                .orElseThrow();
    }
}
