// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/language/in_record_words.hpp"

namespace language {

namespace {

// Of the thread: a record is packed in a thread of its own, while the screens go on in the language of whoever looks at them.
thread_local int depth = 0;

} // namespace

InRecordWords::InRecordWords() { ++depth; }
InRecordWords::~InRecordWords() { --depth; }
bool InRecordWords::now() { return depth > 0; }

} // namespace language
