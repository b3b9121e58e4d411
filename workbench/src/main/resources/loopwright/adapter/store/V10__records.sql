-- What a player has done and agreed: rounds as written down, lessons, breaks, forecasts. Days are year-month-day.
CREATE TABLE intake (
    player TEXT NOT NULL REFERENCES document (id),
    item TEXT NOT NULL,
    answer TEXT NOT NULL,
    PRIMARY KEY (player, item)
);
-- The body is a table in the form of docs/rounds.md; the other columns say what it holds, so that lists need not read it.
CREATE TABLE played_round (
    id TEXT PRIMARY KEY,
    player TEXT NOT NULL REFERENCES document (id),
    day TEXT NOT NULL,
    course TEXT NOT NULL,
    tees TEXT NOT NULL,
    holes INTEGER NOT NULL,
    score INTEGER,
    tier TEXT NOT NULL,
    lesson INTEGER NOT NULL,
    body TEXT NOT NULL,
    added BIGINT NOT NULL
);
CREATE INDEX played_round_of_player ON played_round (player, day);
CREATE TABLE lesson (
    id TEXT PRIMARY KEY,
    player TEXT NOT NULL REFERENCES document (id),
    day TEXT NOT NULL,
    notes TEXT NOT NULL,
    agreed TEXT NOT NULL,
    homework TEXT NOT NULL,
    due TEXT NOT NULL,
    done INTEGER NOT NULL,
    added BIGINT NOT NULL
);
CREATE TABLE dated_break (
    player TEXT NOT NULL REFERENCES document (id),
    day TEXT NOT NULL,
    reason TEXT NOT NULL,
    PRIMARY KEY (player, day)
);
CREATE TABLE forecast (
    id TEXT PRIMARY KEY,
    player TEXT NOT NULL REFERENCES document (id),
    day TEXT NOT NULL,
    course TEXT NOT NULL,
    tees TEXT NOT NULL,
    holes INTEGER NOT NULL,
    target INTEGER NOT NULL,
    score_mean DOUBLE PRECISION NOT NULL,
    score_sd DOUBLE PRECISION NOT NULL,
    target_chance DOUBLE PRECISION NOT NULL,
    engine TEXT NOT NULL,
    added BIGINT NOT NULL
);
-- Local rules of a day on a course, as the committee words them.
CREATE TABLE local_rules (
    course TEXT NOT NULL REFERENCES document (id),
    day TEXT NOT NULL,
    rules TEXT NOT NULL,
    PRIMARY KEY (course, day)
);
