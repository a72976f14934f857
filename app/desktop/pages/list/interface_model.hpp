// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QAbstractTableModel>

#include "app/desktop/job_feed.hpp"
#include "core/job/stage.hpp"
#include "core/kinds/kinds.hpp"

namespace desktop {

/// The interfaces of a job as rows. Follows the feed row by row; it resets only for another job.
class InterfaceModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Stage, Id, Name, Kind, Zone, Tag, Missing, ColumnCount };
    enum Role {
        ItemRole = Qt::UserRole, ///< the interface's id
        StageRole,               ///< core::Stage as int
        SortRole,
        HaystackRole, ///< all that a filter looks through, in lower case
        CriticalRole,
    };

    InterfaceModel(JobFeed &feed, const core::Kinds &kinds, QObject *parent = nullptr);

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

    /// The row of an interface, or nothing.
    std::optional<int> rowOf(const core::InterfaceId &item) const;

private:
    void reload();
    void follow(const Touched &touched);
    void appendNew();
    void removeGone();
    QVariant textOf(const core::InterfaceState &item, int column) const;
    QString haystackOf(const core::InterfaceState &item) const;
    const core::InterfaceState *itemAt(int row) const;

    JobFeed &m_feed;
    const core::Kinds &m_kinds;
    std::vector<core::InterfaceId> m_rows;
    mutable std::vector<QString> m_haystacks; ///< beside m_rows; null until asked for
};

/// What is still loose about an item, in few words; empty when nothing is.
QString missingInWords(const core::InterfaceState &item);

} // namespace desktop
