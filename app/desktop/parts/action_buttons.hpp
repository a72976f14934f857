// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

#include <vector>

#include "app/desktop/actions.hpp"
#include "app/desktop/job_feed.hpp"
#include "app/desktop/selection.hpp"

class QGridLayout;
class QLabel;
class QPushButton;

namespace desktop {

/// Actions on what is chosen, as large buttons: first the one that leads on, then whatever else may be signed now; under them
/// what may not, each with its reason in words beside it. What the list does not ask for is not offered at all. No wider than a line
/// that can be read. Where two buttons beside each other, or a button and its reason, have no room for their words, they stand below each other.
class ActionButtons : public QWidget {
    Q_OBJECT

public:
    ActionButtons(Deeds &deeds, JobFeed &feed, const core::Kinds &kinds, const std::vector<QLatin1String> &kindsOfEntry, QWidget *parent = nullptr);

    /// Asks again, about these interfaces or that subject.
    void show(const std::vector<core::InterfaceId> &items, const std::optional<QString> &subject = {});
    /// The same, about what a row stands for; an empty key is no subject.
    void showSubject(const QString &key) { show({}, key.isEmpty() ? std::nullopt : std::optional(key)); }
    /// From now on, each action's plain key does what its button does while `view` has the keyboard. In a text field the
    /// same key is a letter.
    void listenTo(QWidget *view);

    /// The same whatever the columns are now: what these are follows from the width, never the width from them.
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent *event) override;
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    struct Row {
        const ActionLine *action;
        QPushButton *button;
        QLabel *reason;
    };
    QString leadingAct() const;
    void dress(const Row &row, const QString &reason, bool isLeading);
    /// How wide the widest button is, and how wide they stand in two columns.
    int oneColumn() const;
    int twoColumns() const;
    void place();

    Deeds &m_deeds;
    JobFeed &m_feed;
    const core::Kinds &m_kinds;
    QGridLayout *m_now;
    QLabel *m_notNowTitle;
    QGridLayout *m_notNow;
    std::vector<Row> m_rows;
    QString m_leading; ///< the act that leads on, or empty
    bool m_isNarrow = false; ///< there is room for one column alone
    std::vector<core::InterfaceId> m_items;
    std::optional<QString> m_subject;
};

} // namespace desktop
