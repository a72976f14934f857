// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/drafts_file.hpp"

#include <QCoreApplication>

#include <algorithm>

namespace cli {

namespace {

using namespace Qt::StringLiterals;

QString tr(const char *text) { return QCoreApplication::translate("Cli", text); }

bool isKnown(const QString &name)
{
    constexpr QLatin1String known[] = {"author"_L1, "kind"_L1, "subject"_L1, "body"_L1};
    return std::any_of(std::begin(known), std::end(known), [&](QLatin1String one) { return one == name; });
}

core::Result<core::Draft> draftIn(const core::json::Object &object)
{
    for (const auto &[name, value] : object.members()) {
        if (!isKnown(name))
            return core::failure(core::ErrorCode::BadInput, tr("A draft has author, kind, subject and body, not \"%1\".").arg(name));
    }
    const auto author = core::PersonId::parse(object.text(u"author"));
    if (!author)
        return core::failure(core::ErrorCode::BadInput, tr("\"author\" must be a person's id."));
    if (object.text(u"kind").isEmpty())
        return core::failure(core::ErrorCode::BadInput, tr("\"kind\" must be a kind of entry, such as interface.disconnected."));
    const core::json::Value *subject = object.find(u"subject");
    if (subject && !subject->isNull() && !subject->string())
        return core::failure(core::ErrorCode::BadInput, tr("\"subject\" must be a text or null."));
    const core::json::Value *body = object.find(u"body");
    if (body && !body->object())
        return core::failure(core::ErrorCode::BadInput, tr("\"body\" must be an object."));
    return core::Draft{*author, core::Instant::fromMilliseconds(0), object.text(u"kind"),
                       subject && subject->string() ? std::optional(*subject->string()) : std::nullopt, body ? *body->object() : core::json::Object()};
}

core::Result<core::Draft> draftIn(QByteArrayView line)
{
    const auto object = core::json::parseObject(line);
    return object ? draftIn(*object) : core::failure(object.error());
}

} // namespace

DraftLines readDrafts(QByteArrayView bytes, const QString &fileName)
{
    std::vector<DraftLine> lines;
    std::vector<core::Error> faults;
    qint64 row = 0;
    for (const QByteArray &line : bytes.toByteArray().split('\n')) {
        ++row;
        if (line.trimmed().isEmpty())
            continue;
        auto draft = draftIn(QByteArrayView(line));
        if (draft)
            lines.push_back({row, *std::move(draft)});
        else
            faults.push_back({draft.error().code, draft.error().message, {fileName, row, std::nullopt}});
    }
    if (!faults.empty())
        return tl::unexpected(std::move(faults));
    return lines;
}

} // namespace cli
