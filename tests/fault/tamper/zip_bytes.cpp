// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "tests/fault/tamper/classes.hpp"
#include "tests/fault/tamper/zip_parts.hpp"

namespace battery::classes {

namespace {

using namespace Qt::StringLiterals;

struct Region {
    QString name;
    qsizetype from;
    qsizetype length;
};

std::vector<Region> regionsOf(QByteArrayView zip)
{
    const ZipParts parts = ZipParts::of(zip);
    std::vector<Region> regions;
    qsizetype at = 0;
    const auto add = [&](const QString &name, const QByteArray &bytes) {
        regions.push_back({name, at, bytes.size()});
        at += bytes.size();
    };
    for (const ZipParts::File &file : parts.files) {
        const QString name = QString::fromUtf8(ZipParts::nameOf(file)).section(u'/', 1);
        add(u"local header of "_s + name, file.local);
        add(u"data of "_s + name, file.data);
    }
    for (const ZipParts::File &file : parts.files)
        add(u"directory line of "_s + QString::fromUtf8(ZipParts::nameOf(file)).section(u'/', 1), file.central);
    add(u"end"_s, parts.end);
    return regions;
}

QByteArray flipped(QByteArray zip, qsizetype at, qint64 bit)
{
    zip[at] = static_cast<char>(zip.at(at) ^ (1 << bit));
    return zip;
}

constexpr qint64 bits = 8;

void headers(Battery &battery, const std::vector<Region> &regions)
{
    battery.begin(u"ZIP: a bit of each byte of headers, names, directory and end"_s);
    battery.control(ZipParts::of(battery.zip()).zip());
    for (const Region &region : regions) {
        for (qsizetype at = region.name.startsWith(u"data"_s) ? region.length : 0; at < region.length; ++at) {
            const qint64 bit = battery.number(bits);
            battery.package(u"%1, byte %2, bit %3"_s.arg(region.name).arg(at).arg(bit), [&] { return flipped(battery.zip(), region.from + at, bit); });
        }
    }
}

void data(Battery &battery, const std::vector<Region> &regions)
{
    battery.begin(u"ZIP: a bit of packed data"_s);
    battery.control(battery.zip());
    constexpr qint64 ofEach = 110;
    for (const Region &region : regions) {
        if (!region.name.startsWith(u"data"_s))
            continue;
        for (qint64 time = 0; time < ofEach; ++time) {
            const qint64 at = time == 0 ? 0 : time <= bits ? region.length - 1 : battery.number(region.length); // the last byte of a stream has bits that say nothing
            const qint64 bit = time <= bits ? time % bits : battery.number(bits);
            battery.package(u"%1, byte %2, bit %3"_s.arg(region.name).arg(at).arg(bit), [&] { return flipped(battery.zip(), region.from + at, bit); });
        }
    }
}

void lengths(Battery &battery, const std::vector<Region> &regions)
{
    battery.begin(u"ZIP: a byte taken out or put in"_s);
    battery.control(battery.zip());
    constexpr qint64 ofEach = 12;
    for (const Region &region : regions) {
        for (qint64 time = 0; time < ofEach; ++time) {
            const qint64 at = region.from + battery.number(region.length);
            const char byte = static_cast<char>(battery.anotherByte(battery.zip().at(at)));
            battery.package(u"%1: byte %2 out"_s.arg(region.name).arg(at), [&] { return QByteArray(battery.zip()).remove(at, 1); });
            battery.package(u"%1: byte %2 in"_s.arg(region.name).arg(at), [&] { return QByteArray(battery.zip()).insert(at, byte); });
        }
    }
    battery.begin(u"ZIP: cut off"_s);
    battery.control(battery.zip());
    for (const Region &region : regions) {
        battery.package(u"before the "_s + region.name, [&] { return battery.zip().first(region.from); });
        battery.package(u"within the "_s + region.name, [&] { return battery.zip().first(region.from + region.length / 2); });
        battery.package(u"its beginning, up to the "_s + region.name, [&] { return battery.zip().sliced(region.from + region.length); });
    }
}

} // namespace

void zipBytes(Battery &battery)
{
    const auto regions = regionsOf(battery.zip());
    headers(battery, regions);
    data(battery, regions);
    lengths(battery, regions);
}

} // namespace battery::classes
