-- Switchings have a table of their own: most of what happens, for few different reasons.
CREATE TABLE output (
  id INTEGER PRIMARY KEY,
  room INTEGER NOT NULL REFERENCES room (id),
  name TEXT NOT NULL,
  UNIQUE (room, name)
);

CREATE TABLE reason (
  id INTEGER PRIMARY KEY,
  text TEXT NOT NULL UNIQUE
);

-- at: epoch milliseconds; is_on: 1 for switched on, 0 for off.
CREATE TABLE switching (
  at INTEGER NOT NULL,
  output INTEGER NOT NULL REFERENCES output (id),
  is_on INTEGER NOT NULL,
  reason INTEGER NOT NULL REFERENCES reason (id),
  PRIMARY KEY (at, output)
) WITHOUT ROWID;

-- Until now they were events of two kinds, with 'output: reason' as their text.
INSERT OR IGNORE INTO output (room, name)
  SELECT DISTINCT room, substr(text, 1, instr(text, ': ') - 1)
  FROM event WHERE kind IN ('on', 'off') AND instr(text, ': ') > 1 AND room IS NOT NULL;

INSERT OR IGNORE INTO reason (text)
  SELECT DISTINCT substr(text, instr(text, ': ') + 2)
  FROM event WHERE kind IN ('on', 'off') AND instr(text, ': ') > 1 AND room IS NOT NULL;

INSERT OR REPLACE INTO switching (at, output, is_on, reason)
  SELECT event.at, output.id, event.kind = 'on', reason.id
  FROM event
  JOIN output ON output.room = event.room
    AND output.name = substr(event.text, 1, instr(event.text, ': ') - 1)
  JOIN reason ON reason.text = substr(event.text, instr(event.text, ': ') + 2)
  WHERE event.kind IN ('on', 'off')
  ORDER BY event.id;

DELETE FROM event WHERE kind IN ('on', 'off');
