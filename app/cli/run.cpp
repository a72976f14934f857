// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/cli/run.hpp"

#include <QElapsedTimer>

#include <cstdio>

#include "app/cli/tell.hpp"
#include "core/value/error_words.hpp"

namespace cli {

namespace {

using namespace Qt::StringLiterals;

/// False when the whole could not be written, to a full disk say.
bool print(FILE *stream, const QByteArray &bytes)
{
    const bool all = std::fwrite(bytes.data(), 1, static_cast<std::size_t>(bytes.size()), stream) == static_cast<std::size_t>(bytes.size());
    return std::fflush(stream) == 0 && all;
}

bool print(FILE *stream, const QString &text) { return text.isEmpty() || print(stream, text.toUtf8() + '\n'); }

bool printJson(FILE *stream, const core::json::Object &object) { return print(stream, core::json::canonical(object) + '\n'); }

Exit printAnswer(const Answer &answer, bool asJson)
{
    print(stderr, answer.trouble);
    const bool written = asJson ? printJson(stdout, answer.json) : print(stdout, answer.text);
    return written ? answer.exit : Exit::World;
}

Exit printError(const core::Error &error, bool asJson)
{
    if (asJson)
        printJson(stderr, {{u"error"_s, errorJson(error)}});
    else
        print(stderr, core::errorInWords(error));
    return exitOf(error.code);
}

} // namespace

int run(const Invocation &invocation, const Context &context)
{
    QElapsedTimer timer;
    timer.start();
    const QString name = invocation.command->name;
    context.log.info(u"command.starting", {{u"command"_s, name}});
    const auto answer = invocation.command->run(invocation.arguments, context);
    const Exit exit = answer ? printAnswer(*answer, invocation.asJson) : printError(answer.error(), invocation.asJson);
    context.log.info(u"command.ended", {{u"command"_s, name}, {u"exit"_s, QString::number(static_cast<int>(exit))}, {u"ms"_s, QString::number(timer.elapsed())}});
    return static_cast<int>(exit);
}

int tell(const Told &told)
{
    print(told.exit == Exit::Good ? stdout : stderr, told.text);
    return static_cast<int>(told.exit);
}

} // namespace cli
