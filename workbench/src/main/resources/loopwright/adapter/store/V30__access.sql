-- Who may log in; of a password only a slow hash is kept. Accounts are in no export.
CREATE TABLE account (
    id TEXT PRIMARY KEY,
    name TEXT NOT NULL,
    -- the name in small letters: two accounts differ by more than that
    login TEXT NOT NULL UNIQUE,
    role TEXT NOT NULL,
    secret TEXT NOT NULL,
    made BIGINT NOT NULL
);
-- Players an account may see.
CREATE TABLE player_grant (
    account TEXT NOT NULL REFERENCES account (id),
    player TEXT NOT NULL,
    PRIMARY KEY (account, player)
);
-- Invitations under the hash of their token.
CREATE TABLE invitation (
    token TEXT PRIMARY KEY,
    role TEXT NOT NULL,
    player TEXT NOT NULL,
    expires BIGINT NOT NULL
);
-- What was changed by whom.
CREATE TABLE change_log (
    at BIGINT NOT NULL,
    who TEXT NOT NULL,
    what TEXT NOT NULL,
    subject TEXT NOT NULL,
    outcome INTEGER NOT NULL
);
CREATE INDEX change_log_at ON change_log (at);
