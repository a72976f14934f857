// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/logging/log.hpp"

#include <QCoreApplication>
#include <QDir>
#include <QFile>

#include <spdlog/logger.h>
#include <spdlog/pattern_formatter.h>
#include <spdlog/sinks/rotating_file_sink.h>

#include <sys/stat.h>

#include <atomic>
#include <cstdio>

namespace logging {

/// The counter lives apart from the logger, which holds on to the handler that counts.
struct Log::State {
    std::shared_ptr<spdlog::logger> logger;
    std::shared_ptr<std::atomic<int>> failures;
};

namespace {

core::Result<void> makeFolder(const QString &folder)
{
    const auto ownerOnly = QFileDevice::ReadOwner | QFileDevice::WriteOwner | QFileDevice::ExeOwner;
    if (QDir().mkpath(folder) && QFile::setPermissions(folder, ownerOnly))
        return {};
    return core::failure(core::ErrorCode::Io,
                         QCoreApplication::translate("Log", "The folder for the log cannot be made. "
                                                            "Check who may write there; work goes on without a log."),
                         {folder, {}, {}});
}

spdlog::file_event_handlers ownerOnlyFiles()
{
    spdlog::file_event_handlers handlers;
    handlers.after_open = [](const spdlog::filename_t &, std::FILE *file) {
        // The folder is closed to others already, so nobody can slip in between opening and this.
        if (file)
            (void)::fchmod(::fileno(file), S_IRUSR | S_IWUSR); // where a disk knows no owners, the log is still worth keeping
    };
    return handlers;
}

std::shared_ptr<spdlog::logger> makeLogger(const Settings &settings, const std::shared_ptr<std::atomic<int>> &failures)
{
    const QString path = settings.folder + u'/' + settings.program + QStringLiteral(".log");
    auto sink = std::make_shared<spdlog::sinks::rotating_file_sink_mt>(
        QFile::encodeName(path).toStdString(), size_t(qMax<qint64>(1, settings.fileSize)),
        size_t(qMax(1, settings.files) - 1), false, ownerOnlyFiles());
    auto logger = std::make_shared<spdlog::logger>(settings.program.toStdString(), std::move(sink));
    logger->set_formatter(
        std::make_unique<spdlog::pattern_formatter>("%Y-%m-%dT%H:%M:%S.%eZ %P %l %v", spdlog::pattern_time_type::utc));
    logger->flush_on(spdlog::level::trace); // a log that ends before the crash explains nothing
    logger->set_error_handler([failures](const std::string &reason) {
        if (failures->fetch_add(1) == 0)
            std::fprintf(stderr, "remate: the log cannot be written: %s\n", reason.c_str());
    });
    return logger;
}

} // namespace

core::Result<Log> Log::open(const Settings &settings)
{
    if (auto made = makeFolder(settings.folder); !made)
        return core::failure(made.error());
    auto failures = std::make_shared<std::atomic<int>>(0);
    try {
        return Log(std::make_unique<State>(State{makeLogger(settings, failures), failures}));
    } catch (const std::exception &reason) {
        return core::failure(core::ErrorCode::Io,
                             QCoreApplication::translate("Log",
                                                         "The log cannot be opened (%1). "
                                                         "Check who may write there; work goes on without a log.")
                                 .arg(QString::fromLocal8Bit(reason.what())),
                             {settings.folder, {}, {}});
    }
}

Log Log::none() { return Log(nullptr); }

Log::Log(std::unique_ptr<State> state) : m_state(std::move(state)) {}
Log::Log(Log &&other) noexcept = default;
Log &Log::operator=(Log &&other) noexcept = default;
Log::~Log() = default;

void Log::info(QStringView event, const std::vector<Field> &fields) const { write(spdlog::level::info, event, fields); }

void Log::warning(QStringView event, const std::vector<Field> &fields) const
{
    write(spdlog::level::warn, event, fields);
}

void Log::error(QStringView event, const std::vector<Field> &fields) const { write(spdlog::level::err, event, fields); }

int Log::failures() const { return m_state ? m_state->failures->load() : 0; }

void Log::write(int level, QStringView event, const std::vector<Field> &fields) const
{
    if (m_state)
        m_state->logger->log(static_cast<spdlog::level::level_enum>(level), line(event, fields).toStdString());
}

} // namespace logging
