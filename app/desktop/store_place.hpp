// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <memory>

#include "app/session/session.hpp"

namespace desktop {

/// An open store with the session that works on it.
struct StorePlace {
    std::unique_ptr<db::Store> store;
    std::unique_ptr<session::Session> session; ///< goes before the store
};

/// How sessions are made: the clock, the cost of a guess and the station, so that tests bring their own.
struct SessionMaker {
    session::Clock clock;
    session::KeyCare care;
    session::IdentityRule::Span idleLimit;
};

/// Opens a store and reads it once. Errors as of db::Store::open and Session::refresh.
core::Result<StorePlace> openPlace(const QString &path, const SessionMaker &maker);
/// Makes an empty one.
core::Result<StorePlace> createPlace(const QString &path, const SessionMaker &maker);

} // namespace desktop
