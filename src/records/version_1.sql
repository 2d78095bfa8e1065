-- The records of a studio. Days are ISO 8601 days, moments RFC 3339 with their offset, amounts whole
-- micrograms or whole pieces, money whole coins. What is text as typed stays as it was typed.

CREATE TABLE act (
  number INTEGER PRIMARY KEY,
  id TEXT UNIQUE NOT NULL,       -- of the one who asks: asked again, it is done already
  at TEXT NOT NULL,
  what TEXT NOT NULL,
  about TEXT NOT NULL            -- JSON
) STRICT;

CREATE TABLE document (
  hash TEXT PRIMARY KEY NOT NULL,
  length INTEGER NOT NULL CHECK (length >= 0),
  packed BLOB NOT NULL
) STRICT;

-- A code once given is never given to another batch, even where a batch changed it.
CREATE TABLE code (
  code TEXT PRIMARY KEY NOT NULL COLLATE NOCASE,
  run TEXT NOT NULL,
  number INTEGER NOT NULL CHECK (number >= 1),
  given_on TEXT NOT NULL,
  reserved INTEGER NOT NULL CHECK (reserved IN (0, 1))  -- for the next making of that batch
) STRICT, WITHOUT ROWID;
CREATE INDEX code_reserved ON code (run, number) WHERE reserved = 1;
CREATE TRIGGER code_stays BEFORE DELETE ON code
  BEGIN SELECT RAISE(ABORT, 'a code is never given back'); END;

CREATE TABLE batch (
  id TEXT PRIMARY KEY NOT NULL,
  code TEXT NOT NULL UNIQUE COLLATE NOCASE REFERENCES code (code),
  run TEXT NOT NULL,             -- the run's id; of a run without one its file, after "file:"
  run_file TEXT NOT NULL,
  run_name TEXT NOT NULL,
  number INTEGER NOT NULL CHECK (number >= 1),
  begun_on TEXT NOT NULL,
  begun_at TEXT NOT NULL,
  pieces INTEGER NOT NULL CHECK (pieces >= 0),
  program TEXT NOT NULL,
  plan TEXT NOT NULL REFERENCES document (hash),
  sources TEXT NOT NULL REFERENCES document (hash),
  act INTEGER NOT NULL REFERENCES act (number),  -- that began it
  finished_at TEXT
) STRICT, WITHOUT ROWID;
CREATE INDEX batch_of_run ON batch (run, number, act);
CREATE INDEX batch_by_day ON batch (begun_on, code);
CREATE TRIGGER batch_is_frozen
  BEFORE UPDATE OF id, run, run_file, run_name, number, begun_on, begun_at, pieces, program, plan, sources, act ON batch
  BEGIN SELECT RAISE(ABORT, 'a frozen batch never changes'); END;
CREATE TRIGGER batch_stays BEFORE DELETE ON batch
  BEGIN SELECT RAISE(ABORT, 'a batch is never removed'); END;
CREATE TRIGGER document_is_frozen BEFORE UPDATE ON document
  BEGIN SELECT RAISE(ABORT, 'a frozen document never changes'); END;

CREATE TABLE note (
  batch TEXT NOT NULL REFERENCES batch (id),
  key TEXT NOT NULL,
  value TEXT NOT NULL,
  noted_at TEXT NOT NULL,
  PRIMARY KEY (batch, key)
) STRICT, WITHOUT ROWID;

-- What pieces of a batch weigh as they cure.
CREATE TABLE weighing (
  batch TEXT NOT NULL REFERENCES batch (id),
  day TEXT NOT NULL,
  pieces INTEGER NOT NULL CHECK (pieces >= 1),
  written TEXT NOT NULL,         -- of all of them together
  micrograms INTEGER NOT NULL CHECK (micrograms > 0),
  PRIMARY KEY (batch, day)
) STRICT, WITHOUT ROWID;

-- A delivery of one material, all its packs together: what came, or what she made of other lots.
CREATE TABLE lot (
  id TEXT PRIMARY KEY NOT NULL,
  code TEXT NOT NULL COLLATE NOCASE,
  material TEXT NOT NULL,        -- as weighings call it
  make TEXT,                     -- of goods that serve as the material: what they are called themselves
  origin TEXT NOT NULL CHECK (origin IN ('bought', 'made', 'before')),
  seller TEXT,
  bought_on TEXT NOT NULL,       -- or made on, or first counted on
  best_before TEXT,
  packs INTEGER NOT NULL CHECK (packs >= 1),
  pack TEXT NOT NULL,            -- as typed
  is_pieces INTEGER NOT NULL CHECK (is_pieces IN (0, 1)),
  whole INTEGER NOT NULL CHECK (whole > 0),
  coins INTEGER CHECK (coins >= 0),
  currency TEXT,
  CHECK ((coins IS NULL) = (currency IS NULL))
) STRICT, WITHOUT ROWID;
CREATE INDEX lot_by_code ON lot (code);
CREATE INDEX lot_of_material ON lot (material);
CREATE INDEX lot_of_make ON lot (make) WHERE make IS NOT NULL;

CREATE TABLE lot_change (
  id INTEGER PRIMARY KEY,
  lot TEXT NOT NULL REFERENCES lot (id),
  what TEXT NOT NULL CHECK (what IN ('used', 'counted')),
  whole INTEGER NOT NULL,        -- added to what is left of the lot: below 0 where it was used
  day TEXT NOT NULL,
  batch TEXT REFERENCES batch (id),
  row TEXT,                      -- what was weighed, by its key in the plan
  made TEXT REFERENCES lot (id), -- what was made of it, that is no batch: lye solution, a blend
  why TEXT,
  CHECK (what <> 'used' OR whole <= 0),
  CHECK ((what = 'used') = ((batch IS NOT NULL) + (made IS NOT NULL) = 1)),
  CHECK ((batch IS NULL) = (row IS NULL))
) STRICT;
CREATE INDEX lot_change_of_lot ON lot_change (lot, whole);
CREATE INDEX lot_change_of_batch ON lot_change (batch, row) WHERE batch IS NOT NULL;
CREATE INDEX lot_change_of_made ON lot_change (made) WHERE made IS NOT NULL;

-- What a batch weighed of what is bought, row by row; of what no lot_change has, the lot is unknown.
CREATE TABLE weighed (
  batch TEXT NOT NULL REFERENCES batch (id),
  row TEXT NOT NULL,             -- its key in the plan
  material TEXT NOT NULL,
  name TEXT NOT NULL,            -- for people
  is_pieces INTEGER NOT NULL CHECK (is_pieces IN (0, 1)),
  whole INTEGER NOT NULL CHECK (whole >= 0),
  PRIMARY KEY (batch, row)
) STRICT, WITHOUT ROWID;

-- Pieces of a batch from the mould to whoever has them; those made are above 0, all others below.
CREATE TABLE piece_change (
  id INTEGER PRIMARY KEY,
  batch TEXT NOT NULL REFERENCES batch (id),
  what TEXT NOT NULL CHECK (what IN ('made', 'rejected', 'sold', 'given', 'spoilt', 'counted')),
  pieces INTEGER NOT NULL,
  day TEXT NOT NULL,
  of_order TEXT,                 -- the order's id
  of_order_name TEXT,
  why TEXT
) STRICT;
CREATE INDEX piece_change_of_batch ON piece_change (batch);
CREATE INDEX piece_change_of_order ON piece_change (of_order) WHERE of_order IS NOT NULL;

-- Learned figures that were written into her files.
CREATE TABLE taken (
  id TEXT PRIMARY KEY NOT NULL,
  figure TEXT NOT NULL,
  file TEXT NOT NULL,
  field TEXT NOT NULL,           -- a JSON pointer
  before TEXT,                   -- JSON; nothing where nothing stood there
  after TEXT NOT NULL,           -- JSON
  count INTEGER NOT NULL CHECK (count >= 1),
  taken_on TEXT NOT NULL,
  undone_at TEXT
) STRICT, WITHOUT ROWID;
