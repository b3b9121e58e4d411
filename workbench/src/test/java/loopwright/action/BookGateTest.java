package loopwright.action;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import loopwright.action.Book.Role;
import loopwright.demo.DemoCourse;
import org.junit.jupiter.api.Test;

/**
 * Nothing in the book depends on where a ball lies during the round beyond what was prepared (Rule 4.3a): every shot it
 * names begins on the tee or where the plan itself expects the ball, and no line asks for a place of the ball.
 */
class BookGateTest {
    private static final RoundPlan PLAN = SyntheticBook.plan(DemoCourse.create());
    private static final Book BOOK = SyntheticBook.of(DemoCourse.create(), LengthUnit.YARDS);

    /** Roles that may stand on the page of a hole; a new one has to be thought about here first. */
    private static final Set<Role> PREPARED = EnumSet.of(
            Role.FACTS,
            Role.CLUB,
            Role.AIM,
            Role.CARRY,
            Role.ROOM,
            Role.MISS,
            Role.START_LINE,
            Role.WIND,
            Role.PROVISIONAL,
            Role.BEWARE,
            Role.NEXT,
            Role.SENTENCE,
            Role.UNSURVEYED,
            Role.NOTE);

    @Test
    void everyShotBeginsWhereThePlanExpectsTheBall() {
        for (Book.Page page : BOOK.pages(Book.Kind.HOLE)) {
            RoundPlan.HolePlan plan = planned(page);
            Book.HoleGround ground = (Book.HoleGround) page.picture().orElseThrow();
            assertThat(ground.shots().stream().map(Book.Shot::from))
                    .isEqualTo(
                            plan.shots().stream().map(RoundPlan.ShotPlan::from).toList());
            assertThat(ground.shots().get(0).from()).isEqualTo(plan.tee());
            assertThat(page.texts(Role.NEXT)).hasSize(plan.shots().size() - 1);
            assertThat(page.texts(Role.CLUB))
                    .containsExactly(plan.shots().get(0).club());
        }
    }

    @Test
    void onlyPreparedLinesStandOnThePageOfAHole() {
        for (Book.Page page : BOOK.pages(Book.Kind.HOLE)) {
            assertThat(page.lines()).allMatch(l -> PREPARED.contains(l.role()));
            assertThat(page.table())
                    .as("a table by distance would read like a choice by where the ball lies")
                    .isEmpty();
        }
    }

    @Test
    void aGreenPageKnowsTheHoleAndNotTheBall() {
        for (Book.Page page : BOOK.pages(Book.Kind.GREEN)) {
            Book.Table table = page.table().orElseThrow();
            assertThat(table.heads()).containsExactly("hole", "left", "centre", "right");
            assertThat(table.rows().stream().map(r -> r.get(0))).containsExactly("back", "middle", "front");
            Book.GreenGround green = (Book.GreenGround) page.picture().orElseThrow();
            assertThat(green.targets()).hasSize(9);
        }
    }

    @Test
    void noLineAsksWhereTheBallLies() {
        String all = BOOK.pages().stream()
                .filter(p -> p.kind() != Book.Kind.COVER)
                .flatMap(p -> p.lines().stream())
                .map(l -> l.text().toLowerCase(java.util.Locale.ROOT))
                .collect(Collectors.joining("\n"));
        for (String asking :
                List.of("if you are", "your ball lies", "where your ball", "measure the distance", "from where")) {
            assertThat(all).doesNotContain(asking);
        }
    }

    private static RoundPlan.HolePlan planned(Book.Page page) {
        return PLAN.holes().stream()
                .filter(h -> h.number() == page.hole())
                .findFirst()
                .orElseThrow();
    }
}
