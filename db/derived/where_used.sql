-- SPDX-FileCopyrightText: The Remate authors
-- SPDX-License-Identifier: Apache-2.0

-- Computed from the entries: dropped and made again when its version differs, see where_used.cpp.
DROP TABLE IF EXISTS uses;
DROP TABLE IF EXISTS used_things;

CREATE TABLE used_things (
    id INTEGER PRIMARY KEY,
    sort TEXT NOT NULL,
    value TEXT NOT NULL,
    UNIQUE (sort, value)
) STRICT;

CREATE TABLE uses (
    thing INTEGER NOT NULL,
    ledger INTEGER NOT NULL,
    seq INTEGER NOT NULL,
    PRIMARY KEY (thing, ledger, seq)
) STRICT, WITHOUT ROWID;
