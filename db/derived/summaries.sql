-- SPDX-FileCopyrightText: The Remate authors
-- SPDX-License-Identifier: Apache-2.0

-- Computed from the ledgers: dropped and made again when its version differs, see summaries.cpp.
DROP TABLE IF EXISTS job_summaries;

-- job_hash, register_hash: the last entries that the summary was made from; those of linked jobs are in it. digest: over all of it, so that a damaged row is
-- made again, not shown.
CREATE TABLE job_summaries (
    ledger TEXT PRIMARY KEY,
    job_hash BLOB NOT NULL,
    register_hash BLOB NOT NULL,
    summary BLOB NOT NULL,
    digest BLOB NOT NULL
) STRICT, WITHOUT ROWID;
