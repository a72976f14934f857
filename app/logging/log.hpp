// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "app/logging/line.hpp"
#include "core/value/result.hpp"

#include <QString>

#include <memory>

namespace logging {

/// Where and how much. One file a program, since two programs that rotate one file shorten each other's.
struct Settings {
    QString folder;                    ///< made when missing, for its owner alone (0700)
    QString program;                   ///< the file is <program>.log, rotated to <program>.1.log and so on
    qint64 fileSize = 2 * 1024 * 1024; ///< bytes; at least 1
    int files = 5;                     ///< all files together, at least 1
};

/// What happened, for whoever has to find out why: one line an event, UTC time, process, level. Files are readable by
/// their owner alone (0600). Safe to use from several threads. Nothing here throws, and a log that cannot be written,
/// on a full disk say, stops nobody's work: it is told once on stderr and counted.
class Log {
public:
    /// Error: Io when the folder or file cannot be made. Go on with Log::none() then, and tell the user.
    static core::Result<Log> open(const Settings &settings);
    /// A log that keeps nothing.
    static Log none();

    Log(Log &&other) noexcept;
    Log &operator=(Log &&other) noexcept;
    ~Log();

    void info(QStringView event, const std::vector<Field> &fields = {}) const;
    void warning(QStringView event, const std::vector<Field> &fields = {}) const;
    void error(QStringView event, const std::vector<Field> &fields = {}) const;

    /// How many lines could not be written so far.
    int failures() const;

private:
    struct State;
    explicit Log(std::unique_ptr<State> state);
    void write(int level, QStringView event, const std::vector<Field> &fields) const;

    std::unique_ptr<State> m_state; ///< none: nothing is kept
};

} // namespace logging
