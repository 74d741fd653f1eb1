-- The first schema. A file that has been released is never edited; a change is a new number.
-- 'RIND': tells our files from those of other programs.
PRAGMA application_id = 1380535876;

CREATE TABLE room (
  id INTEGER PRIMARY KEY,
  name TEXT NOT NULL UNIQUE
);

-- Samples of one room, within one UTC day; first: epoch seconds of the earliest; samples: see ChunkCodec.
-- Chunks of a room never overlap. A day's many chunks become one when the day is over.
CREATE TABLE chunk (
  first INTEGER NOT NULL,
  room INTEGER NOT NULL REFERENCES room (id),
  samples BLOB NOT NULL,
  PRIMARY KEY (first, room)
) WITHOUT ROWID;

-- What people said, append-only; at: epoch milliseconds.
CREATE TABLE entry (
  id INTEGER PRIMARY KEY,
  request TEXT NOT NULL UNIQUE,
  subject TEXT NOT NULL,
  at INTEGER NOT NULL,
  by TEXT NOT NULL,
  body TEXT NOT NULL
);
CREATE INDEX entry_subject ON entry (subject);

-- What the controller did and why; at: epoch milliseconds; room: none for the whole house.
CREATE TABLE event (
  id INTEGER PRIMARY KEY,
  at INTEGER NOT NULL,
  room INTEGER REFERENCES room (id),
  kind TEXT NOT NULL,
  text TEXT NOT NULL
);
CREATE INDEX event_at ON event (at);
