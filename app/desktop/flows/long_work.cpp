// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/flows/long_work.hpp"

#include <QCoreApplication>
#include <QProgressDialog>

namespace desktop {

LongWork::LongWork(const QString &what, QWidget *parent)
    : m_dialog(std::make_unique<QProgressDialog>(what, QCoreApplication::translate("LongWork", "Stop"), 0, 0, parent))
{
    m_dialog->setWindowModality(Qt::WindowModal);
    m_dialog->setMinimumDuration(400);
}

LongWork::~LongWork() = default;

Progress LongWork::progress()
{
    return [dialog = m_dialog.get()](qint64 done, qint64 all) {
        dialog->setMaximum(static_cast<int>(all));
        dialog->setValue(static_cast<int>(done));
        QCoreApplication::processEvents();
        return !dialog->wasCanceled();
    };
}

} // namespace desktop
