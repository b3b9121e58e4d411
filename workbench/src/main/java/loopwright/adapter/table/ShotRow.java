package loopwright.adapter.table;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import loopwright.player.Club;
import loopwright.player.Setting;

/** One row of a shot list, read but not yet numbered by session. */
record ShotRow(
        Club club,
        String effort,
        OptionalDouble carryMetres,
        OptionalDouble totalMetres,
        OptionalDouble sideMetres,
        Setting setting,
        String session,
        Optional<LocalDate> date) {}
