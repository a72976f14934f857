-- SPDX-FileCopyrightText: The Remate authors
-- SPDX-License-Identifier: Apache-2.0

-- A wrapped key is bound to the station whose secret it needs beside the PIN; a person has one for each station that they sign at.
-- station: the public id of that station. Empty for keys that were wrapped before there were stations: the PIN alone opens those.
CREATE TABLE credentials_by_station (
    person TEXT NOT NULL,
    fingerprint BLOB NOT NULL CHECK (length(fingerprint) = 32),
    station BLOB NOT NULL CHECK (length(station) IN (0, 32)),
    passes INTEGER NOT NULL,
    memory_bytes INTEGER NOT NULL,
    salt BLOB NOT NULL,
    nonce BLOB NOT NULL,
    sealed BLOB NOT NULL,
    PRIMARY KEY (person, fingerprint, station)
) STRICT, WITHOUT ROWID;

INSERT INTO credentials_by_station (person, fingerprint, station, passes, memory_bytes, salt, nonce, sealed)
SELECT person, fingerprint, x'', passes, memory_bytes, salt, nonce, sealed FROM credentials;

DROP TABLE credentials;

ALTER TABLE credentials_by_station RENAME TO credentials;

-- Keys on their way to another station, each sealed with its owner's PIN and a code that was shown once. Gone once used.
-- id: the public id of the code. until: worth nothing after it (milliseconds since 1970, UTC).
CREATE TABLE transfers (
    id BLOB PRIMARY KEY CHECK (length(id) = 32),
    person TEXT NOT NULL,
    fingerprint BLOB NOT NULL CHECK (length(fingerprint) = 32),
    until INTEGER NOT NULL,
    passes INTEGER NOT NULL,
    memory_bytes INTEGER NOT NULL,
    salt BLOB NOT NULL,
    nonce BLOB NOT NULL,
    sealed BLOB NOT NULL
) STRICT, WITHOUT ROWID;
