-- Courses and players: a document is what its newest version says; versions are never changed.
CREATE TABLE document (
    id TEXT PRIMARY KEY,
    kind TEXT NOT NULL
);
CREATE TABLE document_version (
    document TEXT NOT NULL REFERENCES document (id),
    version INTEGER NOT NULL,
    name TEXT NOT NULL,
    note TEXT NOT NULL,
    made BIGINT NOT NULL,
    body TEXT NOT NULL,
    PRIMARY KEY (document, version)
);
CREATE TABLE answer (
    player TEXT NOT NULL REFERENCES document (id),
    question TEXT NOT NULL,
    answer TEXT NOT NULL,
    PRIMARY KEY (player, question)
);
-- Lists of shots and putts as delivered: ball, surface, session, temperature are columns of their text.
CREATE TABLE list (
    id TEXT PRIMARY KEY,
    player TEXT NOT NULL REFERENCES document (id),
    kind TEXT NOT NULL,
    name TEXT NOT NULL,
    setting TEXT NOT NULL,
    body TEXT NOT NULL,
    added BIGINT NOT NULL
);
CREATE TABLE hole_location (
    course TEXT NOT NULL REFERENCES document (id),
    day TEXT NOT NULL,
    hole INTEGER NOT NULL,
    location TEXT NOT NULL,
    PRIMARY KEY (course, day, hole)
);
CREATE TABLE plan (
    player TEXT NOT NULL REFERENCES document (id),
    player_version INTEGER NOT NULL,
    course TEXT NOT NULL REFERENCES document (id),
    course_version INTEGER NOT NULL,
    inputs TEXT NOT NULL,
    seed BIGINT NOT NULL,
    engine TEXT NOT NULL,
    score_mean DOUBLE PRECISION NOT NULL,
    score_sd DOUBLE PRECISION NOT NULL,
    target_chance DOUBLE PRECISION NOT NULL,
    habit_mean DOUBLE PRECISION NOT NULL,
    made BIGINT NOT NULL,
    PRIMARY KEY (player, player_version, course, course_version, inputs, seed)
);
CREATE TABLE preference (
    name TEXT PRIMARY KEY,
    value TEXT NOT NULL
);
