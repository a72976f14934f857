// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/app/desktop/photo_bench.hpp"

#include <QApplication>
#include <QClipboard>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include "app/desktop/parts/person_field.hpp"
#include "app/desktop/scan/scanner_keys.hpp"

using namespace Qt::StringLiterals;

namespace {

void waitForScanner() { QTest::qWait(3 * desktop::ScannerKeys::longestGap); }

} // namespace

void pressKey(QWidget &in, Qt::Key key)
{
    QTest::keyClick(&in, key);
    waitForScanner();
}

void typeKeys(QWidget &in, const QString &text)
{
    QTest::keyClicks(&in, text);
    waitForScanner();
}

QString PhotoBench::setUp()
{
    m_bench = std::make_unique<Bench>();
    m_ask = std::make_unique<ScriptedAsk>();
    m_other = m_bench->another();
    m_job = m_other ? m_bench->openJob(*m_other) : std::nullopt;
    if (!m_bench->trouble().isEmpty() || !m_job)
        return u"no job on the bench: "_s + m_bench->trouble();
    for (const auto &[id, name] : {std::pair(u"D1"_s, u"Bleed duct"_s), std::pair(u"C1"_s, u"Clamp"_s)}) {
        if (const QString no = Bench::say(*m_other, *m_job, u"ana"_s, u"interface.listed"_s, id, {{u"name"_s, name}, {u"kind"_s, u"clamp"_s}, {u"zone"_s, u"Left"_s}}); !no.isEmpty())
            return no;
    }
    m_window = std::make_unique<desktop::MainWindow>(*m_ask, m_bench->kinds(), desktop::SessionMaker{m_bench->clock(), core::leastCost, session::IdentityRule::usualIdleLimit}, desktop::Preferences());
    m_window->resize(1366, 768);
    m_window->show();
    m_window->openStore(m_bench->path());
    m_window->openJob(*m_job);
    go("photos");
    return {};
}

void PhotoBench::tearDown()
{
    m_window.reset();
    m_other.reset();
    m_ask.reset();
    m_bench.reset();
    QApplication::clipboard()->clear();
}

void PhotoBench::press(const QWidget &in, const char *button) { QTest::mouseClick(named<QPushButton>(in, button), Qt::LeftButton); }

QString PhotoBench::told(const char *label) const
{
    const auto *said = named<QLabel>(page(), label);
    return said->isVisible() ? said->text() : QString();
}

QString PhotoBench::sign(const QString &person)
{
    if (!QTest::qWaitFor([this] { return sheet() != nullptr; }))
        return u"no sheet"_s;
    desktop::SignSheet &here = *sheet();
    auto *who = named<desktop::PersonField>(here, "person");
    if (who->isVisible())
        QTest::keyClicks(who->findChild<QLineEdit *>(), person);
    auto *secret = named<QLineEdit>(here, "secret");
    QTest::keyClicks(secret, Bench::pinOf(person));
    QTest::keyClick(secret, Qt::Key_Return);
    const QString problem = named<QLabel>(here, "problem")->text();
    if (!problem.isEmpty() || here.isVisible())
        return problem.isEmpty() ? u"still open"_s : problem;
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    return QTest::qWaitFor([this] { return sheet() == nullptr; }) ? QString() : u"sheet stays"_s;
}

const core::InterfaceState *PhotoBench::itemOf(const QString &id) const
{
    if (!m_other->refresh() || !m_other->openJob(*m_job))
        return nullptr;
    return m_other->state()->item(*core::InterfaceId::parse(id));
}

QStringList PhotoBench::photosOf(const QString &id) const
{
    const core::InterfaceState *of = itemOf(id);
    QStringList lines;
    for (const core::Photo &photo : of ? of->photos : std::vector<core::Photo>()) {
        QString line = photo.moment + u' ' + photo.mediaType;
        for (const core::PhotoMark &mark : photo.marks)
            line += u"; %1 at %2,%3 %4"_s.arg(mark.number).arg(mark.across).arg(mark.down).arg(mark.what);
        lines << line;
    }
    return lines;
}

QString PhotoBench::attach(const QString &id, const QByteArray &bytes, const QString &moment)
{
    if (!m_other->store().attachments().put(bytes, u"image/jpeg"_s))
        return u"not kept"_s;
    const QString no = Bench::say(*m_other, *m_job, u"ben"_s, u"photo.attached"_s, id, {{u"sha256"_s, core::Digest::of(bytes).hex()}, {u"media_type"_s, u"image/jpeg"_s}, {u"moment"_s, moment}});
    m_window->look();
    return no;
}
