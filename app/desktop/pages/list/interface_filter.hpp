// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QAbstractProxyModel>
#include <QByteArrayList>

#include <vector>

namespace desktop {

class InterfaceModel;

/// Shows the rows that hold every word typed, in any column; sorts numbers in names by value, so E2 comes before E10.
///
/// Rows that come and go as somebody types are told as one change of layout: a job has thousands of interfaces, and a
/// keystroke would else remove and insert them in a thousand pieces. Rows that stay keep their indexes.
class InterfaceFilter : public QAbstractProxyModel {
    Q_OBJECT

public:
    /// The model must outlive it.
    explicit InterfaceFilter(InterfaceModel &model, QObject *parent = nullptr);
    void setWords(const QString &text);
    /// Only interfaces that are loose: not inspected.
    void setLooseOnly(bool isOn);

    /// A negative column: the list's own order.
    void sort(int column, Qt::SortOrder order = Qt::AscendingOrder) override;
    QModelIndex index(int row, int column, const QModelIndex &parent = {}) const override;
    QModelIndex parent(const QModelIndex &) const override { return {}; }
    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    bool hasChildren(const QModelIndex &parent = {}) const override { return rowCount(parent) > 0; }
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    QModelIndex mapToSource(const QModelIndex &shown) const override;
    QModelIndex mapFromSource(const QModelIndex &source) const override;

private:
    bool shows(int row) const;
    bool isShown(int row) const { return m_rowOf[static_cast<std::size_t>(row)] >= 0; }
    std::vector<int> sorted() const;
    std::vector<int> filtered(std::vector<int> rows) const;
    void place(std::vector<int> shown);
    void arrange(std::vector<int> shown);
    void beginLayout();
    void endLayout(std::vector<int> shown);
    void followData(const QModelIndex &first, const QModelIndex &last);

    InterfaceModel &m_model;
    QByteArrayList m_words; ///< lower case, UTF-8, as the model's haystacks
    bool m_looseOnly = false;
    int m_column = -1;
    Qt::SortOrder m_sortOrder = Qt::AscendingOrder;
    std::vector<int> m_order; ///< every row of the model, sorted
    std::vector<int> m_shown; ///< those of them that are shown
    std::vector<int> m_rowOf; ///< beside the model's rows: where each is shown, or -1
    QModelIndexList m_kept;   ///< our persistent indexes, while the layout changes
    QList<QPersistentModelIndex> m_keptSources; ///< and what they stand for
};

} // namespace desktop
