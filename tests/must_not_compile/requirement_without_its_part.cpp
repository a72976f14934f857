// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0
// complaint: missing initializer for member .*missing

#include "core/requirements/catalogue.hpp"

using namespace core;

Requirement polish(std::optional<QString> (*unmet)(const Listing &),
                   std::optional<QString> (*missing)(const InterfaceState &))
{
    const QLatin1String name("polish"), shownBy("interface.polished");
#ifdef MUST_NOT_COMPILE
    Q_UNUSED(missing)
    return {name, "Polish", shownBy, unmet};
#else
    return {name, "Polish", shownBy, unmet, missing};
#endif
}
