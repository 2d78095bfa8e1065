-- A base that is mixed for several runs is a batch without pieces; a batch of each run is poured from
-- it, with what that takes by the plan.

CREATE TABLE poured_from (
  batch TEXT PRIMARY KEY NOT NULL REFERENCES batch (id),
  base TEXT NOT NULL REFERENCES batch (id),
  place INTEGER NOT NULL CHECK (place >= 1),  -- among those that are poured from it
  takes INTEGER NOT NULL CHECK (takes > 0),   -- micrograms
  CHECK (batch <> base)
) STRICT, WITHOUT ROWID;
CREATE UNIQUE INDEX poured_from_base ON poured_from (base, place);
CREATE TRIGGER poured_from_is_frozen BEFORE UPDATE ON poured_from
  BEGIN SELECT RAISE(ABORT, 'a frozen batch never changes'); END;
CREATE TRIGGER poured_from_stays BEFORE DELETE ON poured_from
  BEGIN SELECT RAISE(ABORT, 'a batch is never removed'); END;
