// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/language/in_record_words.hpp"

#include <utility>

namespace language {

namespace {

// Of the thread, as a scope is: what another thread says meanwhile is not within it. The desktop writes its records in the thread of its screens, which
// are therefore drawn within the scope wherever nobody made one of the screens' words.
thread_local int depth = 0;

} // namespace

InRecordWords::InRecordWords() { ++depth; }
InRecordWords::~InRecordWords() { --depth; }
bool InRecordWords::now() { return depth > 0; }

InScreenWords::InScreenWords() : m_depth(std::exchange(depth, 0)) {}
InScreenWords::~InScreenWords() { depth = m_depth; }

} // namespace language
