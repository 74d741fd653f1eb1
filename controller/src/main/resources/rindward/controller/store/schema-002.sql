-- Who may sign in, and who changed what. Times: epoch milliseconds.
CREATE TABLE person (
  name TEXT PRIMARY KEY,
  role TEXT NOT NULL,
  password_hash TEXT NOT NULL
) WITHOUT ROWID;

-- Sessions and API tokens, by the hash of their secret.
CREATE TABLE token (
  hash TEXT PRIMARY KEY,
  id TEXT NOT NULL,
  person TEXT NOT NULL REFERENCES person (name) ON DELETE CASCADE,
  role TEXT NOT NULL,
  session INTEGER NOT NULL,
  label TEXT NOT NULL,
  created INTEGER NOT NULL,
  expires INTEGER NOT NULL
) WITHOUT ROWID;

-- Append-only.
CREATE TABLE audit (
  id INTEGER PRIMARY KEY,
  at INTEGER NOT NULL,
  who TEXT NOT NULL,
  what TEXT NOT NULL
);
