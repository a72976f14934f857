// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "app/package/contents.hpp"
#include "tests/fault/tamper/classes.hpp"

namespace battery::classes {

namespace {

using namespace Qt::StringLiterals;

const QString payload = u"data/"_s;

QString attachmentWith(const Bag &bag, const QString &ending)
{
    for (const Bag::File &file : bag.files) {
        if (file.path.startsWith(package::names::attachments) && file.path.endsWith(ending))
            return file.path;
    }
    qFatal("no such attachment");
}

/// Alters one byte, one after another, of a file, and repairs as told.
void bytesOf(Battery &battery, const QString &path, qint64 times, const std::function<void(Bag &)> &repair)
{
    const QByteArray sound = battery.bag().bytes(path);
    for (qint64 time = 0; time < times; ++time) {
        const qint64 at = battery.number(sound.size());
        const char byte = static_cast<char>(battery.anotherByte(sound.at(at)));
        battery.bag(u"%1, byte %2 becomes %3"_s.arg(path).arg(at).arg(static_cast<uchar>(byte)), [&](Bag &bag) {
            bag.bytes(path)[at] = byte;
            repair(bag);
        });
    }
}

void changed(Battery &battery)
{
    const QByteArray again = battery.bag().zip();
    battery.begin(u"a byte of a file, digests left"_s);
    battery.control(again);
    constexpr qint64 few = 40;
    for (const Bag::File &file : battery.bag().files)
        bytesOf(battery, file.path, few, [](Bag &) {});
    battery.begin(u"a byte of a file, digests repaired"_s);
    battery.control(again);
    constexpr qint64 many = 170;
    for (const Bag::File &file : battery.bag().files) {
        if (file.path.startsWith(payload) && file.path != package::names::pdf)
            bytesOf(battery, file.path, many, [](Bag &bag) { bag.repairDigests(); });
    }
    battery.begin(u"a byte of a tag file, its digest repaired"_s);
    battery.control(again);
    for (const QLatin1String path : {package::names::declaration, package::names::info, package::names::manifest})
        bytesOf(battery, path, many, [](Bag &bag) { bag.repairTagManifest(); });
}

void labels(Battery &battery)
{
    battery.begin(u"a label, digests repaired"_s, Elsewhere::Nothing, u"another version or typeset cannot be compared: the verdict says so"_s);
    battery.control(battery.bag().zip());
    const QList<QByteArray> lines = battery.bag().bytes(package::names::info).split('\n');
    const auto alter = [&](const QString &name, const std::function<void(QList<QByteArray> &)> &change) {
        battery.bag(name, [&](Bag &bag) {
            QList<QByteArray> changed = lines;
            change(changed);
            bag.bytes(package::names::info) = changed.join('\n');
            bag.repairTagManifest();
        });
    };
    for (qsizetype at = 0; at + 1 < lines.size(); ++at) {
        const QString label = QString::fromUtf8(lines.at(at)).section(u':', 0, 0);
        alter(label + u" removed"_s, [at](QList<QByteArray> &all) { all.removeAt(at); });
        alter(label + u" twice"_s, [at](QList<QByteArray> &all) { all.insert(at, all.at(at)); });
        alter(label + u" one down"_s, [at](QList<QByteArray> &all) { all.swapItemsAt(at, (at + 1) % (all.size() - 1)); });
        alter(label + u" empty"_s, [&](QList<QByteArray> &all) { all[at] = label.toUtf8() + ": "; });
        alter(label + u" another"_s, [&](QList<QByteArray> &all) { all[at] = label.toUtf8() + ": 9"; });
        alter(label + u" longer"_s, [at](QList<QByteArray> &all) { all[at] += " more"; });
        alter(label + u" in small letters"_s, [&](QList<QByteArray> &all) { all[at].replace(0, label.size(), label.toLower().toUtf8()); });
        alter(label + u" continued"_s, [at](QList<QByteArray> &all) { all[at] += "\n more"; });
        alter(label + u" with CR"_s, [at](QList<QByteArray> &all) { all[at] += '\r'; });
    }
    alter(u"closed no"_s, [](QList<QByteArray> &all) { all.replace(all.indexOf("Remate-Closed: yes"), "Remate-Closed: no"); });
    alter(u"paper letter"_s, [](QList<QByteArray> &all) { all.replace(all.indexOf("Remate-Paper: a4"), "Remate-Paper: letter"); });
    alter(u"format 2"_s, [](QList<QByteArray> &all) { all.replace(all.indexOf("Remate-Format: 1"), "Remate-Format: 2"); });
    alter(u"one more"_s, [](QList<QByteArray> &all) { all.insert(0, "Note: none"); });
    alter(u"no last LF"_s, [](QList<QByteArray> &all) { all.removeLast(); });
    // With the version changed, what the program makes of the entries may be changed as well.
    for (const QLatin1String path : {package::names::csv, package::names::instructions, package::names::script, package::names::pdf}) {
        battery.bag(u"another version, and another "_s + path, [&](Bag &bag) {
            bag.setLabel(u"Remate-Version"_s, u"9.9.9"_s);
            bag.bytes(path) += "\nAll is well.\n";
            bag.repairDigests();
        });
    }
    battery.bag(u"another typeset, and another PDF"_s, [](Bag &bag) {
        bag.setLabel(u"Remate-Typeset"_s, u"Qt 9.9.9, sans"_s);
        bag.bytes(package::names::pdf) += '\n';
        bag.repairDigests();
    });
}

const QByteArray otherPhoto = QByteArray::fromHex("89504e470d0a1a0a") + "another photo";

void names(Battery &battery)
{
    const Bag &sound = battery.bag();
    battery.begin(u"files removed, added, renamed, swapped"_s);
    battery.control(sound.zip());
    for (const Bag::File &file : sound.files) {
        battery.bag(file.path + u" removed"_s, [&](Bag &bag) { bag.remove(file.path); });
        battery.bag(file.path + u" removed, digests repaired"_s, [&](Bag &bag) {
            bag.remove(file.path);
            bag.repairDigests();
        });
        battery.bag(file.path + u" empty"_s, [&](Bag &bag) { bag.bytes(file.path).clear(); });
        battery.bag(file.path + u" empty, digests repaired"_s, [&](Bag &bag) {
            bag.bytes(file.path).clear();
            bag.repairDigests();
        });
        for (const QString &to : {file.path + u".old"_s, file.path.toUpper(), payload + file.path, u"data/attachments/"_s + file.path.section(u'/', -1), u"x"_s}) {
            battery.bag(u"%1 is now %2"_s.arg(file.path, to), [&](Bag &bag) { bag.rename(file.path, to); });
            battery.bag(u"%1 is now %2, digests repaired"_s.arg(file.path, to), [&](Bag &bag) {
                bag.rename(file.path, to);
                bag.repairDigests();
            });
        }
        for (const Bag::File &other : sound.files) {
            if (other.path <= file.path)
                continue;
            battery.bag(u"%1 and %2 swapped"_s.arg(file.path, other.path), [&](Bag &bag) {
                std::swap(bag.bytes(file.path), bag.bytes(other.path));
                if (file.path.startsWith(payload) && other.path.startsWith(payload))
                    bag.repairDigests();
            });
        }
    }
    const QString digest = QString(64, u'0');
    const QString extra[] = {u"fetch.txt"_s, u"manifest-md5.txt"_s, u"manifest-sha512.txt"_s, u"tagmanifest-sha512.txt"_s, u"README.txt"_s, u"metadata/x.txt"_s, u"data/notes.txt"_s,
                             u"data/job.entries.jsonl.bak"_s, u"data/attachments/x.png"_s, u"data/attachments/"_s + digest + u".png"_s, u"data/attachments/"_s + digest,
                             u"data/linked/other.entries.jsonl"_s, u"data/linked/-.entries.jsonl"_s, u"data/linked/a/b.entries.jsonl"_s, u"data/"_s + QString(300, u'x'), u"data/%0A"_s, u"data/ä.txt"_s};
    for (const QString &path : extra) {
        battery.bag(path + u" put in"_s, [&](Bag &bag) { bag.add(path, "put in\n"); });
        battery.bag(path + u" put in and listed"_s, [&](Bag &bag) {
            bag.add(path, "put in\n");
            bag.repairDigests();
        });
    }
    battery.bag(u"a linked ledger that nobody pins"_s, [&](Bag &bag) {
        bag.add(u"data/linked/other.entries.jsonl"_s, {});
        bag.add(u"data/linked/other.signatures.jsonl"_s, {});
        bag.repairDigests();
    });
    battery.bag(u"the job once more, as a linked ledger"_s, [&](Bag &bag) {
        const QString name = package::names::linked + jobLedger().text();
        bag.add(name + package::names::entries, sound.bytes(package::names::job + package::names::entries));
        bag.add(name + package::names::signatures, sound.bytes(package::names::job + package::names::signatures));
        bag.repairDigests();
    });
    for (const QString &folder : {u"remate-x"_s, u"x"_s, u"remate"_s, sound.folder + u"/x"_s, sound.folder.toUpper(), sound.folder + u' '})
        battery.bag(u"the folder is "_s + folder, [&](Bag &bag) { bag.folder = folder; });
}

void attachments(Battery &battery)
{
    const Bag &sound = battery.bag();
    battery.begin(u"photos and papers, digests repaired"_s);
    battery.control(sound.zip());
    const QString photo = attachmentWith(sound, u"png"_s);
    const QString paper = attachmentWith(sound, u"pdf"_s);
    const auto alter = [&](const QString &name, const std::function<void(Bag &)> &change) {
        battery.bag(name, [&](Bag &bag) {
            change(bag);
            bag.repairDigests();
        });
    };
    for (const QString &path : {photo, paper}) {
        alter(path + u": another content"_s, [&](Bag &bag) { bag.bytes(path) = otherPhoto; });
        alter(path + u": another content and its name"_s, [&](Bag &bag) {
            bag.bytes(path) = otherPhoto;
            bag.rename(path, package::attachmentPath(core::Digest::of(otherPhoto), otherPhoto));
        });
        alter(path + u": another one beside it"_s, [&](Bag &bag) { bag.add(package::attachmentPath(core::Digest::of(otherPhoto), otherPhoto), otherPhoto); });
        for (const QString &ending : {u"jpg"_s, u"png"_s, u"pdf"_s, u"bin"_s, u"exe"_s, u"PNG"_s, u"png.exe"_s, u""_s}) {
            const QString renamed = path.section(u'.', 0, 0) + u'.' + ending;
            if (renamed != path)
                alter(u"%1 is now %2"_s.arg(path, renamed), [&](Bag &bag) { bag.rename(path, renamed); });
            if (renamed != path)
                alter(u"%1 is there as %2, too"_s.arg(path, renamed), [&](Bag &bag) { bag.add(renamed, sound.bytes(path)); });
        }
        alter(path + u" cut off"_s, [&](Bag &bag) { bag.bytes(path).chop(1); });
        alter(path + u" longer"_s, [&](Bag &bag) { bag.bytes(path) += '\0'; });
    }
    alter(u"content swapped"_s, [&](Bag &bag) { std::swap(bag.bytes(photo), bag.bytes(paper)); });
    alter(u"names swapped"_s, [&](Bag &bag) {
        bag.rename(photo, u"x"_s);
        bag.rename(paper, photo);
        bag.rename(u"x"_s, paper);
    });
}

void listings(Battery &battery)
{
    const Bag &sound = battery.bag();
    battery.begin(u"a line of a manifest"_s);
    battery.control(sound.zip());
    for (const QLatin1String path : {package::names::manifest, package::names::tagManifest}) {
        const QList<QByteArray> lines = sound.bytes(path).split('\n');
        const auto alter = [&](const QString &name, const std::function<void(QList<QByteArray> &)> &change) {
            battery.bag(path + u": "_s + name, [&](Bag &bag) {
                QList<QByteArray> changed = lines;
                change(changed);
                bag.bytes(path) = changed.join('\n');
                if (path == package::names::manifest)
                    bag.repairTagManifest();
            });
        };
        for (qsizetype at = 0; at + 1 < lines.size(); ++at) {
            const QString line = u"line %1 "_s.arg(at + 1);
            alter(line + u"removed"_s, [at](QList<QByteArray> &all) { all.removeAt(at); });
            alter(line + u"twice"_s, [at](QList<QByteArray> &all) { all.insert(at, all.at(at)); });
            alter(line + u"one down"_s, [at](QList<QByteArray> &all) { all.swapItemsAt(at, (at + 1) % (all.size() - 1)); });
            alter(line + u"in capitals"_s, [at](QList<QByteArray> &all) { all[at] = all[at].first(64).toUpper() + all[at].sliced(64); });
            alter(line + u"with an asterisk"_s, [at](QList<QByteArray> &all) { all[at][65] = '*'; });
            alter(line + u"with one blank"_s, [at](QList<QByteArray> &all) { all[at].remove(64, 1); });
            alter(line + u"with a full stop"_s, [at](QList<QByteArray> &all) { all[at].insert(66, "./"); });
            alter(line + u"percent-encoded"_s, [at](QList<QByteArray> &all) { all[at].replace(".", "%2E"); });
            alter(line + u"with CR"_s, [at](QList<QByteArray> &all) { all[at] += '\r'; });
            alter(line + u"with a blank"_s, [at](QList<QByteArray> &all) { all[at] += ' '; });
        }
        alter(u"an empty line"_s, [](QList<QByteArray> &all) { all.insert(1, QByteArray()); });
        alter(u"no last LF"_s, [](QList<QByteArray> &all) { all.removeLast(); });
        alter(u"a byte order mark"_s, [](QList<QByteArray> &all) { all[0].prepend("\xef\xbb\xbf"); });
        alter(u"a file that is not there"_s, [](QList<QByteArray> &all) { all.insert(all.size() - 1, QByteArray(64, '0') + "  zzz"); });
    }
}

} // namespace

void fileBytes(Battery &battery)
{
    changed(battery);
    labels(battery);
    listings(battery);
}

void fileNames(Battery &battery)
{
    names(battery);
    attachments(battery);
}

void pages(Battery &battery)
{
    battery.beginPages(u"the PDF, digests repaired"_s);
    const Bag exported = Bag::of(battery.job().package);
    const auto alter = [&](const QString &name, const std::function<void(QByteArray &)> &change) {
        battery.package(name, [&] {
            Bag bag = exported;
            change(bag.bytes(package::names::pdf));
            bag.repairDigests();
            return bag.zip();
        });
    };
    const QByteArray &sound = exported.bytes(package::names::pdf);
    constexpr qint64 some = 40;
    for (qint64 time = 0; time < some; ++time) {
        const qint64 at = battery.number(sound.size());
        const char byte = static_cast<char>(battery.anotherByte(sound.at(at)));
        alter(u"byte %1"_s.arg(at), [at, byte](QByteArray &pdf) { pdf[at] = byte; });
    }
    alter(u"an update behind its end"_s, [](QByteArray &pdf) { pdf += "1 0 obj\n<<>>\nendobj\n%%EOF\n"; });
    alter(u"cut off"_s, [](QByteArray &pdf) { pdf.chop(100); });
    alter(u"another page"_s, [](QByteArray &pdf) { pdf = "%PDF-1.4\n%%EOF\n"; });
}

} // namespace battery::classes
