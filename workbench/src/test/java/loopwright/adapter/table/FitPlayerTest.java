package loopwright.adapter.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import loopwright.action.CountText;
import loopwright.action.FitPlayer;
import loopwright.action.FitResult;
import loopwright.action.FitResult.ClubResult;
import loopwright.action.Interview;
import loopwright.action.MeasuringSheet;
import loopwright.action.ReadLengths;
import loopwright.action.UserFault;
import loopwright.numerics.Watch;
import loopwright.player.Club;
import loopwright.player.ClubTable;
import loopwright.player.Habit;
import loopwright.player.Player;
import loopwright.player.PlayerPrior;
import loopwright.player.PlayerProfile;
import loopwright.player.Setting;
import loopwright.units.Distance;
import org.assertj.core.util.DoubleComparator;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Players from interviews, counts and real shot lists, through the real files. */
class FitPlayerTest {
    private final FitPlayer action = new FitPlayer(
            new ShotCsv(), new JsonPlayerFiles(), new JsonResultFile(), (player, shots, lengths, target) -> {});

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"golfer-1.csv", "golfer-4.csv", "golfer-6.csv"})
    void realShotListsAreFitted(String file) throws IOException {
        Path shots = sharedShots(file);
        assumeTrue(shots != null, "the shared shot lists are not beside this checkout");
        int rows = Files.readAllLines(shots).size() - 1;

        FitResult result = fit(interview(95, 0, Player.Hand.RIGHT), List.of(shots));

        assertThat(result.clubs().stream().mapToInt(ClubResult::balls).sum()).isEqualTo(rows);
        assertThat(result.clubs()).anyMatch(c -> c.source().equals("from the trend"));
        // fourteen with the putter
        assertThat(result.clubs().stream().map(ClubResult::club).distinct()).hasSizeLessThanOrEqualTo(13);
        assertThat(result.clubs()).allSatisfy(FitPlayerTest::isSane);
        PlayerProfile read = new JsonPlayerFiles().read(folder.resolve("player.json"));
        assertThat(read.player().swings()).hasSameSizeAs(result.clubs());
    }

    @Test
    void womanWhoCarries130GetsABagOfWoodsAndFlatLongClubs() {
        FitResult result = fit(interview(100, 130, Player.Hand.RIGHT), List.of());

        assertThat(result.clubs())
                .extracting(ClubResult::club)
                .contains("7-wood", "5-hybrid")
                .doesNotContain("4-iron", "6-iron");
        assertThat(carry(result, "7-iron")).isBetween(75.0, 90.0);
        assertThat(carry(result, "5-hybrid") - carry(result, "6-hybrid")).isLessThan(6);
        assertThat(result.clubs()).allSatisfy(FitPlayerTest::isSane);
        assertThat(result.notes()).anyMatch(n -> n.contains("every number below is assumed"));
    }

    @Test
    void juniorWithSixClubsGetsPatternsForThese() {
        Interview junior = new Interview(
                "junior",
                Player.Hand.RIGHT,
                OptionalDouble.of(115),
                List.of(),
                Optional.of(Distance.ofYards(110)),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                List.of(club("driver"), club("5-hybrid"), club("7-iron"), club("9-iron"), club("sw"), club("putter")));

        FitResult result = fit(junior, List.of());

        assertThat(result.clubs())
                .extracting(ClubResult::club)
                .doesNotContain("putter")
                .contains("sand wedge");
        assertThat(carry(result, "sand wedge")).isBetween(35.0, 48.0);
        assertThat(result.clubs()).allSatisfy(FitPlayerTest::isSane);
    }

    @Test
    void leftHandedScratchPlayerIsTighterThanAHundredGolfer() {
        FitResult scratch = fit(interview(73, 255, Player.Hand.LEFT), List.of());
        FitResult hundred = fit(interview(100, 255, Player.Hand.RIGHT), List.of());

        assertThat(scratch.hand()).isEqualTo("left");
        assertThat(scratch.clubs().get(0).eightInTenPercent())
                .isLessThan(0.75 * hundred.clubs().get(0).eightInTenPercent());
        // an interview's interval is wide: the width may be a third less or half as much again
        FitResult.Range width = scratch.clubs().get(0).eightInTenYards();
        assertThat(width.high() / width.low()).isGreaterThan(1.8);
        // no ball, nothing measured: neither chance nor the sampler may say otherwise
        assertThat(scratch.clubs()).allSatisfy(c -> assertThat(c.assumedShare()).isEqualTo(1));
    }

    @Test
    void whatTheMishitsAreIsSaidForTheClubThatIsMishitMost() {
        FitResult result = fit(interview(102, 175, Player.Hand.RIGHT), List.of());

        assertThat(result.notes())
                .anyMatch(n -> n.contains("most of them no disaster: of 4")
                        && n.contains("thin and fly 78 % as far")
                        && n.contains("topped and fly 22 % as far"));
    }

    @Test
    void bagsThatNobodyPlaysAreRefused() {
        assertThatThrownBy(() -> Interview.checkBag(List.of(club("driver"), club("7-iron"), club("driver"))))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("The driver is named twice");
        assertThatThrownBy(() -> Interview.checkBag(List.of(club("putter"))))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("a putter alone");
    }

    /** Seventy drives from all over: the width is known to a sixth, whatever of them was solid. */
    @Test
    void aWildPlayersManyBallsAreMeasuredAlthoughSolidAndMishitsRunTogether() {
        Path shots = sharedShots("golfer-4.csv");
        assumeTrue(shots != null, "the shared shot lists are not beside this checkout");
        ClubResult driver =
                fit(interview(85, 0, Player.Hand.RIGHT), List.of(shots)).clubs().get(0);

        assertThat(driver.balls()).isEqualTo(73);
        assertThat(driver.assumedShare()).isLessThan(0.5);
    }

    @Test
    void countsAndAnInterviewMix() {
        FitPlayer.Request request = new FitPlayer.Request(
                interview(100, 195, Player.Hand.RIGHT),
                List.of(),
                Map.of(),
                Setting.COURSE,
                CountText.parse("20 drives: 5 inside 30 yd, 14 right, 1 topped", Setting.COURSE, 0),
                List.of(),
                Habit.USUAL,
                1);
        ClubResult driver = action.fit(request, nowhere(), Watch.NONE).clubs().get(0);

        assertThat(driver.balls()).isEqualTo(20);
        assertThat(driver.biasDegrees().low()).isPositive();
    }

    @Test
    void sentencesInAFileCountAsTheTableDoes() throws IOException {
        Path table =
                Files.writeString(folder.resolve("counts.csv"), "club,strip_yd,inside,right,topped\ndriver,30,6,3,1\n");
        Path sentences = Files.writeString(
                folder.resolve("counts.txt"), "# Tuesday\n\n10 drives: 6 inside 30 yd, 3 right, 1 topped\n");

        FitResult ofTable = fit(interview(95, 200, Player.Hand.RIGHT), List.of(table));
        FitResult ofSentences = fit(interview(95, 200, Player.Hand.RIGHT), List.of(sentences));

        assertThat(ofSentences.clubs()).isEqualTo(ofTable.clubs());
        assertThat(ofTable.notes())
                .anyMatch(n -> n.contains("understood club, strip_yd, inside, right, topped"))
                .anyMatch(n -> n.equals("Counted: driver on the range, 10 balls: 6 inside a strip 30 yd wide,"
                        + " 3 right of a strip 30 yd wide, 1 topped."));
    }

    @ParameterizedTest
    @ValueSource(strings = {"club,inside,right\ndriver,6,3\n", "club,strip,inside,right\ndriver,30,6,3\n"})
    void aStripWithoutItsWidthIsToldOnce(String text) throws IOException {
        Path table = Files.writeString(folder.resolve("counts.csv"), text);

        assertThatThrownBy(() -> fit(interview(95, 200, Player.Hand.RIGHT), List.of(table)))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("line 1 lacks a column strip_yd or strip_m")
                .hasMessageContaining("beside inside");
    }

    @Test
    void aSentenceThatCannotBeReadIsToldWithItsLine() throws IOException {
        Path sentences =
                Files.writeString(folder.resolve("counts.txt"), "driver: 6 inside 30 yd\n7-iron: 3 shrt of 140 yd\n");

        assertThatThrownBy(() -> fit(interview(95, 200, Player.Hand.RIGHT), List.of(sentences)))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("line 2: The count")
                .hasMessageContaining("\"shrt\" is unknown");
    }

    @Test
    void aCountedClubTakesThePlaceOfAnUnseenOneInAFullUsualBag() throws IOException {
        Path counts = Files.writeString(folder.resolve("counts.txt"), "4-iron: 6 inside 30 yd, 4 right\n");

        FitResult result = fit(interview(90, 220, Player.Hand.RIGHT), List.of(counts));

        assertThat(result.clubs().stream().map(ClubResult::club).distinct())
                .hasSize(13)
                .contains("4-iron", "5-iron", "5-wood")
                .doesNotContain("4-hybrid");
    }

    @Test
    void aFileNamedTwiceIsRefused() throws IOException {
        Path session = Files.writeString(folder.resolve("session.csv"), "club,carry_yd\n7-iron,140\n");

        assertThatThrownBy(() -> fit(interview(90, 220, Player.Hand.RIGHT), List.of(session, session)))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("session.csv is named twice");
    }

    @Test
    void fifteenClubsAreRefusedWithTheRule() {
        List<Club> fourteen = Stream.of(
                        "driver", "3w", "5w", "7w", "4h", "5i", "6i", "7i", "8i", "9i", "pw", "52", "56", "60")
                .map(FitPlayerTest::club)
                .toList();

        assertThatThrownBy(() -> new Interview(
                        "much",
                        Player.Hand.RIGHT,
                        OptionalDouble.of(90),
                        List.of(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        OptionalDouble.empty(),
                        fourteen))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("15 clubs with the putter; Rule 4.1b allows 14. Leave out one of driver");
    }

    @Test
    void filledInSheetIsReadBack() throws IOException {
        Path sheet = folder.resolve("sheet.csv");
        new MeasuringSheet(new PlainTextFile()).write(sheet, ReadLengths.USUAL);
        String filled = Files.readString(sheet)
                .replace("7-iron,full,,,", "7-iron,full,131,-4,")
                .replace("pitching wedge,half,,,", "pitching wedge,half,58,2,");
        Files.writeString(sheet, filled);

        FitResult result = fit(interview(95, 0, Player.Hand.RIGHT), List.of(sheet));

        assertThat(balls(result, "7-iron", "full")).isEqualTo(15);
        assertThat(balls(result, "pitching wedge", "half")).isEqualTo(6);
        assertThat(balls(result, "driver", "full")).isZero();
    }

    @Test
    void chipsAndPuttsOfASessionMoveThePlayer() throws IOException {
        Path session = Files.writeString(
                folder.resolve("session.csv"),
                "club,carry_yd,side_yd,to_hole_yd,to_hole_ft,holed,leave_ft,drill\n"
                        + "chip,,,12,,,14,\nchip,,,12,,,11,\nchip,,,12,,,16,\nchip,,,12,,,9,\n".repeat(5)
                        + "putt,,,,6,no,1,yes\nputt,,,,6,yes,,yes\n".repeat(20));

        FitResult result = fit(interview(95, 200, Player.Hand.RIGHT), List.of(session));

        FitResult.ShortResult chip = result.shortGame().get(0);
        assertThat(chip.balls()).isEqualTo(20);
        // every chip stopped 9 to 16 ft away, every second one of the level within some 6: wider than the level
        assertThat(chip.spread().low()).isGreaterThan(1);
        assertThat(result.shortGame().get(1).spread().middle())
                .isBetween(1.0, chip.spread().middle());
        assertThat(Objects.requireNonNull(result.putting()).startLineDegrees()).isNotNull();
        assertThat(result.notes()).anyMatch(n -> n.contains("No full shot was measured"));
        Player read = new JsonPlayerFiles().read(folder.resolve("player.json")).player();
        assertThat(read.touchShots().get(0).evidence().balls()).isEqualTo(20);
        assertThat(read.putting().evidence()).isEqualTo(40);
    }

    @Test
    void withoutShortShotsTheLevelStays() {
        FitResult result = fit(interview(95, 200, Player.Hand.RIGHT), List.of());
        assertThat(result.shortGame())
                .allSatisfy(s -> assertThat(s.assumedShare()).isEqualTo(1));
        Player read = new JsonPlayerFiles().read(folder.resolve("player.json")).player();
        Player level = PlayerPrior.of(95, Player.Hand.RIGHT)
                .withDriverCarry(Distance.ofYards(200))
                .player("p");
        assertThat(read.touchShots())
                .usingRecursiveComparison()
                .withComparatorForType(new DoubleComparator(1e-12), Double.class) // angles are written in degrees
                .isEqualTo(level.touchShots());
    }

    @Test
    void absurdAnswersAreTold() {
        assertThatThrownBy(() -> interview(900, 0, Player.Hand.RIGHT))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("900");
        assertThatThrownBy(() -> new Interview(
                        "x",
                        Player.Hand.RIGHT,
                        OptionalDouble.empty(),
                        List.of(7),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        OptionalDouble.empty(),
                        List.of()))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining("score of 7");
    }

    private FitResult fit(Interview interview, List<Path> files) {
        FitPlayer.Request request =
                new FitPlayer.Request(interview, files, Map.of(), Setting.RANGE, List.of(), List.of(), Habit.USUAL, 1);
        return action.fit(
                request,
                new FitPlayer.Targets(Optional.of(folder.resolve("player.json")), Optional.empty(), Optional.empty()),
                Watch.NONE);
    }

    private static FitPlayer.Targets nowhere() {
        return new FitPlayer.Targets(Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static Interview interview(double level, double driverYards, Player.Hand hand) {
        return new Interview(
                "p",
                hand,
                OptionalDouble.of(level),
                List.of(),
                driverYards > 0 ? Optional.of(Distance.ofYards(driverYards)) : Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                List.of());
    }

    /** Ordered intervals, a width of 8 of 10 between a twentieth and the whole of the carry, mishits under half. */
    private static void isSane(ClubResult c) {
        assertThat(c.carryYards().low()).isPositive().isLessThan(c.carryYards().high());
        assertThat(c.eightInTenPercent()).as(c.club()).isBetween(5.0, 60.0);
        assertThat(c.nineteenInTwentyYards().middle())
                .isGreaterThan(c.eightInTenYards().middle());
        assertThat(c.mishitRate().middle()).isBetween(0.0, 0.5);
        assertThat(c.totalYards().middle())
                .isGreaterThanOrEqualTo(c.carryYards().middle());
    }

    private static double carry(FitResult result, String club) {
        return result.clubs().stream()
                .filter(c -> c.club().equals(club) && c.effort().equals("full"))
                .findFirst()
                .orElseThrow()
                .carryYards()
                .middle();
    }

    private static int balls(FitResult result, String club, String effort) {
        return result.clubs().stream()
                .filter(c -> c.club().equals(club) && c.effort().equals(effort))
                .findFirst()
                .orElseThrow()
                .balls();
    }

    private static Club club(String name) {
        return ClubTable.find(name).orElseThrow();
    }

    private static @Nullable Path sharedShots(String file) {
        for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
            Path found = at.resolve("shared").resolve("shots").resolve(file);
            if (Files.isRegularFile(found)) {
                return found;
            }
        }
        return null;
    }
}
