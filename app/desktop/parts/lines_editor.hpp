// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/desktop/parts/field_editor.hpp"

class QPushButton;

namespace desktop {

class LinesTable;

/// Lines of a field with columns, as a small table: typing into a cell begins it, Tab and Return go on through the cells and past the last one
/// on to what follows, and two large buttons add and remove a line. A cell of a choice is a list to choose from. An empty cell is no member; a line of empty cells is no line.
class LinesEditor : public FieldEditor {
    Q_OBJECT

public:
    LinesEditor(const core::Field &field, QWidget *parent);

    std::optional<core::json::Value> value() const override;
    void setValue(const core::json::Value &value) override;
    QWidget *control() override;

private:
    void addLine(const core::json::Object &line);
    void removeLine();
    void fitHeight();
    void showRemove();
    std::optional<core::json::Value> cell(int row, int column) const;

    core::Field m_field;
    LinesTable *m_table;
    QPushButton *m_remove;
};

} // namespace desktop
