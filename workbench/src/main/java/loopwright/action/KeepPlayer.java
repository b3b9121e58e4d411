package loopwright.action;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import loopwright.numerics.Watch;
import loopwright.player.ShotLog;

/** Makes and mends the players of the bench from what they answer and from the lists they deliver. */
public final class KeepPlayer {
    /** Where nobody stated the speed of the practice green: 10 ft, a common practice value (no source). */
    private static final long SEED = 1;

    private static final int KEPT_RESULTS = 50;

    private final Workroom room;
    private final PlayerFiles players;
    private final FitPlayer fitting;
    private final PuttFitting putting;
    private final PatternPictures pictures;
    private final Map<String, FitResult> results = new LinkedHashMap<>() {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, FitResult> eldest) {
            return size() > KEPT_RESULTS;
        }
    };

    public KeepPlayer(
            Workroom room, PlayerFiles players, FitPlayer fitting, PuttFitting putting, PatternPictures pictures) {
        this.room = room;
        this.players = players;
        this.fitting = fitting;
        this.putting = putting;
        this.pictures = pictures;
    }

    /** A new player from an interview alone. */
    public Shelf.Document add(InterviewAnswers answers) {
        Fitted fitted = fit(answers, List.of(), List.of());
        Shelf.Document kept = room.store().players().add(fitted.name(), fitted.text(), "interview");
        room.store().setAnswers(kept.id(), answers.answers());
        remember(kept, fitted);
        return kept;
    }

    /**
     * Fits a player again to his answers and all of his lists.
     *
     * @param seen the version that the person looked at
     */
    public Shelf.Document change(String id, int seen, InterviewAnswers answers, String note) {
        Fitted fitted = fit(answers, room.store().listLists(id), breaks(id));
        Shelf.Document kept = room.store().players().change(id, seen, fitted.name(), fitted.text(), note);
        room.store().setAnswers(id, answers.answers());
        remember(kept, fitted);
        return kept;
    }

    /**
     * Fits a player again to what is kept of him, after a break was added or taken out.
     *
     * @return the new version; empty where no dated shots are kept, and a break therefore changes nothing
     */
    public Optional<Shelf.Document> refit(String id, String note) {
        if (!isDated(room.store().listLists(id))) {
            return Optional.empty();
        }
        InterviewAnswers answers = answersOf(id);
        return Optional.of(change(id, room.store().players().get(id).version(), answers, note));
    }

    /** What he answered; of a player who came as a file, what the file says. */
    public InterviewAnswers answersOf(String id) {
        Map<String, String> answers = room.store().listAnswers(id);
        return answers.isEmpty()
                ? InterviewAnswers.of(
                        room.player(id, room.store().players().get(id).version()))
                : new InterviewAnswers(answers);
    }

    /** Takes in a list; it is read through first, and nothing is kept of one that cannot be used. */
    public Shelf.Document addList(String id, int seen, KeptList.Kind kind, String name, String text) {
        InterviewAnswers answers = answersOf(id);
        List<KeptList> lists = new ArrayList<>(room.store().listLists(id));
        lists.add(new KeptList("new", kind, name, answers.get("on"), text, java.time.Instant.EPOCH));
        Fitted fitted = fit(answers, lists, breaks(id));
        Shelf.Document kept =
                room.store().players().change(id, seen, fitted.name(), fitted.text(), kind.word() + " from " + name);
        room.store().addList(id, kind, name, answers.get("on"), text);
        remember(kept, fitted);
        return kept;
    }

    /** The numbers with their intervals of the fit that made a version, if it was made since the bench started. */
    public synchronized Optional<FitResult> findResult(Shelf.Entry version) {
        return Optional.ofNullable(results.get(key(version)));
    }

    /** The patterns of a version as a picture, SVG; of the newest with the balls it was fitted to. */
    public String patterns(String id, int version, LengthUnit lengths) {
        boolean newest = room.store().players().get(id).version() == version;
        ShotLog balls = newest ? balls(id) : ShotLog.EMPTY;
        return room.withFile(new byte[0], ".svg", file -> {
            pictures.drawPatterns(room.player(id, version).player(), balls, lengths, file);
            return read(file);
        });
    }

    private ShotLog balls(String id) {
        InterviewAnswers answers = answersOf(id);
        return inFolder(folder ->
                fitting.shots(files(room.store().listLists(id), KeptList.Kind.SHOTS, folder), answers.setting()));
    }

    private interface InFolder<T> {
        T work(Path folder) throws IOException;
    }

    /** Works in a folder that is gone afterwards. */
    private static <T> T inFolder(InFolder<T> work) {
        try {
            Path folder = Files.createTempDirectory("loopwright-fit");
            try {
                return work.work(folder);
            } finally {
                erase(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private synchronized void remember(Shelf.Document kept, Fitted fitted) {
        results.put(key(kept.entry()), fitted.result());
    }

    private static String key(Shelf.Entry version) {
        return version.id() + "." + version.version();
    }

    private record Fitted(String name, String text, FitResult result) {}

    private List<LocalDate> breaks(String id) {
        return List.copyOf(room.store().records().listBreaks(id).keySet());
    }

    /** Breaks count where shots are dated; a list without dates cannot tell what lies behind them. */
    private static List<LocalDate> counting(List<LocalDate> breaks, List<KeptList> lists) {
        return isDated(lists) ? breaks : List.of();
    }

    private static boolean isDated(List<KeptList> lists) {
        return lists.stream()
                .filter(l -> l.kind() == KeptList.Kind.SHOTS)
                .anyMatch(l -> l.text()
                        .lines()
                        .findFirst()
                        .orElse("")
                        .toLowerCase(Locale.ROOT)
                        .contains("date"));
    }

    private Fitted fit(InterviewAnswers answers, List<KeptList> lists, List<LocalDate> breaks) {
        return inFolder(folder -> {
            try {
                return fit(answers, lists, counting(breaks, lists), folder);
            } catch (UserFault e) {
                throw new UserFault(named(String.valueOf(e.getMessage()), lists, folder), e);
            }
        });
    }

    private Fitted fit(InterviewAnswers answers, List<KeptList> lists, List<LocalDate> breaks, Path folder)
            throws IOException {
        Path player = folder.resolve("player.json");
        FitPlayer.Request request = new FitPlayer.Request(
                answers.interview(),
                files(lists, KeptList.Kind.SHOTS, folder),
                Map.of(),
                answers.setting(),
                answers.counts(),
                breaks,
                answers.habit(),
                SEED);
        FitResult result = fitting.fit(
                request, new FitPlayer.Targets(Optional.of(player), Optional.empty(), Optional.empty()), Watch.NONE);
        for (Path file : files(lists, KeptList.Kind.PUTTS, folder)) {
            fitPutts(file, player);
        }
        return new Fitted(players.read(player).player().name(), read(player), named(result, lists, folder));
    }

    private static FitResult named(FitResult result, List<KeptList> lists, Path folder) {
        return result.withNotes(
                result.notes().stream().map(n -> named(n, lists, folder)).toList());
    }

    /** Speaks of lists by the names they were delivered under. */
    private static String named(String words, List<KeptList> lists, Path folder) {
        String out = words;
        for (KeptList.Kind kind : KeptList.Kind.values()) {
            List<KeptList> some = lists.stream().filter(l -> l.kind() == kind).toList();
            for (int i = 0; i < some.size(); i++) {
                out = out.replace(file(folder, kind, i).toString(), some.get(i).name());
            }
        }
        return out;
    }

    private static Path file(Path folder, KeptList.Kind kind, int number) {
        return folder.resolve(kind.word() + "-" + number + ".csv");
    }

    private void fitPutts(Path file, Path player) {
        PuttImport read = putting.read(file);
        double level = players.read(player).player().level();
        putting.withPutting(
                player,
                putting.fit(file, read, false, level, PlanDay.USUAL.greens()).skill(),
                player);
    }

    /** The lists of a kind as files; putts of several lists are one file each, the newest deciding. */
    private static List<Path> files(List<KeptList> lists, KeptList.Kind kind, Path folder) throws IOException {
        List<Path> out = new ArrayList<>();
        for (KeptList list : lists) {
            if (list.kind() == kind) {
                Path file = file(folder, kind, out.size());
                Files.writeString(file, list.text(), StandardCharsets.UTF_8);
                out.add(file);
            }
        }
        return out;
    }

    private static String read(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void erase(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
