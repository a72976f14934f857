// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/ahead.hpp"

#include <fontconfig/fontconfig.h>

#include "app/package/verify_package.hpp"

namespace desktop {

std::future<void> readFontsAhead()
{
    // Where it fails, the toolkit tries again and says so.
    return std::async(std::launch::async, [] { (void)FcInit(); });
}

std::future<core::Result<StorePlace>> openAhead(const QString &path, const SessionMaker &maker)
{
    if (package::looksLikePackage(path))
        return {};
    return std::async(std::launch::async, [path, maker] {
        auto place = openPlace(path, maker);
        if (place)
            (void)place->session->jobs(); // asked again by the page that shows them, which then has them at hand
        return place;
    });
}

} // namespace desktop
