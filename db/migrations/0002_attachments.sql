-- SPDX-FileCopyrightText: The Remate authors
-- SPDX-License-Identifier: Apache-2.0

-- digest: SHA-256 of bytes. size stands before bytes, so that listing reads no pages of the bytes.
CREATE TABLE attachments (
    id INTEGER PRIMARY KEY,
    digest BLOB NOT NULL UNIQUE CHECK (length(digest) = 32),
    media_type TEXT NOT NULL,
    size INTEGER NOT NULL,
    bytes BLOB NOT NULL
) STRICT;

CREATE TRIGGER attachments_are_never_changed BEFORE UPDATE ON attachments
BEGIN
    SELECT raise(ABORT, 'an attachment is never changed');
END;

CREATE TRIGGER attachments_are_never_deleted BEFORE DELETE ON attachments
BEGIN
    SELECT raise(ABORT, 'an attachment is never deleted');
END;

CREATE TRIGGER attachments_are_never_replaced BEFORE INSERT ON attachments
WHEN EXISTS (SELECT 1 FROM attachments WHERE digest = NEW.digest OR id = NEW.id)
BEGIN
    SELECT raise(ABORT, 'an attachment is never replaced');
END;
