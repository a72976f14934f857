-- SPDX-FileCopyrightText: The Remate authors
-- SPDX-License-Identifier: Apache-2.0

-- Private keys, each locked with its owner's PIN or passphrase. No ledger: a changed PIN replaces the row.
CREATE TABLE credentials (
    person TEXT NOT NULL,
    fingerprint BLOB NOT NULL CHECK (length(fingerprint) = 32),
    passes INTEGER NOT NULL,
    memory_bytes INTEGER NOT NULL,
    salt BLOB NOT NULL,
    nonce BLOB NOT NULL,
    sealed BLOB NOT NULL,
    PRIMARY KEY (person, fingerprint)
) STRICT, WITHOUT ROWID;

-- Wrong secrets in a row, and when the last one was tried (milliseconds since 1970, UTC).
CREATE TABLE attempts (
    person TEXT NOT NULL,
    fingerprint BLOB NOT NULL CHECK (length(fingerprint) = 32),
    wrong_in_a_row INTEGER NOT NULL CHECK (wrong_in_a_row >= 0),
    last_at INTEGER NOT NULL,
    PRIMARY KEY (person, fingerprint)
) STRICT, WITHOUT ROWID;
