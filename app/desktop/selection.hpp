// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QObject>

#include <algorithm>
#include <vector>

#include "core/value/id.hpp"

namespace desktop {

/// Which interfaces are chosen, shared by all pages of a job.
class Selection : public QObject {
    Q_OBJECT

public:
    explicit Selection(QObject *parent = nullptr) : QObject(parent) {}
    const std::vector<core::InterfaceId> &items() const { return m_items; }
    bool isSingle() const { return m_items.size() == 1; }

    void choose(const std::vector<core::InterfaceId> &items)
    {
        if (items == m_items)
            return;
        m_items = items;
        emit changed();
    }

signals:
    void changed();

private:
    std::vector<core::InterfaceId> m_items;
};

} // namespace desktop
