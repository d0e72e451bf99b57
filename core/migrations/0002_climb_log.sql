-- The log of climbs of a person.
CREATE TABLE logged_climb (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "on" TEXT,
    "place" TEXT,
    "height_m" REAL,
    "system" TEXT,
    "with_whom" TEXT,
    "note" TEXT
) STRICT;
CREATE INDEX logged_climb_parent ON logged_climb (parent);
