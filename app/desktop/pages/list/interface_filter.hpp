// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QCollator>
#include <QSortFilterProxyModel>

namespace desktop {

/// Shows the rows that hold every word typed, in any column; sorts numbers in names by value, so E2 comes before E10.
class InterfaceFilter : public QSortFilterProxyModel {
    Q_OBJECT

public:
    explicit InterfaceFilter(QObject *parent = nullptr);
    void setWords(const QString &text);
    /// Only interfaces that are loose: not inspected.
    void setLooseOnly(bool isOn);

protected:
    bool filterAcceptsRow(int row, const QModelIndex &parent) const override;
    bool lessThan(const QModelIndex &left, const QModelIndex &right) const override;

private:
    QStringList m_words;
    bool m_looseOnly = false;
    QCollator m_collator;
};

} // namespace desktop
