// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QApplication>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPrinter>
#include <QScrollBar>
#include <QTableView>

#include "app/desktop/ask.hpp"
#include "app/desktop/pages/list/list_page.hpp"
#include "app/desktop/parts/theme.hpp"
#include "app/session/session.hpp"
#include "resources/resources.hpp"
#include "tests/bench/fixture/must.hpp"
#include "tests/bench/rows/row.hpp"

namespace bench {

using namespace Qt::StringLiterals;

namespace {

/// Nobody signs here.
class NoDeeds : public desktop::Deeds {
public:
    core::Refusals whyNot(const desktop::ActionLine &, const std::vector<core::InterfaceId> &, const std::optional<QString> &) const override { return {}; }
    void begin(const desktop::ActionLine &, const std::vector<core::InterfaceId> &, const std::optional<QString> &) override {}
    std::optional<core::PersonId> person() const override { return std::nullopt; }
};

/// Nobody is asked anything.
class NoAsk : public desktop::Ask {
public:
    std::optional<QString> fileToOpen(const QString &, const QString &) override { return std::nullopt; }
    std::optional<QString> folderToOpen(const QString &) override { return {}; }
    std::optional<QString> fileToSave(const QString &, const QString &, const QString &) override { return std::nullopt; }
    bool confirm(const QString &, const QString &, const QString &) override { return false; }
    void tell(const QString &, const QString &) override {}
    std::optional<QString> oneOf(const QString &, const QString &, const QStringList &) override { return std::nullopt; }
    std::unique_ptr<QPrinter> printer(const QString &) override { return nullptr; }
};

/// Sees a widget being painted.
class PaintWatch : public QObject {
public:
    explicit PaintWatch(QWidget *watched) { watched->installEventFilter(this); }
    bool eventFilter(QObject *, QEvent *event) override
    {
        m_isPainted = m_isPainted || event->type() == QEvent::Paint;
        return false;
    }
    /// Goes on until it was painted and nothing of it is left to paint.
    void waitForPaint()
    {
        bool wasPainted = false;
        for (int passes = 0; passes < 1000; ++passes) {
            m_isPainted = false;
            QCoreApplication::processEvents();
            if (wasPainted && !m_isPainted)
                return;
            wasPainted = wasPainted || m_isPainted;
        }
        giveUp(u"The list was not painted."_s);
    }

private:
    bool m_isPainted = false;
};

struct Key {
    int key;
    QString text;
};

/// Words typed letter by letter and taken back again: ids, kinds, tags, zones, several words.
std::vector<Key> keys()
{
    std::vector<Key> all;
    for (const QString &words : {u"connector 1"_s, u"left fuel"_s, u"d012"_s, u"right 7"_s, u"inspected b"_s}) {
        for (const QChar letter : words)
            all.push_back({letter.toUpper().unicode(), QString(letter)});
        for (qsizetype i = 0; i < words.size(); ++i)
            all.push_back({Qt::Key_Backspace, {}});
    }
    return all;
}

void press(QWidget *widget, const Key &key)
{
    QKeyEvent down(QEvent::KeyPress, key.key, Qt::NoModifier, key.text);
    QCoreApplication::sendEvent(widget, &down);
    QKeyEvent up(QEvent::KeyRelease, key.key, Qt::NoModifier, key.text);
    QCoreApplication::sendEvent(widget, &up);
}

/// The list page on a job, in a window of its own.
class ListWindow {
public:
    ListWindow(const session::Session &session, const core::Kinds &kinds)
        : m_page({m_feed, m_deeds, m_selection, m_ask, kinds, [](const core::Digest &) -> core::Result<QByteArray> { return QByteArray(); }})
    {
        m_feed.take(session.state(), session.said(), session.reg());
        m_page.resize(1500, 900);
        m_page.show();
        m_table = m_page.findChild<QTableView *>(u"interfaces"_s);
        m_words = m_page.findChild<QLineEdit *>(u"filter"_s);
        m_watch = std::make_unique<PaintWatch>(m_table->viewport());
        m_watch->waitForPaint();
    }

    /// Key by key: how long until the filtered rows are painted, and how long the same rows take to be painted again.
    Times type()
    {
        Times times;
        for (const Key &key : keys()) {
            const int before = m_table->model()->rowCount();
            times.program.push_back(1000 * secondsOf([&] {
                                        press(m_words, key);
                                        if (m_table->model()->rowCount() == before)
                                            m_table->viewport()->update(); // the same rows need no painting; count it all the same
                                        m_watch->waitForPaint();
                                    }));
            times.bare.push_back(1000 * secondsOf([&] {
                                     m_table->viewport()->update();
                                     m_watch->waitForPaint();
                                 }));
        }
        if (!m_words->text().isEmpty())
            giveUp(u"The keys did not reach the filter."_s);
        return times;
    }

    /// Down the whole list and up again, a page at a time.
    Times scroll()
    {
        Times times;
        auto *bar = m_table->verticalScrollBar();
        const auto to = [&](QAbstractSlider::SliderAction step) {
            times.program.push_back(1000 * secondsOf([&] {
                                        bar->triggerAction(step);
                                        m_watch->waitForPaint();
                                    }));
            times.bare.push_back(1000 * secondsOf([&] {
                                     m_table->viewport()->update();
                                     m_watch->waitForPaint();
                                 }));
        };
        while (bar->value() < bar->maximum())
            to(QAbstractSlider::SliderPageStepAdd);
        while (bar->value() > bar->minimum())
            to(QAbstractSlider::SliderPageStepSub);
        if (times.program.empty())
            giveUp(u"The list has no more than a page."_s);
        return times;
    }

private:
    desktop::JobFeed m_feed;
    NoDeeds m_deeds;
    desktop::Selection m_selection;
    NoAsk m_ask;
    desktop::ListPage m_page;
    QTableView *m_table;
    QLineEdit *m_words;
    std::unique_ptr<PaintWatch> m_watch;
};

} // namespace

std::vector<Figure> measureFilter(const Settings &settings)
{
    desktop::applyAppearance(*qobject_cast<QApplication *>(QCoreApplication::instance()), desktop::Appearance::Light);
    const JobShape shape = settings.shape();
    const BigJob job = bigJob(settings.cache, shape);
    auto store = must(db::Store::open(job.path, db::Access::ReadOnly));
    session::Session session(*store, session::systemClock());
    must(session.refresh());
    must(session.openJob(job.job));
    const core::Kinds kinds = must(resources::loadKinds());
    ListWindow window(session, kinds);
    (void)window.type(); // what is made at the first keystroke is kept

    const QString name = u"keystroke to paint, %1 rows"_s.arg(shape.interfaces);
    Figure p50{name + u", p50"_s, u"ms"_s, {}, atMost(1.20), u"repaint"_s};
    Figure p95{name + u", p95"_s, u"ms"_s, {}, atMost(2.0), u"repaint"_s};
    for (int i = 0; i < settings.repetitions; ++i) {
        const Times times = window.type();
        p50.repetitions.push_back(times.at(0.50));
        p95.repetitions.push_back(times.at(0.95));
    }
    const QString paging = u"page down to paint, %1 rows"_s.arg(shape.interfaces);
    Figure page50{paging + u", p50"_s, u"ms"_s, {}, atMost(1.20), u"repaint"_s};
    Figure page95{paging + u", p95"_s, u"ms"_s, {}, atMost(2.0), u"repaint"_s};
    (void)window.scroll();
    for (int i = 0; i < settings.repetitions; ++i) {
        const Times times = window.scroll();
        page50.repetitions.push_back(times.at(0.50));
        page95.repetitions.push_back(times.at(0.95));
    }
    return {p50, p95, page50, page95};
}

} // namespace bench
