-- SPDX-FileCopyrightText: The Remate authors
-- SPDX-License-Identifier: Apache-2.0

-- Record packages of other stores, kept whole as they came and apart from the ledgers: to be looked at, never worked on.
-- digest: SHA-256 of the whole file. The rest is what its entries said when it was taken in.
CREATE TABLE packages (
    id INTEGER PRIMARY KEY,
    digest BLOB NOT NULL UNIQUE CHECK (length(digest) = 32),
    size INTEGER NOT NULL,
    ledger TEXT NOT NULL,
    head_seq INTEGER NOT NULL CHECK (head_seq >= 1),
    head_hash BLOB NOT NULL CHECK (length(head_hash) = 32),
    root BLOB NOT NULL CHECK (length(root) = 32),
    work_order TEXT NOT NULL,
    aircraft TEXT NOT NULL,
    title TEXT NOT NULL,
    is_closed INTEGER NOT NULL CHECK (is_closed IN (0, 1)),
    taken_at INTEGER NOT NULL
) STRICT;

-- In parts, so that a large one is never whole in the memory.
CREATE TABLE package_parts (
    package INTEGER NOT NULL REFERENCES packages (id),
    part INTEGER NOT NULL CHECK (part >= 0),
    bytes BLOB NOT NULL,
    PRIMARY KEY (package, part)
) STRICT;

CREATE TRIGGER packages_are_never_changed BEFORE UPDATE ON packages
BEGIN
    SELECT raise(ABORT, 'a package is never changed');
END;

CREATE TRIGGER packages_are_never_deleted BEFORE DELETE ON packages
BEGIN
    SELECT raise(ABORT, 'a package is never deleted');
END;

CREATE TRIGGER packages_are_never_replaced BEFORE INSERT ON packages
WHEN EXISTS (SELECT 1 FROM packages WHERE digest = NEW.digest OR id = NEW.id)
BEGIN
    SELECT raise(ABORT, 'a package is never replaced');
END;

CREATE TRIGGER package_parts_are_never_changed BEFORE UPDATE ON package_parts
BEGIN
    SELECT raise(ABORT, 'a package is never changed');
END;

CREATE TRIGGER package_parts_are_never_deleted BEFORE DELETE ON package_parts
BEGIN
    SELECT raise(ABORT, 'a package is never deleted');
END;

CREATE TRIGGER package_parts_are_never_replaced BEFORE INSERT ON package_parts
WHEN EXISTS (SELECT 1 FROM package_parts WHERE package = NEW.package AND part = NEW.part)
    OR EXISTS (SELECT 1 FROM package_parts WHERE rowid = NEW.rowid)
BEGIN
    SELECT raise(ABORT, 'a package is never replaced');
END;
