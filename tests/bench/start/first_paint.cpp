// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include <QApplication>
#include <QGenericPlugin>
#include <QTimer>
#include <QWidget>

#include <cstdio>
#include <ctime>
#include <unistd.h>

namespace {

/// Waits for the first window that is painted, tells when and in how much memory, and quits:
///   <nanoseconds of the monotonic clock> <resident bytes> <the window's title>
class FirstPaint : public QObject {
public:
    FirstPaint() { QCoreApplication::instance()->installEventFilter(this); }
    bool eventFilter(QObject *watched, QEvent *event) override
    {
        if (event->type() != QEvent::Paint || !watched->isWidgetType())
            return false;
        QCoreApplication::instance()->removeEventFilter(this);
        const auto *window = static_cast<QWidget *>(watched)->window();
        // All of the window is painted and flushed before the event loop comes round.
        QTimer::singleShot(0, this, [title = window->windowTitle()] { tell(title); });
        return false;
    }

private:
    static void tell(const QString &title)
    {
        timespec now{};
        clock_gettime(CLOCK_MONOTONIC, &now);
        std::printf("%lld %lld %s\n", now.tv_sec * 1'000'000'000LL + now.tv_nsec, residentBytes(), qPrintable(title));
        std::fflush(stdout);
        QCoreApplication::quit();
    }

    static long long residentBytes()
    {
        long long all = 0;
        long long resident = 0;
        std::FILE *file = std::fopen("/proc/self/statm", "r");
        if (file && std::fscanf(file, "%lld %lld", &all, &resident) != 2)
            resident = 0;
        if (file)
            std::fclose(file);
        return resident * sysconf(_SC_PAGESIZE);
    }
};

} // namespace

/// Loaded into any Qt program by QT_QPA_GENERIC_PLUGINS=first_paint, so that the program itself need know nothing of it.
class FirstPaintPlugin : public QGenericPlugin {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID QGenericPluginFactoryInterface_iid FILE "first_paint.json")

public:
    QObject *create(const QString &, const QString &) override { return new FirstPaint; }
};

#include "first_paint.moc"
