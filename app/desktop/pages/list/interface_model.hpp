// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QAbstractTableModel>

#include <optional>
#include <vector>

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
        CriticalRole,
    };

    InterfaceModel(JobFeed &feed, const core::Kinds &kinds, QObject *parent = nullptr);

    int rowCount(const QModelIndex &parent = {}) const override;
    int columnCount(const QModelIndex &parent = {}) const override;
    QVariant data(const QModelIndex &index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

    /// The row of an interface, or nothing.
    std::optional<int> rowOf(const core::InterfaceId &item) const;

    // For a filter, which asks all rows at every keystroke. The row must be one of the model's.

    /// All that a filter looks through, in lower case, UTF-8.
    const QByteArray &haystackAt(int row) const;
    core::Stage stageAt(int row) const;
    /// Whether a loose end is about it, as on every page.
    bool isLooseAt(int row) const;

private:
    void reload();
    /// Which interfaces have a loose end now. Those for which that is not as it was.
    QSet<core::InterfaceId> countLoose();
    void follow(const Touched &touched);
    void appendNew();
    void removeGone();
    QString textOf(const core::InterfaceState &item, int column) const;
    QByteArray haystackOf(const core::InterfaceState &item) const;
    const core::InterfaceState *itemAt(int row) const;
    struct Prepared {
        QByteArray haystack;
        core::Stage stage;
    };
    const Prepared &preparedAt(int row) const;

    JobFeed &m_feed;
    const core::Kinds &m_kinds;
    std::vector<core::InterfaceId> m_rows;
    QSet<core::InterfaceId> m_loose;
    mutable std::vector<std::optional<Prepared>> m_prepared; ///< beside m_rows; nothing until asked for
};

/// What is still loose about an item, and what the walk-round found, in few words; empty when there is nothing to say.
QString missingInWords(const core::InterfaceState &item);

} // namespace desktop
