// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QFile>
#include <QTemporaryDir>

#include "tests/fault/tamper/classes.hpp"
#include "tests/fault/tamper/zip_parts.hpp"

namespace battery::classes {

namespace {

using namespace Qt::StringLiterals;

using File = ZipParts::File;
using Trick = std::pair<const char *, void (*)(File &)>;

void giveBoth(File &file, const QByteArray &extra)
{
    ZipParts::setTwo(file, ZipParts::extraLength, static_cast<quint16>(extra.size()));
    file.local += extra;
    file.central += extra;
}

const QByteArray zip64Extra = QByteArray::fromHex("0100100000000000010000000000000001000000");
const QByteArray timeExtra = QByteArray::fromHex("555405000300000000");
const QByteArray otherNameExtra = QByteArray::fromHex("75700900010000000061626364"); // Unicode path, APPNOTE 4.6.9

void setExternal(File &file, quint32 mode)
{
    constexpr qsizetype external = 38;
    ZipParts::setFour(file.central, external, mode << 16);
}

void inFrontOfName(File &file, const char *text) { ZipParts::rename(file, text + ZipParts::nameOf(file)); }

/// What is done to one file, whatever its name.
const Trick tricks[] = {
    {"a name that leads up", [](File &file) { inFrontOfName(file, "../"); }},
    {"a name that leads up later", [](File &file) { ZipParts::rename(file, ZipParts::nameOf(file).replace("/data/", "/data/../data/") + "/../x"); }},
    {"an absolute name", [](File &file) { inFrontOfName(file, "/"); }},
    {"a drive", [](File &file) { inFrontOfName(file, "C:/"); }},
    {"a home", [](File &file) { inFrontOfName(file, "~/"); }},
    {"backslashes", [](File &file) { ZipParts::rename(file, ZipParts::nameOf(file).replace('/', '\\')); }},
    {"a part that is a full stop", [](File &file) { inFrontOfName(file, "./"); }},
    {"an empty part", [](File &file) { ZipParts::rename(file, ZipParts::nameOf(file).replace("/", "//")); }},
    {"a folder entry", [](File &file) { ZipParts::rename(file, ZipParts::nameOf(file) + '/'); }},
    {"a NUL in the name", [](File &file) { ZipParts::rename(file, ZipParts::nameOf(file) + '\0' + "x"); }},
    {"a line's end in the name", [](File &file) { ZipParts::rename(file, ZipParts::nameOf(file) + '\n'); }},
    {"a name that is no UTF-8", [](File &file) { ZipParts::rename(file, ZipParts::nameOf(file) + '\xff'); }},
    {"a name of overlong UTF-8", [](File &file) { ZipParts::rename(file, ZipParts::nameOf(file) + "\xc0\xaf"); }},
    {"a blank behind the name", [](File &file) { ZipParts::rename(file, ZipParts::nameOf(file) + ' '); }},
    {"another folder", [](File &file) { inFrontOfName(file, "x"); }},
    {"no name", [](File &file) { ZipParts::rename(file, {}); }},
    {"another name in the local header", [](File &file) { file.local[ZipParts::name.local + 8] = 'X'; }},
    {"another name in the directory", [](File &file) { file.central[ZipParts::name.central + 8] = 'X'; }},
    {"a link", [](File &file) { setExternal(file, 0120777); }},
    {"a folder's mode", [](File &file) { setExternal(file, 040755); }},
    {"a program's mode", [](File &file) { setExternal(file, 0100755); }},
    {"flag: encrypted", [](File &file) { ZipParts::setTwo(file, ZipParts::flags, 1); }},
    {"flag: strongly encrypted", [](File &file) { ZipParts::setTwo(file, ZipParts::flags, 0x41); }},
    {"flag: sizes behind the data", [](File &file) { ZipParts::setTwo(file, ZipParts::flags, 8); }},
    {"sizes behind the data", [](File &file) {
         file.behind = "PK\x07\x08" + file.local.mid(ZipParts::crc.local, 12);
         ZipParts::setTwo(file, ZipParts::flags, static_cast<quint16>(ZipParts::two(file.local, ZipParts::flags.local) | 8));
         ZipParts::setFour(file.local, ZipParts::crc.local, 0);
         ZipParts::setFour(file.local, ZipParts::packed.local, 0);
         ZipParts::setFour(file.local, ZipParts::size.local, 0);
     }},
    {"flag: names in UTF-8", [](File &file) { ZipParts::setTwo(file, ZipParts::flags, 0x800); }},
    {"a method nobody has", [](File &file) { ZipParts::setTwo(file, ZipParts::method, 99); }},
    {"stored though deflated, or the other way", [](File &file) { ZipParts::setTwo(file, ZipParts::method, ZipParts::two(file.local, ZipParts::method.local) == 0 ? 8 : 0); }},
    {"a time", [](File &file) { ZipParts::setTwo(file, ZipParts::time, 0x4000); }},
    {"a date", [](File &file) { ZipParts::setTwo(file, ZipParts::date, 0x5c62); }},
    {"a later version", [](File &file) { ZipParts::setTwo(file, ZipParts::needed, 45); }},
    {"a check sum", [](File &file) { ZipParts::setFour(file, ZipParts::crc, 0x12345678); }},
    {"a check sum in the local header", [](File &file) { ZipParts::setFour(file.local, ZipParts::crc.local, 0x12345678); }},
    {"a larger size", [](File &file) { ZipParts::setFour(file, ZipParts::size, ZipParts::four(file.local, ZipParts::size.local) + 1); }},
    {"a smaller size", [](File &file) { ZipParts::setFour(file, ZipParts::size, ZipParts::four(file.local, ZipParts::size.local) - 1); }},
    {"a size of 4 GiB", [](File &file) { ZipParts::setFour(file, ZipParts::size, 0xfffffffe); }},
    {"another size in the local header", [](File &file) { ZipParts::setFour(file.local, ZipParts::size.local, 1); }},
    {"another packed size in the local header", [](File &file) { ZipParts::setFour(file.local, ZipParts::packed.local, 1); }},
    {"packed size of one byte less", [](File &file) { ZipParts::setFour(file, ZipParts::packed, ZipParts::four(file.local, ZipParts::packed.local) - 1); }},
    {"packed size of one byte more", [](File &file) { ZipParts::setFour(file, ZipParts::packed, ZipParts::four(file.local, ZipParts::packed.local) + 1); }},
    {"zip64 marks", [](File &file) {
         ZipParts::setFour(file, ZipParts::size, 0xffffffff);
         giveBoth(file, zip64Extra);
     }},
    {"an extra field", [](File &file) { giveBoth(file, timeExtra); }},
    {"an extra field with another name", [](File &file) { giveBoth(file, otherNameExtra); }},
    {"an extra field in the local header", [](File &file) {
         ZipParts::setTwo(file.local, ZipParts::extraLength.local, static_cast<quint16>(timeExtra.size()));
         file.local += timeExtra;
     }},
    {"an extra field in the directory", [](File &file) {
         ZipParts::setTwo(file.central, ZipParts::extraLength.central, static_cast<quint16>(timeExtra.size()));
         file.central += timeExtra;
     }},
    {"a comment", [](File &file) {
         ZipParts::setTwo(file.central, ZipParts::centralCommentLength, 5);
         file.central += "noted";
     }},
    {"bytes between it and the next", [](File &file) { file.behind = "hidden"; }},
    {"a whole file between it and the next", [](File &file) { file.behind = file.local + file.data; }},
    {"bytes within its stored length, behind its packed data", [](File &file) {
         file.data += "hidden";
         ZipParts::setFour(file, ZipParts::packed, static_cast<quint32>(file.data.size()));
     }},
    {"no local header", [](File &file) { file.local.clear(); }},
    {"no line in the directory", [](File &file) { file.central.clear(); }},
};

void eachFile(Battery &battery)
{
    const ZipParts sound = ZipParts::of(battery.zip());
    battery.begin(u"ZIP: a trick with one file"_s);
    battery.control(sound.zip());
    for (const auto &[name, play] : tricks) {
        for (std::size_t at = 0; at < sound.files.size(); ++at) {
            battery.package(u"%1: file %2"_s.arg(QLatin1String(name)).arg(at), [&, trick = play] {
                ZipParts parts = sound;
                trick(parts.files[at]);
                return parts.zip();
            });
        }
    }
}

void twoFiles(Battery &battery)
{
    const ZipParts sound = ZipParts::of(battery.zip());
    battery.begin(u"ZIP: a trick with two files"_s);
    battery.control(sound.zip());
    const std::size_t count = sound.files.size();
    const auto play = [&](const QString &name, const std::function<void(ZipParts &, std::size_t)> &trick) {
        for (std::size_t at = 0; at < count; ++at) {
            battery.package(u"%1: file %2"_s.arg(name).arg(at), [&] {
                ZipParts parts = sound;
                trick(parts, at);
                return parts.zip();
            });
        }
    };
    play(u"twice"_s, [](ZipParts &parts, std::size_t at) { parts.files.push_back(parts.files[at]); });
    play(u"twice, with another content"_s, [](ZipParts &parts, std::size_t at) {
        const QByteArray name = ZipParts::nameOf(parts.files[at]);
        parts.files.push_back(parts.files[(at + 1) % parts.files.size()]);
        ZipParts::rename(parts.files.back(), name);
    });
    play(u"once more in capitals"_s, [](ZipParts &parts, std::size_t at) {
        parts.files.push_back(parts.files[at]);
        ZipParts::rename(parts.files.back(), ZipParts::nameOf(parts.files[at]).toUpper());
    });
    play(u"in capitals"_s, [](ZipParts &parts, std::size_t at) { ZipParts::rename(parts.files[at], ZipParts::nameOf(parts.files[at]).toUpper()); });
    play(u"names swapped with the next"_s, [](ZipParts &parts, std::size_t at) {
        ZipParts::File &one = parts.files[at];
        ZipParts::File &next = parts.files[(at + 1) % parts.files.size()];
        const QByteArray name = ZipParts::nameOf(one);
        ZipParts::rename(one, ZipParts::nameOf(next));
        ZipParts::rename(next, name);
    });
    play(u"directory lines swapped with the next"_s, [](ZipParts &parts, std::size_t at) { std::swap(parts.files[at].central, parts.files[(at + 1) % parts.files.size()].central); });
    play(u"order swapped with the next"_s, [](ZipParts &parts, std::size_t at) { std::swap(parts.files[at], parts.files[(at + 1) % parts.files.size()]); });
    play(u"the next lies on it"_s, [count](ZipParts &parts, std::size_t at) {
        // Two lines of the directory, one local header.
        const ZipParts whole = ZipParts::of(parts.zip());
        ZipParts::setFour(parts.files[(at + 1) % count].central, ZipParts::centralOffset, ZipParts::four(whole.files[at].central, ZipParts::centralOffset));
        parts.keepsOffsets = true;
    });
    play(u"the next lies within it"_s, [count](ZipParts &parts, std::size_t at) {
        const quint32 offset = ZipParts::four(parts.files[at].central, ZipParts::centralOffset);
        ZipParts::setFour(parts.files[(at + 1) % count].central, ZipParts::centralOffset, offset + 40);
        parts.keepsOffsets = true;
    });
}

void wholeFile(Battery &battery)
{
    const ZipParts sound = ZipParts::of(battery.zip());
    battery.begin(u"ZIP: a trick with the whole"_s);
    battery.control(sound.zip());
    const auto play = [&](const QString &name, const std::function<void(ZipParts &)> &trick) {
        battery.package(name, [&] {
            ZipParts parts = sound;
            trick(parts);
            return parts.zip();
        });
    };
    const std::pair<const char *, QByteArray> others[] = {{"a byte", "x"}, {"a script", "#!/bin/sh\nexit 0\n"}, {"a page", "%PDF-1.4\n"}, {"zeros", QByteArray(4096, '\0')}, {"another package", battery.zip()}};
    for (const auto &[what, bytes] : others) {
        const QString name = QString::fromLatin1(what);
        play(name + u" before the first file"_s, [&b = bytes](ZipParts &parts) { parts.before = b; });
        play(name + u" before the first file, offsets as they were"_s, [&b = bytes](ZipParts &parts) {
            parts.before = b;
            parts.keepsOffsets = true;
        });
        play(name + u" between files and directory"_s, [&b = bytes](ZipParts &parts) { parts.afterFiles = b; });
        play(name + u" between directory and end"_s, [&b = bytes](ZipParts &parts) { parts.afterDirectory = b; });
        play(name + u" behind the end"_s, [&b = bytes](ZipParts &parts) { parts.end += b; });
        play(name + u" as the comment"_s, [&b = bytes](ZipParts &parts) {
            constexpr qsizetype commentLength = 20;
            ZipParts::setTwo(parts.end, commentLength, static_cast<quint16>(b.size()));
            parts.end += b;
        });
    }
    play(u"a second end"_s, [](ZipParts &parts) { parts.end += parts.end; });
    play(u"a zip64 end"_s, [](ZipParts &parts) { parts.afterDirectory = QByteArray::fromHex("504b0606") + QByteArray(52, '\0') + QByteArray::fromHex("504b0607") + QByteArray(16, '\0'); });
    play(u"a zip64 mark in the end"_s, [](ZipParts &parts) {
        parts.keepsOffsets = true;
        ZipParts::setTwo(parts.end, 10, 0xffff);
        ZipParts::setTwo(parts.end, 8, 0xffff);
    });
    for (int more : {1, 2, 1000, 60000}) {
        play(u"%1 files more than there are"_s.arg(more), [more](ZipParts &parts) {
            parts.keepsOffsets = true;
            const auto count = static_cast<quint16>(std::ssize(parts.files) + more);
            ZipParts::setTwo(parts.end, 10, count);
            ZipParts::setTwo(parts.end, 8, count);
        });
    }
    play(u"no file"_s, [](ZipParts &parts) { parts.files.clear(); });
    play(u"the first alone"_s, [](ZipParts &parts) { parts.files.resize(1); });
    play(u"the order turned round"_s, [](ZipParts &parts) { std::reverse(parts.files.begin(), parts.files.end()); });
    battery.package(u"empty"_s, [] { return QByteArray(); });
    battery.package(u"only an end"_s, [&] { return sound.end; });
    battery.package(u"a page"_s, [] { return QByteArray("%PDF-1.4\n") + QByteArray(4000, ' '); });
    battery.package(u"everything stored"_s, [&] {
        Bag bag = battery.bag();
        for (Bag::File &file : bag.files)
            file.packing = package::Packing::Stored;
        return bag.zip();
    });
    battery.package(u"everything deflated"_s, [&] {
        Bag bag = battery.bag();
        for (Bag::File &file : bag.files)
            file.packing = package::Packing::Deflated;
        return bag.zip();
    });
}

/// A file of many bytes that packs to few: zeros, with a byte of noise every `apart` bytes.
ZipParts::File large(const QString &name, qint64 size, qint64 apart, QRandomGenerator &random)
{
    const QTemporaryDir folder;
    const QString path = folder.filePath(u"large"_s);
    QFile file(path);
    if (!file.open(QIODevice::WriteOnly))
        qFatal("no room for a large file");
    constexpr qint64 piece = 1 << 20;
    for (qint64 written = 0; written < size; written += piece) {
        QByteArray bytes(piece, '0');
        for (qint64 at = apart; apart > 0 && at < piece; at += apart)
            bytes[static_cast<qsizetype>(at)] = static_cast<char>('a' + random.bounded(26));
        file.write(bytes);
    }
    file.close();
    const QString zip = folder.filePath(u"large.zip"_s);
    auto writer = package::ZipWriter::create(zip);
    const auto added = writer->addFile(name, path, package::Packing::Deflated);
    const auto finished = writer->finish({});
    QFile packed(zip);
    if (!added || !finished || !packed.open(QIODevice::ReadOnly))
        qFatal("a large file cannot be packed");
    return ZipParts::of(packed.readAll()).files.front();
}

ZipParts::File emptyFile()
{
    Bag bag{{{u"x"_s, {}, package::Packing::Stored}}, u"x"_s};
    return ZipParts::of(bag.zip()).files.front();
}

} // namespace

void zipTricks(Battery &battery)
{
    eachFile(battery);
    twoFiles(battery);
    wholeFile(battery);
}

void bombs(Battery &battery)
{
    const ZipParts sound = ZipParts::of(battery.zip());
    battery.begin(u"ZIP: more than anybody can hold"_s);
    battery.control(sound.zip());
    QRandomGenerator random(1);
    constexpr qint64 size = 300LL * 1024 * 1024;
    // The first is what no file is like; the second is as repetitive as a file is let pass that is.
    const std::pair<QString, ZipParts::File> files[] = {{u"zeros"_s, large(u"x"_s, size, 0, random)}, {u"nearly zeros"_s, large(u"x"_s, size, 900, random)}};
    for (const auto &[what, file] : files) {
        for (std::size_t at = 0; at < sound.files.size(); ++at) {
            const QByteArray name = ZipParts::nameOf(sound.files[at]);
            const QByteArray ending = name.sliced(name.lastIndexOf('/') + 1);
            const bool isOneOfASort = name.contains("attachments") || ending == "job.entries.jsonl" || ending == "job.signatures.jsonl" || ending == "interfaces.csv" || ending == "manifest-sha256.txt" || ending == "record.pdf";
            if (!isOneOfASort)
                continue;
            battery.package(u"300 MB of %1 as %2"_s.arg(what, QString::fromUtf8(name)), [&, packed = file] {
                ZipParts parts = sound;
                parts.files[at] = packed;
                ZipParts::rename(parts.files[at], name);
                return parts.zip();
            });
        }
        battery.package(u"300 MB of %1 as a file more"_s.arg(what), [&, packed = file] {
            ZipParts parts = sound;
            parts.files.push_back(packed);
            ZipParts::rename(parts.files.back(), battery.bag().folder.toUtf8() + "/data/more.bin");
            return parts.zip();
        });
    }
    const auto many = [&](int count, const std::function<QByteArray(int)> &nameOf) {
        ZipParts parts = sound;
        const ZipParts::File empty = emptyFile();
        for (int number = 0; number < count; ++number) {
            parts.files.push_back(empty);
            ZipParts::rename(parts.files.back(), battery.bag().folder.toUtf8() + nameOf(number));
        }
        return parts.zip();
    };
    for (int count : {30'000, 65'000, 70'000}) {
        battery.package(u"%1 files that do not belong"_s.arg(count), [&] { return many(count, [](int number) { return "/data/" + QByteArray::number(number); }); });
        battery.package(u"%1 attachments"_s.arg(count), [&] { return many(count, [](int number) { return "/data/attachments/" + QByteArray::number(number).rightJustified(64, '0') + ".bin"; }); });
        battery.package(u"%1 linked ledgers"_s.arg(count / 2), [&] {
            return many(count, [](int number) { return "/data/linked/" + QByteArray::number(number / 2) + (number % 2 == 0 ? ".entries.jsonl" : ".signatures.jsonl"); });
        });
    }
}

} // namespace battery::classes
