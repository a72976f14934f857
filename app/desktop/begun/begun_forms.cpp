// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/desktop/begun/begun_forms.hpp"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QSaveFile>

#include "core/value/digest.hpp"

namespace desktop {

namespace {

using namespace Qt::StringLiterals;
using core::json::Object;

struct BegunWords {
    Q_DECLARE_TR_FUNCTIONS(BegunForms)
};

constexpr qint64 version = 1;
constexpr qint64 largest = 4 * 1024 * 1024; ///< bytes; nobody types that much

Object nameOf(const FormName &form)
{
    const std::vector<QString> subjects(form.subjects.begin(), form.subjects.end());
    return {{u"store"_s, form.store}, {u"job"_s, form.job}, {u"act"_s, form.act}, {u"subjects"_s, core::json::arrayOf(subjects)}};
}

/// Nothing where it is not one of ours, or of another form.
std::optional<Begun> begunIn(const QByteArray &bytes, const FormName &form)
{
    const auto object = core::json::parseObject(bytes);
    if (!object)
        return std::nullopt;
    const core::json::Value *is = object->find(u"version");
    const core::json::Value *name = object->find(u"form");
    const core::json::Value *typed = object->find(u"typed");
    const auto at = core::Instant::parseLedger(object->text(u"at"));
    if (!is || !is->integer() || *is->integer() != version || !name || !(*name == core::json::Value(nameOf(form))) || !typed || !typed->object() || !at)
        return std::nullopt;
    return Begun{*at, *typed->object()};
}

} // namespace

QString BegunForms::pathOf(const FormName &form) const
{
    return QDir(m_folder).filePath(core::Digest::of(core::json::canonical(nameOf(form))).hex() + u".json"_s);
}

core::Error BegunForms::setAside(const QString &path) const
{
    const QString aside = path + u".damaged"_s;
    QFile::remove(aside);
    const bool isAside = QFile::rename(path, aside) || QFile::remove(path);
    return {core::ErrorCode::Damaged,
            isAside ? BegunWords::tr("Something was typed here before and not signed, but it cannot be read any more. It was set aside as %1. Fill in the form anew; nothing that was signed is touched.").arg(aside)
                    : BegunWords::tr("Something was typed here before and not signed, but %1 cannot be read and cannot be set aside. Look at the rights of its folder. Fill in the form anew; nothing that was signed is touched.").arg(path)};
}

core::Result<std::optional<Begun>> BegunForms::find(const FormName &form) const
{
    const QString path = pathOf(form);
    QFile file(path);
    if (!file.exists())
        return std::optional<Begun>();
    if (!file.open(QIODevice::ReadOnly) || file.size() > largest) {
        file.close();
        return core::failure(setAside(path));
    }
    auto begun = begunIn(file.readAll(), form);
    file.close();
    if (!begun)
        return core::failure(setAside(path));
    return begun;
}

core::Result<void> BegunForms::keep(const FormName &form, const Begun &begun) const
{
    const auto failed = [this](const QString &why) {
        return core::failure(core::ErrorCode::Io, BegunWords::tr("What you type here is not kept if the program ends: %1 cannot be written (%2). Make room or mend the rights of the folder, or sign before you leave.").arg(m_folder, why));
    };
    QDir folder(m_folder);
    if (!folder.mkpath(u"."_s) || !QFile::setPermissions(m_folder, QFile::ReadOwner | QFile::WriteOwner | QFile::ExeOwner))
        return failed(BegunWords::tr("the folder cannot be made"));
    const Object whole{{u"version"_s, version}, {u"form"_s, nameOf(form)}, {u"at"_s, begun.at.text()}, {u"typed"_s, begun.typed}};
    QSaveFile file(pathOf(form));
    // Its rights before its content.
    if (!file.open(QIODevice::WriteOnly) || !file.setPermissions(QFile::ReadOwner | QFile::WriteOwner))
        return failed(file.errorString());
    const QByteArray bytes = core::json::canonical(whole);
    if (file.write(bytes) != bytes.size() || !file.commit())
        return failed(file.errorString());
    return {};
}

core::Result<void> BegunForms::drop(const FormName &form) const
{
    QFile file(pathOf(form));
    if (file.exists() && !file.remove())
        return core::failure(core::ErrorCode::Io, BegunWords::tr("What was typed here stays in %1, which cannot be removed (%2). Remove it by hand.").arg(file.fileName(), file.errorString()));
    return {};
}

void BegunForms::dropOld(const core::Instant &now) const
{
    const QDateTime oldest = QDateTime::fromMSecsSinceEpoch(now.milliseconds(), Qt::UTC).addDays(-keptDays);
    for (const QFileInfo &file : QDir(m_folder).entryInfoList({u"*.json"_s, u"*.damaged"_s}, QDir::Files)) {
        if (file.lastModified() < oldest)
            QFile::remove(file.filePath());
    }
}

} // namespace desktop
