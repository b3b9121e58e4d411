-- Drills as they were played: the score is in the points of the drill of that name.
CREATE TABLE drill (
    id TEXT PRIMARY KEY,
    player TEXT NOT NULL REFERENCES document (id),
    day TEXT NOT NULL,
    drill TEXT NOT NULL,
    score INTEGER NOT NULL,
    minutes INTEGER NOT NULL,
    note TEXT NOT NULL,
    added BIGINT NOT NULL
);
CREATE INDEX drill_of_player ON drill (player, day);
