// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/parts/item_card.hpp"

#include <QGridLayout>
#include <QLabel>
#include <QPainter>
#include <QPixmap>
#include <QPushButton>
#include <QScrollBar>
#include <QVBoxLayout>

#include "app/desktop/parts/action_buttons.hpp"
#include "app/desktop/parts/item_facts.hpp"
#include "app/desktop/parts/labels.hpp"
#include "app/desktop/parts/photo_words.hpp"
#include "app/desktop/parts/stage_glyph.hpp"
#include "app/desktop/parts/words.hpp"
#include "app/photos/mark_picture.hpp"
#include "app/photos/photo_file.hpp"
#include "core/value/error_words.hpp"

namespace desktop {

namespace {

QPixmap withMarks(QImage picture, const std::vector<core::PhotoMark> &marks, double size)
{
    picture.convertTo(QImage::Format_ARGB32_Premultiplied); // nobody paints on a picture of few colours
    QPainter painter(&picture);
    for (const core::PhotoMark &mark : marks)
        photos::drawMark(painter, mark, QRectF(QPointF(), QSizeF(picture.size())), size, photos::MarkLook::Signed);
    painter.end();
    return QPixmap::fromImage(picture);
}

} // namespace

ItemCard::ItemCard(const PageTools &tools, const std::vector<QLatin1String> &kinds, QWidget *parent)
    : QScrollArea(parent), m_tools(tools)
{
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus);
    auto *inner = new QWidget(this);
    auto *column = new QVBoxLayout(inner);
    const int gap = fontMetrics().height();
    column->setContentsMargins(gap, gap / 2, gap, gap);
    column->setSpacing(gap / 2);
    m_id = makeLabel({}, "title", inner);
    m_name = makeLabel({}, "heading", inner);
    m_stage = new StageMark(inner);
    m_caution = makeLabel({}, "caution", inner);
    m_actions = new ActionButtons(tools.deeds, tools.feed, tools.kinds, kinds, inner);
    m_below = new QVBoxLayout;
    m_below->setSpacing(gap / 3);
    m_governs = makeLabel(tr("The approved maintenance data governs. What is shown here is its copy in the list."), "quiet", inner);
    for (QWidget *widget : std::initializer_list<QWidget *>{m_id, m_name, m_stage, m_caution, m_actions})
        column->addWidget(widget);
    column->addLayout(m_below);
    column->addStretch();
    column->addWidget(m_governs);
    setWidget(inner);
    setMinimumWidth(fontMetrics().averageCharWidth() * 48);
    connect(&tools.feed, &JobFeed::changed, this, [this] { show(m_items); });
    connect(&tools.feed, &JobFeed::jobChanged, this, [this] { show({}); });
    showNone();
}

void ItemCard::show(const std::vector<core::InterfaceId> &items)
{
    const bool isSame = items == m_items;
    const int scrolled = verticalScrollBar()->value();
    m_items = items;
    clearLayout(m_below);
    const core::InterfaceState *item = m_tools.feed.state() && items.size() == 1 ? m_tools.feed.state()->item(items.front()) : nullptr;
    m_actions->show(item || items.size() > 1 ? items : std::vector<core::InterfaceId>());
    m_stage->setVisible(item);
    m_governs->setVisible(item);
    m_caution->hide();
    if (item)
        showOne(*item);
    else if (items.size() > 1)
        showMany(items);
    else
        showNone();
    verticalScrollBar()->setValue(isSame ? scrolled : 0);
}

void ItemCard::showNone()
{
    m_id->setText(tr("No item chosen"));
    m_name->setText(tr("Choose an interface in the list. Several at once can be signed together."));
    m_stage->hide();
    m_caution->hide();
    m_governs->hide();
    m_actions->show({});
}

void ItemCard::showMany(const std::vector<core::InterfaceId> &items)
{
    m_id->setText(tr("%n items", nullptr, static_cast<int>(items.size())));
    QStringList ids;
    for (const core::InterfaceId &id : items)
        ids << id.text();
    m_name->setText(ids.join(QStringLiteral(", ")));
}

void ItemCard::showOne(const core::InterfaceState &item)
{
    m_id->setText(item.listed.id.text());
    m_name->setText(item.listed.critical ? tr("%1 (critical)").arg(item.listed.name) : item.listed.name);
    m_stage->setStage(core::stageOf(item));
    const core::Kind *kind = m_tools.kinds.find(item.listed.kind);
    m_caution->setText(kind ? core::wordOfKind(kind->caution) : QString());
    m_caution->setVisible(kind && !kind->caution.isEmpty());
    addRequirements(item);
    addFacts(tr("Recorded"), recordedAbout(item, *m_tools.feed.state(), m_tools.feed.reg()), tr("Nothing yet."));
    addPhotos(item);
    addFacts(tr("Listed"), listedAbout(item, m_tools.kinds), {});
    addLookAt(item);
}

void ItemCard::addRequirements(const core::InterfaceState &item)
{
    const auto all = requirementsOf(item);
    if (all.empty())
        return;
    m_below->addWidget(makeLabel(tr("To show"), "heading", widget()));
    for (const Shown &shown : all) {
        const QString text = shown.isShown ? tr("✓ %1").arg(shown.title) : tr("○ %1: %2").arg(shown.title, shown.missing);
        m_below->addWidget(makeLabel(text, shown.isShown || !item.restoration ? "quiet" : "alarm", widget()));
    }
}

void ItemCard::addLookAt(const core::InterfaceState &item)
{
    const core::Kind *kind = m_tools.kinds.find(item.listed.kind);
    if (!kind || kind->lookAt.empty())
        return;
    m_below->addWidget(makeLabel(tr("Look at"), "heading", widget()));
    for (const QString &sentence : kind->lookAt)
        m_below->addWidget(makeLabel(tr("• %1").arg(core::wordOfKind(sentence)), "", widget()));
}

void ItemCard::addFacts(const QString &heading, const std::vector<Fact> &facts, const QString &none)
{
    if (facts.empty() && none.isEmpty())
        return;
    m_below->addWidget(makeLabel(heading, "heading", widget()));
    if (facts.empty()) {
        m_below->addWidget(makeLabel(none, "quiet", widget()));
        return;
    }
    auto *area = new QWidget(widget());
    auto *grid = new QGridLayout(area);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setColumnStretch(1, 1);
    grid->setHorizontalSpacing(fontMetrics().averageCharWidth() * 2);
    int row = 0;
    for (const Fact &fact : facts) {
        QLabel *title = makeLabel(fact.title, "label", area);
        title->setWordWrap(false);
        grid->addWidget(title, row, 0, Qt::AlignTop);
        if (!fact.value.isEmpty())
            grid->addWidget(makeLabel(fact.value, "", area), row++, 1);
        if (!fact.by.isEmpty())
            grid->addWidget(makeLabel(fact.by, "quiet", area), row++, 1);
    }
    m_below->addWidget(area);
}

void ItemCard::addPhotos(const core::InterfaceState &item)
{
    if (item.photos.empty())
        return;
    m_below->addWidget(makeLabel(tr("Photos"), "heading", widget()));
    const QSize most(fontMetrics().averageCharWidth() * 40, fontMetrics().height() * 12);
    for (const core::Photo &photo : item.photos) {
        const QString caption = photoInWords(photo, *m_tools.feed.state(), m_tools.feed.reg());
        const auto bytes = m_tools.readAttachment ? m_tools.readAttachment(photo.digest) : core::Result<QByteArray>(core::failure(core::ErrorCode::NotFound, tr("The photo is not at hand.")));
        const auto picture = bytes ? photos::upright(*bytes, most) : core::failure(bytes.error());
        if (!picture) {
            m_below->addWidget(makeLabel(tr("%1 (%2)").arg(caption, core::errorInWords(picture.error())), "alarm", widget()));
            continue;
        }
        auto *label = new QLabel(widget());
        label->setPixmap(withMarks(*picture, photo.marks, fontMetrics().height()));
        label->setAccessibleName(caption);
        m_below->addWidget(label);
        m_below->addWidget(makeLabel(caption, "quiet", widget()));
        for (const core::PhotoMark &mark : photo.marks)
            m_below->addWidget(makeLabel(tr("%1  %2").arg(QString::number(mark.number), mark.what), "", widget()));
    }
    QPushButton *beside = makeButton(tr("Before and after, side by side"), "link", widget());
    beside->setObjectName(QStringLiteral("sideBySide"));
    m_below->addWidget(beside, 0, Qt::AlignLeft);
    connect(beside, &QPushButton::clicked, this, [this, id = item.listed.id.text()] { emit photosWanted(id); });
}

} // namespace desktop
