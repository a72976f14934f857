// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fault/crash_vfs/disk.hpp"

#include <algorithm>
#include <cstring>

namespace crash {

namespace {

constexpr qsizetype sector = 512;

void grow(QByteArray &content, qint64 size)
{
    if (content.size() < size)
        content.append(size - content.size(), '\0');
}

void write(QByteArray &content, qint64 at, QByteArrayView bytes)
{
    grow(content, at + bytes.size());
    std::memcpy(content.data() + at, bytes.data(), static_cast<std::size_t>(bytes.size()));
}

/// Sector by sector, as the disk cuts them, each kept or not.
void writeInPart(QByteArray &content, const Event &event, bool isDamaging, std::mt19937_64 &chance)
{
    for (qint64 from = 0; from < event.bytes.size();) {
        const qint64 size = std::min(sector - (event.at + from) % sector, event.bytes.size() - from);
        QByteArray part = event.bytes.sliced(from, size);
        const auto dice = chance();
        if (isDamaging && (dice & 2))
            std::generate(part.begin(), part.end(), [&] { return static_cast<char>(chance()); });
        if ((dice & 1) || (isDamaging && (dice & 2)))
            write(content, event.at + from, part);
        from += size;
    }
}

void apply(QByteArray &content, const Event &event)
{
    if (event.what == Event::What::Write)
        write(content, event.at, event.bytes);
    else if (event.at < content.size())
        content.truncate(event.at);
    else
        grow(content, event.at);
}

} // namespace

void Disk::take(const Event &event)
{
    switch (event.what) {
    case Event::What::Begin:
        m_durable[event.file] = event.bytes;
        m_durableNames[event.name] = event.file;
        return;
    case Event::What::Create:
        m_durable[event.file].clear();
        m_names.push_back({event.name, event.file});
        return;
    case Event::What::Write:
    case Event::What::Truncate:
        m_changes.push_back({event.file, event});
        return;
    case Event::What::Sync:
        for (const Change &change : m_changes)
            if (change.file == event.file)
                apply(m_durable[event.file], change.event);
        std::erase_if(m_changes, [&](const Change &change) { return change.file == event.file; });
        return;
    case Event::What::SyncFolder:
        for (const NameChange &change : m_names)
            m_durableNames[change.name] = change.file;
        m_names.clear();
        return;
    case Event::What::Remove:
        m_names.push_back({event.name, 0});
        return;
    case Event::What::Acknowledge:
        return;
    }
}

std::size_t Disk::uncertain() const { return m_changes.size(); }

Files Disk::after(const std::vector<Fate> &fates, std::size_t names, std::mt19937_64 &chance) const
{
    auto content = m_durable;
    for (std::size_t i = 0; i < m_changes.size(); ++i) {
        QByteArray &file = content[m_changes[i].file];
        const Event &event = m_changes[i].event;
        const bool isWrite = event.what == Event::What::Write;
        if (fates[i] == Fate::Kept || (!isWrite && fates[i] != Fate::Dropped))
            apply(file, event);
        else if (fates[i] != Fate::Dropped)
            writeInPart(file, event, fates[i] == Fate::Damaged, chance);
    }
    auto named = m_durableNames;
    for (std::size_t i = 0; i < names; ++i)
        named[m_names[i].name] = m_names[i].file;
    Files files;
    for (const auto &[name, number] : named)
        if (number != 0)
            files[name] = content[number];
    return files;
}

} // namespace crash
