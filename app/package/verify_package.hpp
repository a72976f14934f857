// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include "app/package/going.hpp"
#include "app/session/verify_store.hpp"
#include "core/kinds/kinds.hpp"
#include "core/value/result.hpp"

namespace package {

/// What a package is about, as its entries tell it. Empty where they cannot be read.
struct About {
    QString workOrder;
    QString aircraft;
    QString title;
    bool isClosed = false;
    std::optional<core::LedgerId> ledger{};
    core::Head head{};
};

struct PackageVerdict {
    session::VerifyReport report;
    About about;
};

/// Whether the file begins as a ZIP file does, so that it is taken for a package and not for a store.
bool looksLikePackage(const QString &path);

/// Verifies a package: the bag with its digests and files, each entry with its signature, its place and the rules, attachments, what is known from elsewhere; and
/// that the labels, the CSV and the PDF are what these entries give. Where the PDF was set with other typefaces or another Qt than here, it cannot be
/// compared, and the report has a reservation. Needs a QGuiApplication. An error means that it could not be read (or Cancelled), not that it is faulty: what is no
/// package at all is a fault, `package.zip`.
core::Result<PackageVerdict> verifyPackage(const QString &path, const session::Known &known, const core::Kinds &kinds, const Going &going = {});

} // namespace package
