// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QApplication>
#include <QPushButton>
#include <QSplitter>
#include <QTableView>
#include <QTest>

#include <algorithm>
#include <set>

#include "app/desktop/pages/job/job_place.hpp"
#include "app/desktop/pages/list/interface_model.hpp"
#include "app/desktop/parts/action_buttons.hpp"
#include "app/desktop/parts/item_card.hpp"
#include "app/desktop/parts/row_table.hpp"
#include "app/desktop/parts/theme.hpp"
#include "tests/app/desktop/all_screens.hpp"
#include "tests/app/desktop/on_screen.hpp"

using namespace Qt::StringLiterals;
using language::Language;

/// The buttons of what may be signed show all of their words, in every language, at 1366 × 768.
class TstActionButtons : public QObject {
    Q_OBJECT

private slots:
    void initTestCase()
    {
        QCOMPARE(m_screens.trouble(), QString());
        desktop::applyAppearance(*qApp, desktop::Appearance::Light);
    }
    void noneIsCutOnACard_data() { languages(); }
    void noneIsCutOnACard();
    void noneIsCutOnANarrowCard_data() { languages(); }
    void noneIsCutOnANarrowCard();
    void noneIsCutOnAPage_data() { languages(); }
    void noneIsCutOnAPage();

private:
    void languages();
    desktop::JobPlace &place() { return *m_screens.window().findChild<desktop::JobPlace *>(); }
    QStringList items();
    void choose(const QString &item);
    /// The first button that is not shown whole; empty where all are.
    QString cut();

    AllScreens m_screens;
};

void TstActionButtons::languages()
{
    QTest::addColumn<Language>("language");
    for (const language::LanguageLine &line : language::languages())
        QTest::addRow("%s", line.code) << line.language;
}

QStringList TstActionButtons::items()
{
    const auto *model = named<QTableView>(place(), "interfaces")->model();
    QStringList all;
    for (int row = 0; row < model->rowCount(); ++row)
        all << model->index(row, desktop::InterfaceModel::Id).data().toString();
    return all;
}

void TstActionButtons::choose(const QString &item)
{
    place().choose({*core::InterfaceId::parse(item)});
    for (int i = 0; i < 3; ++i)
        QCoreApplication::processEvents();
}

QString TstActionButtons::cut()
{
    for (const auto *buttons : m_screens.window().findChildren<desktop::ActionButtons *>()) {
        for (const QPushButton *one : buttons->findChildren<QPushButton *>()) {
            if (!one->isVisible())
                continue;
            int room = one->width();
            for (const QWidget *around = one->parentWidget(); around && !around->isWindow(); around = around->parentWidget())
                room = std::min(room, around->width() - one->mapTo(around, QPoint(0, 0)).x());
            if (room < one->sizeHint().width())
                return u"%1: %2 of %3"_s.arg(one->text()).arg(room).arg(one->sizeHint().width());
        }
    }
    return {};
}

void TstActionButtons::noneIsCutOnACard()
{
    QFETCH(Language, language);
    m_screens.speak(language);
    place().showPage(u"list"_s);
    const QStringList all = items();
    QVERIFY(all.size() > 10);
    choose(all.front());
    const auto *card = place().findChild<desktop::ItemCard *>();
    const int width = card->width();
    for (const QString &item : all) {
        choose(item);
        QVERIFY2(cut().isEmpty(), qPrintable(item + u", "_s + cut()));
        QCOMPARE(card->width(), width); // a table beside it that moves is read less well
    }
}

/// Drawn as narrow as it goes, where no two buttons fit beside each other: they stand below each other, and beside each other again once there is room.
void TstActionButtons::noneIsCutOnANarrowCard()
{
    QFETCH(Language, language);
    m_screens.speak(language);
    place().showPage(u"list"_s);
    const auto *card = place().findChild<desktop::ItemCard *>();
    auto *splitter = qobject_cast<QSplitter *>(card->parentWidget());
    QVERIFY(splitter);
    const QStringList all = items();
    const QList<int> wide = splitter->sizes();
    const auto columns = [&] {
        std::set<int> lefts;
        for (const QPushButton *one : card->findChild<desktop::ActionButtons *>()->findChildren<QPushButton *>()) {
            if (one->isVisible() && one->isEnabled())
                lefts.insert(one->x());
        }
        return lefts.size();
    };
    choose(all.front());
    QCOMPARE(columns(), 2U);
    splitter->setSizes({wide[0] + wide[1], 0});
    for (qsizetype at = 0; at < all.size(); at += 4) {
        choose(all[at]);
        QVERIFY2(cut().isEmpty(), qPrintable(all[at] + u", "_s + cut()));
    }
    choose(all.front());
    QCOMPARE(columns(), 1U);
    splitter->setSizes(wide);
    choose(all.front());
    QCOMPARE(columns(), 2U);
}

void TstActionButtons::noneIsCutOnAPage()
{
    QFETCH(Language, language);
    m_screens.speak(language);
    int met = 0;
    for (const AllScreens::Screen &screen : m_screens.pages()) {
        if (!screen.name.startsWith(u"page "))
            continue;
        screen.show();
        for (auto *table : m_screens.window().findChildren<desktop::RowTable *>()) {
            if (table->isVisible() && !table->model().rows().empty())
                table->choose(table->model().rows().front().key);
        }
        for (int i = 0; i < 3; ++i)
            QCoreApplication::processEvents();
        QVERIFY2(cut().isEmpty(), qPrintable(screen.name + u", "_s + cut()));
        ++met;
    }
    QVERIFY(met > 10);
}

QTEST_MAIN(TstActionButtons)
#include "tst_action_buttons.moc"
