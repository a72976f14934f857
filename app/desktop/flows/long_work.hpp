// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <memory>

#include "app/desktop/ask.hpp"

class QProgressDialog;
class QWidget;

namespace desktop {

/// A window with how far a long work has come and a way to stop it. Shown only when the work takes more than a moment.
class LongWork {
public:
    LongWork(const QString &what, QWidget *parent);
    ~LongWork();
    /// Goes to the work.
    Progress progress();

private:
    std::unique_ptr<QProgressDialog> m_dialog;
};

} // namespace desktop
