// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QWidget>

#include <vector>

#include "app/desktop/deeds.hpp"
#include "core/acts/act.hpp"

class QFormLayout;
class QPushButton;
class QVBoxLayout;

namespace desktop {

class FieldEditor;

/// A form made from a list of fields, for one entry or several that are signed together. A field that is the same for all
/// is shown once; a field of `each` is shown for every entry that needs it; what is seldom needed waits under "More".
class FieldForm : public QWidget {
    Q_OBJECT

public:
    struct Plan {
        const std::vector<core::Field> &fields; ///< of an act or a calculation
        std::vector<Seed> seeds;
        std::vector<QLatin1String> each;
        const core::Register &reg;
        const core::JobState *job; ///< nullptr for acts of the register
        std::vector<core::FromTable> tables{};
    };

    explicit FieldForm(const Plan &plan, QWidget *parent = nullptr);

    /// The bodies as they stand now, one for each seed.
    std::vector<core::json::Object> bodies() const;
    /// Puts a value into every field of that name, as if it had been typed.
    void fill(const QString &name, const core::json::Value &value);
    /// Adds what stands in each field, by the editor's name; empty text for nothing. Without statements, which are ticked by whoever signs.
    void addTyped(core::json::Object &typed) const;
    /// Puts back what addTyped() gave, whichever of it is there; the seldom fields show where one of them is otherwise than it stands.
    void typeAgain(const core::json::Object &typed);
    /// Nothing is asked.
    bool isEmpty() const { return m_bound.empty(); }
    /// The first field that must be filled and is not, or nullptr.
    QWidget *firstGap() const;
    /// What still has to be filled in, as labels.
    QStringList gaps() const;

signals:
    void edited();
    /// Return was pressed in the last field.
    void finished();
    /// A field needs more room than before, or less.
    void heightChanged();
    /// The tables of a field are wanted.
    void tablesWanted(const QString &field);

protected:
    void showEvent(QShowEvent *event) override;

private:
    struct Bound {
        FieldEditor *editor;
        QString name;
        QString label;
        std::optional<std::size_t> seed; ///< nothing: of all
        bool isNeeded;
        bool isStated; ///< statements that somebody looked
    };
    void addShared(const Plan &plan, const core::Field &field, QFormLayout *usual, QFormLayout *seldom);
    void addEach(const Plan &plan, const core::Field &field, std::size_t seed, QFormLayout *into);
    void addTableButton(FieldEditor &editor, const QString &name, const QString &label);
    void bind(FieldEditor *editor, Bound bound);
    void shareUnits();
    void goOn(FieldEditor *from);

    QPushButton *m_more = nullptr;
    std::vector<Seed> m_seeds;
    std::vector<Bound> m_bound;
};

} // namespace desktop
