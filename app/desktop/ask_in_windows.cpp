// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/ask_in_windows.hpp"

#include <QFileDialog>
#include <QInputDialog>
#include <QMessageBox>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>

namespace desktop {

namespace {

std::optional<QString> chosen(const QString &path) { return path.isEmpty() ? std::nullopt : std::optional(path); }

} // namespace

std::optional<QString> AskInWindows::fileToOpen(const QString &title, const QString &filter)
{
    return chosen(QFileDialog::getOpenFileName(m_parent, title, {}, filter));
}

std::optional<QString> AskInWindows::folderToOpen(const QString &title) { return chosen(QFileDialog::getExistingDirectory(m_parent, title)); }

std::optional<QString> AskInWindows::fileToSave(const QString &title, const QString &suggestion, const QString &filter)
{
    return chosen(QFileDialog::getSaveFileName(m_parent, title, suggestion, filter));
}

bool AskInWindows::confirm(const QString &question, const QString &detail, const QString &yes)
{
    QMessageBox box(QMessageBox::Question, QString(), question, QMessageBox::Cancel, m_parent);
    box.setInformativeText(detail);
    box.setWindowModality(Qt::WindowModal); // the manual beside it can be read
    const QPushButton *go = box.addButton(yes, QMessageBox::AcceptRole);
    box.setDefaultButton(QMessageBox::Cancel);
    box.exec();
    return box.clickedButton() == go;
}

void AskInWindows::tell(const QString &title, const QString &message)
{
    QMessageBox box(QMessageBox::Information, title, title, QMessageBox::Ok, m_parent);
    box.setInformativeText(message);
    box.setWindowModality(Qt::WindowModal);
    box.exec();
}

std::optional<QString> AskInWindows::oneOf(const QString &title, const QString &question, const QStringList &choices)
{
    QInputDialog dialog(m_parent);
    dialog.setWindowTitle(title);
    dialog.setLabelText(question);
    dialog.setComboBoxItems(choices);
    dialog.setWindowModality(Qt::WindowModal);
    return dialog.exec() == QDialog::Accepted ? std::optional(dialog.textValue()) : std::nullopt;
}

std::unique_ptr<QPrinter> AskInWindows::printer(const QString &title)
{
    auto printer = std::make_unique<QPrinter>();
    QPrintDialog dialog(printer.get(), m_parent);
    dialog.setWindowTitle(title);
    return dialog.exec() == QDialog::Accepted ? std::move(printer) : nullptr;
}

} // namespace desktop
