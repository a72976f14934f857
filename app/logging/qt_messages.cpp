// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/logging/qt_messages.hpp"

#include <atomic>

namespace logging {

namespace {

// Qt takes a bare function, so what it needs to know has to stand beside it.
std::atomic<const Log *> target = nullptr;
std::atomic<QtMessageHandler> shownBefore = nullptr;

void receive(QtMsgType type, const QMessageLogContext &context, const QString &message)
{
    if (const Log *log = target.load()) {
        const std::vector<Field> fields = {{QStringLiteral("category"), QString::fromUtf8(context.category)},
                                           {QStringLiteral("text"), message}};
        if (type == QtInfoMsg)
            log->info(u"qt.message", fields);
        else if (type == QtWarningMsg)
            log->warning(u"qt.message", fields);
        else if (type == QtCriticalMsg || type == QtFatalMsg)
            log->error(u"qt.message", fields);
    }
    if (const QtMessageHandler before = shownBefore.load())
        before(type, context, message);
}

} // namespace

QtMessages::QtMessages(const Log &log)
{
    Q_ASSERT(!target.load());
    target = &log;
    m_before = qInstallMessageHandler(receive);
    shownBefore = m_before;
}

QtMessages::~QtMessages()
{
    qInstallMessageHandler(m_before);
    shownBefore = nullptr;
    target = nullptr;
}

} // namespace logging
