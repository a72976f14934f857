// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0
// complaint: PersonTag.*InterfaceTag|InterfaceTag.*PersonTag

#include "core/value/id.hpp"

bool isLoose(const core::InterfaceId &item);

bool ask(const core::PersonId &person, const core::InterfaceId &item)
{
#ifdef MUST_NOT_COMPILE
    return isLoose(person);
#else
    return isLoose(item) || person.text().isEmpty();
#endif
}
