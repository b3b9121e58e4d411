package loopwright.action;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import loopwright.action.Jobs.Job;
import loopwright.numerics.Watch;

/** Prints for the bench: a book or a whole team's in the background, and what is printed from a book or without a plan. */
public final class PrintBench {
    /** Books keep all cores busy by themselves. */
    private static final int AT_ONCE = 1;
    /** A book with its coach's charts takes some 10 MB. */
    private static final int KEPT = 4;

    private static final int HUNDREDTHS = 100;
    /** Of a card that is one page, so many are laid on a sheet. */
    private static final int CARDS_A_SHEET = 4;

    private final Workroom room;
    private final MakeBook books;
    private final BookPrinter printer;
    private final HoleAlbum album;
    private final CourseWalk walks;
    private final MeasuringSheet measuring;
    private final Jobs jobs;

    public PrintBench(
            Workroom room,
            MakeBook books,
            BookPrinter printer,
            HoleAlbum album,
            CourseWalk walks,
            MeasuringSheet measuring,
            JobBoard board) {
        this.room = room;
        this.books = books;
        this.printer = printer;
        this.album = album;
        this.walks = walks;
        this.measuring = measuring;
        jobs = board.open(AT_ONCE, KEPT);
    }

    /**
     * What a book is made from.
     *
     * @param choice the round
     * @param day its day in words
     * @param stateOfPlay as {@link BookRequest#stateOfPlay()}
     */
    public record Order(PlanChoice choice, String day, LengthUnit unit, BookPrinter.Paper paper, boolean stateOfPlay) {
        private Order of(Shelf.Entry player) {
            return new Order(choice.withPlayer(player), day, unit, paper, stateOfPlay);
        }

        private String key() {
            return choice.key() + " " + unit + " " + stateOfPlay;
        }
    }

    /** What can be printed from a book that is made. */
    public enum Piece {
        BOOK,
        COACH,
        CARD,
        PENCIL,
        WEDGES
    }

    /** The book of one player. */
    public Job<MakeBook.Made> book(Order order) {
        String key = "book " + order.key();
        return jobs.submit(key, key, watch -> make(order, watch));
    }

    /** Books of several players as one zip of PDFs; the file lies in the work folder and may be gone another day. */
    public Job<Path> team(Order order, List<Shelf.Entry> players) {
        if (players.isEmpty()) {
            throw new UserFault("Tick the players of the team for whom books are to be printed.");
        }
        List<Order> orders = players.stream().map(order::of).toList();
        String key = "team " + String.join(" ", orders.stream().map(Order::key).toList()) + " " + order.paper();
        return jobs.submit(key, key, watch -> {
            Path zip = room.workFile("books-" + Integer.toHexString(key.hashCode()) + ".zip");
            WholeFile.write(zip, zipped(orders, watch));
            return zip;
        });
    }

    private MakeBook.Made make(Order order, Watch watch) {
        PlanChoice choice = order.choice();
        PlanRequest plan = choice.request(
                room.courseFile(choice.course().id(), choice.course().version()),
                room.playerFile(choice.player().id(), choice.player().version()));
        return books.make(new BookRequest(plan, order.day(), order.unit(), order.stateOfPlay()), watch);
    }

    private byte[] zipped(List<Order> orders, Watch watch) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            Set<String> names = new HashSet<>();
            for (int i = 0; i < orders.size(); i++) {
                int from = HUNDREDTHS * i / orders.size();
                int to = HUNDREDTHS * (i + 1) / orders.size();
                Order order = orders.get(i);
                MakeBook.Made made = make(order, new PartWatch(watch, from, to));
                ZipEntry entry = new ZipEntry(name(order.choice().player(), names) + ".pdf");
                entry.setTime(0); // the same books, the same bytes
                zip.putNextEntry(entry);
                zip.write(print(made, Piece.BOOK, order.paper()));
                zip.closeEntry();
                watch.at(to, HUNDREDTHS);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /** A name that every file system takes, told apart where two players share it. */
    private static String name(Shelf.Entry player, Set<String> taken) {
        String plain = player.name().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
        String name = taken.add(plain) ? plain : plain + "-" + player.id();
        taken.add(name);
        return name;
    }

    /** A piece of a book as PDF. */
    public byte[] print(MakeBook.Made made, Piece piece, BookPrinter.Paper paper) {
        Book book = made.book();
        return switch (piece) {
            case BOOK -> pdf(file -> printer.print(book, paper, file));
            case COACH ->
                pdf(file -> album.drawHoles(
                        "Coach's copy of " + made.plan().course().name(), made.charts(), file));
            case CARD -> cards(book, List.of(Book.Kind.CARD, Book.Kind.EXPECTATIONS), paper);
            case PENCIL -> cards(book, List.of(Book.Kind.PENCIL_CARD), paper);
            case WEDGES -> cards(book, List.of(Book.Kind.WEDGES), paper);
        };
    }

    /** The same cards until a sheet is full on both sides, to be cut apart. */
    private byte[] cards(Book book, List<Book.Kind> kinds, BookPrinter.Paper paper) {
        List<Book.Page> pages = new ArrayList<>();
        while (pages.size() < CARDS_A_SHEET) {
            kinds.forEach(kind -> pages.addAll(book.pages(kind)));
        }
        return pdf(file -> printer.print(new Book(book.title(), book.unit(), pages), paper, file));
    }

    /** A page of a book as SVG, counted from 0. */
    public String page(MakeBook.Made made, int number) {
        if (number < 0 || number >= made.book().pages().size()) {
            throw new UserFault("The book has no page " + (number + 1) + ".");
        }
        return printer.svg(made.book(), number);
    }

    /** The sheets for a walk round a course. */
    public byte[] walk(Shelf.Entry course, String tees, LengthUnit unit, BookPrinter.Paper paper) {
        Book sheets = walks.sheets(room.courseFile(course.id(), course.version()), tees, unit);
        return pdf(file -> printer.printSheets(sheets, paper, file));
    }

    /** The sheets of the measuring session. */
    public byte[] measuring(BookPrinter.Paper paper, ReadLengths lengths) {
        return pdf(file -> printer.printSheets(measuring.sheets(lengths), paper, file));
    }

    /** A report, whole or as the player's page. */
    public byte[] report(PlayerReport report, boolean whole, ReadLengths lengths, BookPrinter.Paper paper) {
        Book sheets = whole ? ReportSheets.full(report, lengths) : ReportSheets.page(report, lengths);
        return pdf(file -> printer.printReport(sheets, paper, file));
    }

    private byte[] pdf(Consumer<Path> print) {
        return room.withFile(new byte[0], ".pdf", file -> {
            print.accept(file);
            try {
                return Files.readAllBytes(file);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }
}
