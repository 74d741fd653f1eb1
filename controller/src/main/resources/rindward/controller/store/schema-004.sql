-- Nothing changes in the tables. From here on chunks of samples are packed closer (version 2 of a
-- chunk), and a program that could not read them says so by this number instead of calling them
-- damaged. Chunks that are there stay as they are until their day is written anew.
UPDATE room SET name = name WHERE id < 0;
