// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

#include <functional>

#include "app/desktop/ask.hpp"
#include "app/desktop/deeds.hpp"
#include "app/desktop/given.hpp"
#include "app/desktop/job_feed.hpp"
#include "app/desktop/selection.hpp"
#include "core/kinds/kinds.hpp"

namespace desktop {

/// Reads a photo's bytes, or says why not.
using ReadAttachment = std::function<core::Result<QByteArray>(const core::Digest &)>;

/// What every page of a job gets.
struct PageTools {
    JobFeed &feed;
    Deeds &deeds;
    Selection &selection;
    Ask &ask;
    const core::Kinds &kinds;
    ReadAttachment readAttachment;
};

/// One page of a job. It shows the feed's state, asks Deeds, and knows no other page: where it wants to lead, it says so.
class Page : public QWidget {
    Q_OBJECT

public:
    explicit Page(const PageTools &tools, QWidget *parent = nullptr) : QWidget(parent), m_tools(tools) {}

    /// Makes a row the chosen one, where the page has rows and one of that key.
    virtual void chooseRow(const QString &) {}
    /// Whether something is under way here that is kept nowhere, and is lost with the page; what is typed apart, which is seen for itself (isAnythingTyped).
    virtual bool isAnythingUnsigned() const { return false; }

signals:
    /// Lead to the page of that name, and there to the row of that key.
    void pageWanted(const QString &page, const QString &row = {});
    /// Things of the whole job that need files or the store: see JobPlace.
    void importWanted();
    void exportListWanted();
    void exportPackageWanted();
    void exportRecordWanted();
    void verifyWanted();
    void backupWanted();
    void holdWanted();
    /// The sheet of an act, with what the page knows of its entry already.
    void sheetWanted(const QString &kind, const std::vector<core::InterfaceId> &items, const std::optional<QString> &subject, const desktop::Given &given);

protected:
    JobFeed &feed() const { return m_tools.feed; }
    Deeds &deeds() const { return m_tools.deeds; }
    Selection &selection() const { return m_tools.selection; }
    const PageTools &tools() const { return m_tools; }
    /// From now on `refresh` of this page is called when anything of the job changes, and for another job.
    template <class ThePage>
    void follow(void (ThePage::*refresh)())
    {
        connect(&feed(), &JobFeed::changed, static_cast<ThePage *>(this), refresh);
        connect(&feed(), &JobFeed::jobChanged, static_cast<ThePage *>(this), refresh);
    }

private:
    PageTools m_tools;
};

} // namespace desktop
