-- SPDX-FileCopyrightText: The Remate authors
-- SPDX-License-Identifier: Apache-2.0

-- Computed from the entries: dropped and made again when its version differs, see where_used.cpp.
DROP TABLE IF EXISTS uses;
DROP TABLE IF EXISTS used_things;

-- What entries name. Kinds of entries are numbered here as well, under the sort 'kind', which no reference has.
CREATE TABLE used_things (
    id INTEGER PRIMARY KEY,
    sort TEXT NOT NULL,
    value TEXT NOT NULL,
    UNIQUE (sort, value)
) STRICT;

-- at: the entry's own moment, in milliseconds since 1970. kind: of used_things.
-- entry: the rowid under which the entry was found, so that reading it takes one descent instead of two. SQLite promises to
-- keep it only where a table names it, and `entries` does not: whoever uses it looks at ledger and seq as well.
CREATE TABLE uses (
    thing INTEGER NOT NULL,
    at INTEGER NOT NULL,
    ledger INTEGER NOT NULL,
    seq INTEGER NOT NULL,
    kind INTEGER NOT NULL,
    entry INTEGER NOT NULL,
    PRIMARY KEY (thing, at, ledger, seq)
) STRICT, WITHOUT ROWID;
