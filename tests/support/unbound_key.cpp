// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/support/unbound_key.hpp"

#include <sodium.h>

namespace unbound {

namespace {

unsigned char *raw(QByteArray &bytes) { return reinterpret_cast<unsigned char *>(bytes.data()); }

} // namespace

core::WrappedKey wrap(const core::SigningKey &key, const core::PersonId &person, const QString &secret)
{
    core::WrappedKey wrapped{core::leastCost, QByteArray(crypto_pwhash_SALTBYTES, 's'), QByteArray(crypto_aead_xchacha20poly1305_ietf_NPUBBYTES, 'n'),
                             QByteArray(crypto_sign_SEEDBYTES + crypto_aead_xchacha20poly1305_ietf_ABYTES, '\0'), std::nullopt};
    QByteArray stretched(crypto_aead_xchacha20poly1305_ietf_KEYBYTES, '\0');
    QByteArray typed = secret.toUtf8();
    QByteArray owner = person.text().toUtf8();
    QByteArray seed = *key.seed();
    const auto size = [](const QByteArray &bytes) { return static_cast<unsigned long long>(bytes.size()); };
    if (crypto_pwhash(raw(stretched), size(stretched), typed.constData(), size(typed), raw(wrapped.salt), 1, 8192, crypto_pwhash_ALG_ARGON2ID13) != 0 ||
        crypto_aead_xchacha20poly1305_ietf_encrypt(raw(wrapped.sealed), nullptr, raw(seed), size(seed), raw(owner), size(owner), nullptr, raw(wrapped.nonce), raw(stretched)) != 0)
        qFatal("no memory for a key");
    return wrapped;
}

} // namespace unbound
