// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QByteArray>
#include <QByteArrayView>
#include <QHash>
#include <QString>
#include <QStringView>

#include <array>
#include <compare>
#include <cstdint>
#include <memory>
#include <optional>

namespace core {

/// A SHA-256 digest: 32 bytes. Written as 64 lower-case hex digits.
class Digest {
public:
    static constexpr qsizetype size = 32;

    /// All zeros: the `prev` of the first entry of a ledger.
    Digest() = default;

    /// From exactly 32 bytes, or nothing.
    static std::optional<Digest> fromBytes(QByteArrayView bytes);

    /// From 64 lower-case hex digits, or nothing. Capitals are refused: one digest, one spelling.
    static std::optional<Digest> parse(QStringView hex);

    /// SHA-256 (FIPS 180-4) of `bytes`. May be asked in any thread. Without memory for it the program stops: a digest that
    /// was not made must never be signed.
    static Digest of(QByteArrayView bytes);

    QString hex() const;
    QByteArray bytes() const;
    auto operator<=>(const Digest &) const = default;
    friend size_t qHash(const Digest &d, size_t seed = 0) { return qHashBits(d.m_bytes.data(), size, seed); }

private:
    friend class DigestStream;
    std::array<std::uint8_t, 32> m_bytes{};
};

/// SHA-256 of bytes that come in pieces.
class DigestStream {
public:
    DigestStream();
    ~DigestStream();
    DigestStream(DigestStream &&) noexcept;
    DigestStream &operator=(DigestStream &&) noexcept;

    void add(QByteArrayView bytes);
    /// Of all that was added so far; more may follow.
    Digest soFar() const;

private:
    friend class Digest;
    struct State;
    std::unique_ptr<State> m_state;
};

} // namespace core
