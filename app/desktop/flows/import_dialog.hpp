// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QDialog>

#include "core/list/interface_list.hpp"

namespace desktop {

/// An interface list before it is taken: every row, or every fault with its row and column. Nothing is taken unless all of it
/// is good.
class ImportDialog : public QDialog {
    Q_OBJECT

public:
    ImportDialog(const QString &fileName, const core::InterfaceList &list, const core::Kinds &kinds, QWidget *parent);

private:
    QWidget *faultsOf(const std::vector<core::Error> &faults);
    QWidget *rowsOf(const core::ListPreview &preview);
};

} // namespace desktop
