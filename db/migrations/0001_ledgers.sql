-- SPDX-FileCopyrightText: The Remate authors
-- SPDX-License-Identifier: Apache-2.0

-- One row a ledger. The row number gives the order in which they were begun.
CREATE TABLE ledgers (
    id INTEGER PRIMARY KEY,
    uuid TEXT NOT NULL UNIQUE CHECK (length(uuid) BETWEEN 1 AND 128),
    is_register INTEGER NOT NULL CHECK (is_register IN (0, 1))
) STRICT;

CREATE UNIQUE INDEX one_register ON ledgers (is_register) WHERE is_register = 1;

-- bytes: the canonical bytes that were signed. hash: their SHA-256. signature: Ed25519 over them.
CREATE TABLE entries (
    ledger INTEGER NOT NULL REFERENCES ledgers (id),
    seq INTEGER NOT NULL CHECK (seq >= 1),
    bytes BLOB NOT NULL,
    hash BLOB NOT NULL CHECK (length(hash) = 32),
    signature BLOB NOT NULL CHECK (length(signature) = 64),
    PRIMARY KEY (ledger, seq)
) STRICT;

CREATE TABLE meta (
    name TEXT PRIMARY KEY,
    value INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TRIGGER entries_are_never_changed BEFORE UPDATE ON entries
BEGIN
    SELECT raise(ABORT, 'an entry is never changed');
END;

CREATE TRIGGER entries_are_never_deleted BEFORE DELETE ON entries
BEGIN
    SELECT raise(ABORT, 'an entry is never deleted');
END;

-- INSERT OR REPLACE deletes the old row without asking the trigger above. A row that gives no number has -1 here.
CREATE TRIGGER entries_are_never_replaced BEFORE INSERT ON entries
WHEN EXISTS (SELECT 1 FROM entries WHERE ledger = NEW.ledger AND seq = NEW.seq)
    OR EXISTS (SELECT 1 FROM entries WHERE rowid = NEW.rowid)
BEGIN
    SELECT raise(ABORT, 'an entry is never replaced');
END;

CREATE TRIGGER ledgers_are_never_changed BEFORE UPDATE ON ledgers
BEGIN
    SELECT raise(ABORT, 'a ledger is never changed');
END;

CREATE TRIGGER ledgers_are_never_deleted BEFORE DELETE ON ledgers
BEGIN
    SELECT raise(ABORT, 'a ledger is never deleted');
END;

CREATE TRIGGER ledgers_are_never_replaced BEFORE INSERT ON ledgers
WHEN EXISTS (SELECT 1 FROM ledgers WHERE id = NEW.id OR uuid = NEW.uuid
             OR (is_register = 1 AND NEW.is_register = 1))
BEGIN
    SELECT raise(ABORT, 'a ledger is never replaced');
END;
