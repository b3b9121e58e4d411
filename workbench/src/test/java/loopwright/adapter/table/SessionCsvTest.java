package loopwright.adapter.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import loopwright.action.LengthUnit;
import loopwright.action.MeasuringSheet;
import loopwright.action.ReadLengths;
import loopwright.action.ShotImport;
import loopwright.action.UserFault;
import loopwright.player.BallCount;
import loopwright.player.Mishit;
import loopwright.player.Setting;
import loopwright.player.TouchBall;
import loopwright.player.TouchShot;
import loopwright.player.Zone;
import loopwright.putting.LoggedPutt;
import loopwright.units.Distance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Counted balls and the short game, read as the shots beside them are. */
class SessionCsvTest {
    @TempDir
    Path folder;

    private ShotImport read(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("session.csv"), text);
        return new ShotCsv().read(List.of(file), Map.of(), Setting.RANGE);
    }

    @Test
    void countsOfEachClubAreZonesOfOneSession() throws IOException {
        ShotImport read = read("""
                club;strip_yd;inside;left;right;topped;flag_yd;short;level;long
                driver;30;6;;3;1;;;;
                7-iron;;;;;;140;3;5;2
                """);
        double strip = Distance.ofYards(30).metres();
        double flag = Distance.ofYards(140).metres();
        assertThat(read.log().counts().stream().filter(c -> c.club().name().equals("driver")))
                .extracting(BallCount::zone)
                .containsExactlyInAnyOrder(Zone.inside(strip), Zone.rightOf(strip), Zone.mishit(Mishit.Kind.TOPPED));
        assertThat(read.log().counts().stream().filter(c -> c.club().name().equals("7-iron")))
                .extracting(BallCount::zone, BallCount::balls)
                .containsExactlyInAnyOrder(
                        tuple(Zone.shortOf(flag), 3), tuple(Zone.level(flag), 5), tuple(Zone.longOf(flag), 2));
        assertThat(read.log().counts()).extracting(BallCount::session).containsOnly(0);
        assertThat(read.notes().get(0)).contains("20 counted balls");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "club,inside,right;driver,6,3 | line 1 | the width of the strip",
                "club,strip_yd,inside,flag_yd,short;driver,30,6,140,2 | line 2, column 5 (short) | in a row of its own",
                "club,strip_yd,inside,balls;driver,30,6,10 | line 2, column 4 (balls): \"10\" | add up to, 6",
                "club,strip_yd,inside;driver,30,six | line 2, column 3 (inside): \"six\" | a whole number from 0 to 500",
                "club,strip_yd,inside;spoon,30,6 | line 2, column 1 (club): \"spoon\" | a club"
            })
    void aBadCountIsNamedWithItsPlace(String text, String place, String accepted) {
        assertThatThrownBy(() -> read(text.replace(';', '\n')))
                .isInstanceOf(UserFault.class)
                .hasMessageContaining(place)
                .hasMessageContaining(accepted);
    }

    @Test
    void theShortGameIsReadBesideTheShots() throws IOException {
        ShotImport read = read("""
                club,carry_yd,side_yd,to_hole_yd,to_hole_ft,holed,leave_ft,mishit,miss,drill,lie
                7-iron,150,-4,,,,,,,,
                chip,,,12,,,6,,,,rough
                chip,,,12,,yes,,,,,
                sand,,,10,,,,fat,,,
                putt,,,,6,no,1,,left,yes,
                putt,,,,6,,,,,yes,
                """);
        assertThat(read.log().shots()).hasSize(1);
        assertThat(read.touch())
                .extracting(TouchBall::kind)
                .containsExactly(TouchShot.Kind.CHIP, TouchShot.Kind.CHIP, TouchShot.Kind.BUNKER_SHOT);
        assertThat(read.touch().get(0).leaveMetres().getAsDouble()).isCloseTo(1.8288, within(1e-9)); // six feet
        assertThat(read.touch().get(2).mishit()).contains(Mishit.Kind.LEFT_IN_SAND);
        assertThat(read.putts()).hasSize(1);
        assertThat(read.putts().get(0).straightDrill()).isTrue();
        assertThat(read.putts().get(0).side()).isEqualTo(LoggedPutt.Side.LEFT);
        assertThat(read.notes()).anyMatch(n -> n.contains("1 row set aside: nothing was filled in"));
    }

    @Test
    void theMeasuringSheetIsReadBackWhole() throws IOException {
        Path sheet = folder.resolve("sheet.csv");
        new MeasuringSheet(new PlainTextFile()).write(sheet, ReadLengths.USUAL);
        List<String> filled = Files.readAllLines(sheet).stream()
                .map(line -> line.startsWith("club")
                        ? line
                        : line.replace(",,,range", ",120,-3,range").replace("12,,,,,,", "12,,,5,,,"))
                .map(line -> line.startsWith("putt") ? line.replaceFirst("(6|30),,", "$1,no,2") : line)
                .toList();
        Files.write(sheet, filled);
        ShotImport read = new ShotCsv().read(List.of(sheet), Map.of(), Setting.RANGE);
        assertThat(read.log().shots()).hasSize(45);
        assertThat(read.touch()).hasSize(12);
        assertThat(read.putts()).hasSize(12);
        assertThat(read.putts().stream().filter(LoggedPutt::straightDrill)).hasSize(6);
        assertThat(read.notes()).noneMatch(n -> n.contains("not used"));
    }

    @Test
    void aMeasuringSheetInMetresIsReadBackWhole() throws IOException {
        Path sheet = folder.resolve("sheet.csv");
        ReadLengths metres = new ReadLengths(LengthUnit.METRES, true);
        MeasuringSheet session = new MeasuringSheet(new PlainTextFile());
        assertThat(session.description(metres)).noneMatch(line -> line.matches(".*\\d (yd|ft)\\b.*"));
        session.write(sheet, metres);
        List<String> filled = Files.readAllLines(sheet).stream()
                .map(line -> line.startsWith("club")
                        ? line
                        : line.replace(",,,range", ",120,-3,range").replaceFirst("11,,,", "11,,5,"))
                .map(line -> line.startsWith("putt") ? line.replaceFirst("(2|9),,,", "$1,no,2,") : line)
                .toList();
        Files.write(sheet, filled);
        ShotImport read = new ShotCsv().read(List.of(sheet), Map.of(), Setting.RANGE);
        assertThat(read.log().shots()).hasSize(45).allMatch(s -> s.carryMetres().orElse(0) == 120);
        assertThat(read.touch()).hasSize(12);
        assertThat(read.touch().get(0).leaveMetres().getAsDouble()).isEqualTo(5);
        assertThat(read.putts()).hasSize(12);
        assertThat(read.putts().get(0).metres()).isEqualTo(2);
        assertThat(read.notes()).noneMatch(n -> n.contains("not used"));
    }
}
