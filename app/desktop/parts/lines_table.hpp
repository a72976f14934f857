// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QKeyEvent>
#include <QTableWidget>

namespace desktop {

/// A table from which the keyboard finds out: past its last cell, and before its first, Tab leaves it as it leaves a line.
class LinesTable : public QTableWidget {
    Q_OBJECT

public:
    using QTableWidget::QTableWidget;

signals:
    /// Return was pressed in the last cell.
    void passed();

protected:
    bool focusNextPrevChild(bool next) override
    {
        setTabKeyNavigation(!isAtEnd(next));
        return QTableWidget::focusNextPrevChild(next);
    }

    void keyPressEvent(QKeyEvent *event) override
    {
        const bool isReturn = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
        if (isReturn && state() != EditingState)
            goOn();
        else
            QTableWidget::keyPressEvent(event);
    }

    void closeEditor(QWidget *editor, QAbstractItemDelegate::EndEditHint hint) override
    {
        const bool isTab = hint == QAbstractItemDelegate::EditNextItem || hint == QAbstractItemDelegate::EditPreviousItem;
        const bool leaves = isTab && isAtEnd(hint == QAbstractItemDelegate::EditNextItem);
        const bool isReturn = hint == QAbstractItemDelegate::SubmitModelCache;
        QTableWidget::closeEditor(editor, leaves || isReturn ? QAbstractItemDelegate::NoHint : hint);
        if (leaves)
            focusNextPrevChild(hint == QAbstractItemDelegate::EditNextItem);
        else if (isReturn)
            goOn();
    }

private:
    bool isAtEnd(bool next) const
    {
        const QModelIndex at = currentIndex();
        if (!at.isValid())
            return true;
        return next ? at.row() == rowCount() - 1 && at.column() == columnCount() - 1 : at.row() == 0 && at.column() == 0;
    }

    void goOn()
    {
        if (isAtEnd(true))
            emit passed();
        else
            setCurrentIndex(moveCursor(MoveNext, Qt::NoModifier));
    }
};

} // namespace desktop
