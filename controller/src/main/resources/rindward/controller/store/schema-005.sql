-- What is over, told once from the journal and remembered so that control need not read it again. All of
-- it may be deleted at any moment: it is told anew. crop and variety: empty for what is no lot; places:
-- where a lot lay, one a line; taught: what it teaches as JSON, NULL until somebody has asked.
CREATE TABLE finished (
  subject TEXT PRIMARY KEY,
  crop TEXT NOT NULL,
  variety TEXT NOT NULL,
  places TEXT NOT NULL,
  taught TEXT
) WITHOUT ROWID;
CREATE INDEX finished_variety ON finished (crop, variety);

-- Which lots were served in which session of tasting.
CREATE TABLE served (
  lot TEXT NOT NULL,
  session TEXT NOT NULL,
  PRIMARY KEY (lot, session)
) WITHOUT ROWID;

-- Up to which entry all this was told, and by which program and guide; one row.
CREATE TABLE finished_up_to (
  entry INTEGER NOT NULL,
  basis TEXT NOT NULL
);
