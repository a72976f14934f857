// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QLineEdit>
#include <QListWidget>
#include <QMainWindow>
#include <QMenu>
#include <QMenuBar>
#include <QTest>

#include "app/desktop/parts/command_search.hpp"

using namespace Qt::StringLiterals;

/// Menus of an invented window, so that each row says what is in them.
class TstCommandSearch : public QObject {
    Q_OBJECT

private slots:
    void init();
    void lettersFind_data();
    void lettersFind();
    void enterDoesTheFirstThatCanBeDone();
    void arrowsChooseWhileTyping();
    void whatCannotBeDoneIsNotDone();

private:
    QStringList found() const
    {
        QStringList texts;
        for (int row = 0; row < m_search->findChild<QListWidget *>(u"found"_s)->count(); ++row)
            texts << m_search->findChild<QListWidget *>(u"found"_s)->item(row)->text();
        return texts;
    }
    QLineEdit *words() const { return m_search->findChild<QLineEdit *>(u"words"_s); }

    std::unique_ptr<QMainWindow> m_window;
    desktop::CommandSearch *m_search = nullptr;
    QStringList m_done;
};

void TstCommandSearch::init()
{
    m_done.clear();
    m_window = std::make_unique<QMainWindow>();
    QMenu *file = m_window->menuBar()->addMenu(u"&File"_s);
    file->addAction(u"&Export the record …"_s, QKeySequence(u"Ctrl+E"_s), m_window.get(), [this] { m_done << u"export"_s; });
    file->addSeparator();
    QMenu *act = m_window->menuBar()->addMenu(u"&Do"_s);
    connect(act, &QMenu::aboutToShow, act, [this, act] { // as the window fills its own
        act->clear();
        act->addAction(u"Disconnect\tD"_s, act, [this] { m_done << u"disconnect"_s; });
        QAction *close = act->addAction(u"Close the job"_s, act, [this] { m_done << u"close"_s; });
        close->setEnabled(false);
        close->setToolTip(u"91 loose ends"_s);
    });
    m_search = new desktop::CommandSearch(*m_window->menuBar(), m_window.get());
    m_search->show();
}

void TstCommandSearch::lettersFind_data()
{
    QTest::addColumn<QString>("letters");
    QTest::addColumn<QStringList>("commands");
    const QString exported = u"File › Export the record …   (Ctrl+E)"_s;
    const QString disconnect = u"Do › Disconnect   (D)"_s;
    const QString close = u"Do › Close the job: not now"_s;
    QTest::newRow("all") << QString() << QStringList{exported, disconnect, close};
    QTest::newRow("of its name") << u"conn"_s << QStringList{disconnect};
    QTest::newRow("of its menu") << u"fil"_s << QStringList{exported};
    QTest::newRow("of two words") << u"rec exp"_s << QStringList{exported};
    QTest::newRow("whatever the case") << u"EXPORT"_s << QStringList{exported};
    QTest::newRow("what cannot be done now") << u"close"_s << QStringList{close};
    QTest::newRow("of nothing") << u"paint"_s << QStringList{u"No command has these letters."_s};
}

void TstCommandSearch::lettersFind()
{
    QFETCH(QString, letters);
    QTest::keyClicks(words(), letters);
    QTEST(found(), "commands");
}

void TstCommandSearch::enterDoesTheFirstThatCanBeDone()
{
    QTest::keyClicks(words(), u"do"_s);
    QTest::keyClick(words(), Qt::Key_Return);
    QTRY_COMPARE(m_done, QStringList{u"disconnect"_s});
}

void TstCommandSearch::arrowsChooseWhileTyping()
{
    QTest::keyClick(words(), Qt::Key_Down);
    QTest::keyClick(words(), Qt::Key_Down); // there is none further that can be done
    QTest::keyClick(words(), Qt::Key_Return);
    QTRY_COMPARE(m_done, QStringList{u"disconnect"_s});
}

void TstCommandSearch::whatCannotBeDoneIsNotDone()
{
    QTest::keyClicks(words(), u"close"_s);
    QCOMPARE(m_search->findChild<QListWidget *>(u"found"_s)->item(0)->toolTip(), u"91 loose ends"_s);
    QTest::keyClick(words(), Qt::Key_Return);
    QTest::qWait(1);
    QCOMPARE(m_done, QStringList());
    QVERIFY(m_search->isVisible());
}

QTEST_MAIN(TstCommandSearch)
#include "tst_command_search.moc"
