// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

namespace language {

/// While one lives, its thread speaks the record's own words, which are English, whatever language the screens are in. Made where
/// something is written that leaves the program as a record: the same job gives the same bytes on every machine, and verifying, which
/// sets the pages again and compares them, needs no language. Scopes may lie within each other.
class InRecordWords {
public:
    InRecordWords();
    ~InRecordWords();
    InRecordWords(const InRecordWords &) = delete;
    InRecordWords &operator=(const InRecordWords &) = delete;

    /// Whether this thread speaks them now.
    static bool now();
};

/// While one lives, its thread speaks the language of the screens again, within whatever scope of the record's words it was made. Made around what a
/// person sees while a record is written: the progress, for which the screens are drawn and refreshed, and what went wrong.
class InScreenWords {
public:
    InScreenWords();
    ~InScreenWords();
    InScreenWords(const InScreenWords &) = delete;
    InScreenWords &operator=(const InScreenWords &) = delete;

private:
    int m_depth; ///< of the scopes around it
};

} // namespace language
