// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <vector>

#include "core/register/register.hpp"
#include "core/value/id.hpp"
#include "core/value/result.hpp"

namespace demo {

/// Somebody in the scenario. Nobody real; the PIN is printed, since a demo keeps no secrets.
struct CastMember {
    core::PersonId id;
    QString name;
    QString role;
    QString pin;
    std::vector<core::Authority> authorities;
    QString identity; ///< how it was proved who they are
};

/// Everybody in the scenario; the first founds the register.
core::Result<std::vector<CastMember>> cast();

} // namespace demo
