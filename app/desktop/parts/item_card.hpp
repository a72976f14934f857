// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QScrollArea>

#include <memory>

#include "app/desktop/pages/page.hpp"

class QGridLayout;
class QLabel;
class QVBoxLayout;

namespace desktop {

class ActionButtons;
class StageMark;
struct Fact;

/// Everything about one interface on one card: where it stands, cautions, what may be done now, what is still to show, what
/// was recorded by whom, what the list says, photos. For several interfaces, what may be done with all of them.
class ItemCard : public QScrollArea {
    Q_OBJECT

public:
    /// `kinds` are the kinds of entry that the card offers to make.
    ItemCard(const PageTools &tools, const std::vector<QLatin1String> &kinds, QWidget *parent = nullptr);

    void show(const std::vector<core::InterfaceId> &items);
    ActionButtons &buttons() { return *m_actions; }

signals:
    /// The photos of the interface of that id, side by side.
    void photosWanted(const QString &item);

private:
    void showOne(const core::InterfaceState &item);
    void showMany(const std::vector<core::InterfaceId> &items);
    void showNone();
    void addRequirements(const core::InterfaceState &item);
    void addLookAt(const core::InterfaceState &item);
    void addFacts(const QString &heading, const std::vector<Fact> &facts, const QString &none);
    void addPhotos(const core::InterfaceState &item);

    PageTools m_tools;
    QLabel *m_id;
    QLabel *m_name;
    StageMark *m_stage;
    QLabel *m_caution;
    QLabel *m_governs;
    ActionButtons *m_actions;
    QVBoxLayout *m_below; ///< what is made anew for each item
    std::vector<core::InterfaceId> m_items;
};

} // namespace desktop
