package loopwright.adapter.table;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import loopwright.player.Club;
import loopwright.player.Setting;
import loopwright.player.Zone;

/** One row of counted balls, read but not yet numbered by session. */
record CountRow(
        Club club,
        String effort,
        Map<Zone, Integer> balls,
        Setting setting,
        String session,
        Optional<LocalDate> date) {}
