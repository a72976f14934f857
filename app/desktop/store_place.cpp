// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/store_place.hpp"

namespace desktop {

namespace {

core::Result<StorePlace> placeOf(core::Result<std::unique_ptr<db::Store>> store, const SessionMaker &maker)
{
    if (!store)
        return core::failure(store.error());
    StorePlace place{*std::move(store), nullptr};
    place.session = std::make_unique<session::Session>(*place.store, maker.clock, maker.care);
    place.session->identity().setIdleLimit(maker.idleLimit);
    if (const auto read = place.session->refresh(); !read)
        return core::failure(read.error());
    return place;
}

} // namespace

core::Result<StorePlace> openPlace(const QString &path, const SessionMaker &maker)
{
    return placeOf(db::Store::open(path, db::Access::ReadWrite), maker);
}

core::Result<StorePlace> createPlace(const QString &path, const SessionMaker &maker) { return placeOf(db::Store::create(path), maker); }

} // namespace desktop
