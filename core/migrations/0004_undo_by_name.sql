-- What an edit was, so that a person is told what undo takes back.
ALTER TABLE own_edit ADD COLUMN "command" TEXT;
