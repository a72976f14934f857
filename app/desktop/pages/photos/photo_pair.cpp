// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/pages/photos/photo_pair.hpp"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include "app/desktop/parts/labels.hpp"

namespace desktop {

using namespace Qt::StringLiterals;

namespace {

constexpr double step = 1.5;

} // namespace

PhotoPair::PhotoPair(QWidget *parent) : QWidget(parent)
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    // In a grid, so that both begin at one height whatever is said above them.
    auto *grid = new QGridLayout;
    grid->setRowStretch(1, 1);
    for (const Side side : {Side::Left, Side::Right})
        makeSide(side, *grid);
    column->addLayout(grid, 1);
    column->addWidget(makeButtons());
    activate(Side::Left);
}

void PhotoPair::makeSide(Side side, QGridLayout &grid)
{
    const int gridColumn = static_cast<int>(at(side));
    auto *view = new PhotoView(side == Side::Left ? tr("Photo on the left") : tr("Photo on the right"), this);
    view->setObjectName(side == Side::Left ? u"left"_s : u"right"_s);
    QLabel *words = makeLabel({}, "", this);
    words->setObjectName(side == Side::Left ? u"leftWords"_s : u"rightWords"_s);
    words->hide();
    grid.addWidget(words, 0, gridColumn, Qt::AlignBottom);
    grid.addWidget(view, 1, gridColumn);
    grid.setColumnStretch(gridColumn, 1);
    m_words[at(side)] = words;
    m_views[at(side)] = view;
    connect(view, &PhotoView::lensWanted, this, &PhotoPair::look);
    connect(view, &PhotoView::touched, this, [this, side] { activate(side); });
    connect(view, &PhotoView::placed, this, [this, side](const QPointF &place) {
        activate(side);
        emit placed(place);
    });
}

QWidget *PhotoPair::makeButtons()
{
    auto *bar = new QWidget(this);
    auto *row = new QHBoxLayout(bar);
    row->setContentsMargins(0, 0, 0, 0);
    const auto add = [&](const QString &text, const QString &name, auto wanted) {
        QPushButton *button = makeButton(text, "", bar);
        button->setObjectName(name);
        row->addWidget(button);
        connect(button, &QPushButton::clicked, this, [this, wanted] { look(wanted(m_lens)); });
    };
    add(tr("Larger"), u"larger"_s, [](const Lens &lens) { return zoomed(lens, step, lens.centre); });
    add(tr("Smaller"), u"smaller"_s, [](const Lens &lens) { return zoomed(lens, 1 / step, lens.centre); });
    add(tr("All of it"), u"whole"_s, [](const Lens &) { return Lens(); });
    row->addStretch();
    return bar;
}

void PhotoPair::show(Side side, ShownPhoto photo)
{
    m_words[at(side)]->setText(photo.picture.isNull() ? QString() : photo.words);
    m_words[at(side)]->setVisible(!m_words[at(side)]->text().isEmpty()); // an empty line is one more stop for a screen reader
    m_views[at(side)]->show(std::move(photo));
}

void PhotoPair::look(const Lens &lens)
{
    m_lens = lens;
    for (PhotoView *view : m_views)
        view->setLens(lens);
}

void PhotoPair::activate(Side side)
{
    const bool isAnother = side != m_active;
    m_active = side;
    m_views[at(side)]->setActive(true);
    m_views[1 - at(side)]->setActive(false);
    if (isAnother)
        emit activeChanged();
}

void PhotoPair::setMarking(bool isMarking)
{
    for (PhotoView *view : m_views)
        view->setMarking(isMarking);
}

} // namespace desktop
