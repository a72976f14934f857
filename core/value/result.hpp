// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <optional>

// The packaged library does not say [[nodiscard]], an alias cannot, and a class derived from it loses and_then. This
// header is the only one that includes the library, so the attribute comes first.
namespace tl {
template <class T, class E>
class [[nodiscard]] expected;
}

#include <tl/expected.hpp>

namespace core {

/// What kind of no the world said. Programs act on the code; people read the message.
enum class ErrorCode {
    BadInput,   ///< a file, row or value that cannot be taken
    NotFound,   ///< no such file, ledger, person, attachment
    NotAStore,  ///< the file is something else
    StoreNewer, ///< written by a later version of the program
    ReadOnly,   ///< may be read but not written
    Damaged,    ///< content does not hold together
    Locked,     ///< another program holds it, or a secret is locked out
    HeadMoved,  ///< another entry arrived first: fold again, ask again, sign again
    WrongSecret,
    Refused,   ///< a rule said no; the refusals travel beside the error
    NoSpace,
    Io,        ///< any other failure to read or write
    Crypto,    ///< the cryptographic library reported a failure
    Cancelled,
};

/// Where in the input the fault lies. Rows and columns count from 1.
struct Where {
    QString file;
    std::optional<qint64> row;
    std::optional<qint64> column;
    bool operator==(const Where &) const = default;
};

/// The world said no. `message` tells a technician what happened and what to do next.
struct Error {
    ErrorCode code;
    QString message;
    Where where{};
    bool operator==(const Error &) const = default;
};

/// A value, or the reason why there is none.
template <class T>
using Result = tl::expected<T, Error>;

inline tl::unexpected<Error> failure(ErrorCode code, const QString &message, const Where &where = {})
{
    return tl::unexpected<Error>(Error{code, message, where});
}

inline tl::unexpected<Error> failure(const Error &error) { return tl::unexpected<Error>(error); }

} // namespace core
