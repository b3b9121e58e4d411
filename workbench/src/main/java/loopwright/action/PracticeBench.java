package loopwright.action;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import loopwright.action.Jobs.Job;
import loopwright.player.PlayerProfile;
import loopwright.practice.Drill;

/** Practice for the bench: plans in the background, drills and weeks drawn, what drills say of a player. */
public final class PracticeBench {
    /** The level to compare with where nobody says another: as at the command line. */
    private static final double BETTER_BY = 10;
    /** A plan keeps all cores busy by itself. */
    private static final int PLANS_AT_ONCE = 1;

    private static final int KEPT_PLANS = 12;
    /** Players whose drills are kept in memory, some kB each. */
    private static final int KEPT_PLAYERS = 50;

    private final Workroom room;
    private final Jobs plans;
    private final PlanPractice planning;
    private final OwnDrills own;
    private final Remembered<String, List<PracticePictures.DrillCard>> known = new Remembered<>(KEPT_PLAYERS);
    private final PracticePictures pictures;
    private final CalendarFile calendars;

    public PracticeBench(
            Workroom room,
            JobBoard board,
            PlanPractice planning,
            DrillCards cards,
            PracticePictures pictures,
            CalendarFile calendars) {
        this.room = room;
        this.plans = board.open(PLANS_AT_ONCE, KEPT_PLANS);
        this.planning = planning;
        this.own = new OwnDrills(room, cards);
        this.pictures = pictures;
        this.calendars = calendars;
    }

    /** The practice plan of a choice; one that follows from the record is made anew when the record grows. */
    public Job<PracticePlan> plan(PracticeChoice choice) {
        Shelf.Entry entry = choice.round().player();
        Shelf.Entry onto = choice.round().course();
        Path course = room.courseFile(onto.id(), onto.version());
        Path player = room.playerFile(entry.id(), entry.version());
        String key = "practice " + choice.key() + " " + made(entry.id())
                + (choice.follows()
                        ? " " + room.store().records().listDrills(entry.id()).size()
                        : "");
        return plans.submit(key, key, watch -> {
            List<Drill> drills = drills(entry);
            Optional<PracticeProgress> progress =
                    choice.follows() ? Optional.of(PracticeProgress.of(room, entry, drills)) : Optional.empty();
            return planning.plan(choice.request(course, player, drills, progress), watch);
        });
    }

    /** Tells files of own drills apart. */
    private String made(String player) {
        return own.findFile(player).map(KeptList::id).orElse("");
    }

    /** The coach's own drills of a player. */
    public OwnDrills own() {
        return own;
    }

    /** The drills there are for a player. */
    public List<Drill> drills(Shelf.Entry player) {
        return own.drills(player.id(), DrillCards.USUAL_CORRIDOR_METRES);
    }

    /** The drills with what a player of the store should expect. */
    public List<PracticePictures.DrillCard> cards(Shelf.Entry player) {
        PlayerProfile profile = room.player(player.id(), player.version());
        return known.get(
                player.id() + " " + player.version() + " " + made(player.id()),
                () -> drills(player).stream()
                        .map(d -> DrillCards.card(d, profile, profile.player().level() - BETTER_BY))
                        .toList());
    }

    /** A drill drawn, as SVG. */
    public byte[] picture(PracticePictures.DrillCard card) {
        return written(".svg", file -> pictures.drawDrill(card, file));
    }

    /** The week to print, as PDF. */
    public byte[] week(PracticePlan plan) {
        return written(".pdf", file -> pictures.drawWeek(plan, file));
    }

    /** The weeks as iCalendar. */
    public byte[] calendar(PracticePlan plan, LocalDate first, LocalTime time) {
        return written(".ics", file -> calendars.write(file, PracticeCalendar.of(plan, first, time)));
    }

    public PracticeReview.Report review(Shelf.Entry player) {
        return PracticeReview.of(room, player.id(), drills(player));
    }

    private byte[] written(String ending, Consumer<Path> write) {
        return room.withFile(new byte[0], ending, file -> {
            write.accept(file);
            try {
                return Files.readAllBytes(file);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }
}
