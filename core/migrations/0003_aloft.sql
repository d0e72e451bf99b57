-- What a climb leaves behind: near misses, what was found aloft, work not done.
CREATE TABLE near_miss (
    id TEXT PRIMARY KEY,
    parent TEXT,
    site TEXT,
    ord REAL NOT NULL,
    gone INTEGER NOT NULL,
    "what" TEXT,
    "at" TEXT,
    "by" TEXT
) STRICT;
CREATE INDEX near_miss_parent ON near_miss (parent);
CREATE INDEX near_miss_site ON near_miss (site);
ALTER TABLE finding ADD COLUMN "aloft" INTEGER;
ALTER TABLE work ADD COLUMN "outcome" TEXT;
