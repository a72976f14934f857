// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/requirements/torque.hpp"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace core {

namespace {

QString tr(const char *text) { return QCoreApplication::translate("Requirement", text); }

/// Which steps have a reading, by place: (pass − 1) · fasteners + fastener − 1.
class Done {
public:
    explicit Done(const InterfaceState &item) : m_fasteners(item.listed.torque->fasteners), m_done(static_cast<std::size_t>(m_fasteners * passesOf(*item.listed.torque)), false)
    {
        for (const TorqueReading &reading : item.torque) {
            const TorqueStep step{reading.pass, reading.fastener};
            if (step.fastener >= 1 && step.fastener <= m_fasteners && step.pass >= 1 && placeOf(step) < m_done.size())
                m_done[placeOf(step)] = true;
        }
    }
    bool has(const TorqueStep &step) const { return m_done[placeOf(step)]; }

private:
    std::size_t placeOf(const TorqueStep &step) const { return static_cast<std::size_t>((step.pass - 1) * m_fasteners + step.fastener - 1); }
    qint64 m_fasteners;
    std::vector<bool> m_done;
};

} // namespace

qint64 passesOf(const TorqueSpec &spec) { return std::max<qint64>(1, static_cast<qint64>(spec.passes.size())); }

std::vector<TorqueStep> torqueSteps(const TorqueSpec &spec)
{
    std::vector<TorqueStep> steps;
    for (qint64 pass = 1; pass <= passesOf(spec); ++pass) {
        for (qint64 fastener = 1; fastener <= spec.fasteners; ++fastener)
            steps.push_back({pass, spec.order.empty() ? fastener : spec.order[static_cast<std::size_t>(fastener - 1)]});
    }
    return steps;
}

std::vector<TorqueStep> torqueStepsLeft(const InterfaceState &item)
{
    if (!item.listed.torque)
        return {};
    const Done done(item);
    std::vector<TorqueStep> steps = torqueSteps(*item.listed.torque);
    std::erase_if(steps, [&](const TorqueStep &step) { return done.has(step); });
    return steps;
}

bool isPassDone(const InterfaceState &item, qint64 pass)
{
    const std::vector<TorqueStep> left = torqueStepsLeft(item);
    return std::none_of(left.begin(), left.end(), [pass](const TorqueStep &step) { return step.pass <= pass; });
}

std::vector<TorqueStep> nextTorqueSteps(const InterfaceState &item)
{
    std::vector<TorqueStep> left = torqueStepsLeft(item);
    if (left.empty())
        return left;
    const qint64 pass = left.front().pass;
    std::erase_if(left, [&](const TorqueStep &step) { return step.pass != pass; });
    if (item.listed.torque->order.empty())
        return left;
    const Done done(item);
    std::vector<TorqueStep> all = torqueSteps(*item.listed.torque);
    std::erase_if(all, [&](const TorqueStep &step) { return step.pass != pass; });
    const auto furthest = std::find_if(all.rbegin(), all.rend(), [&](const TorqueStep &step) { return done.has(step); }).base();
    std::vector<TorqueStep> next;
    std::copy_if(all.begin(), furthest, std::back_inserter(next), [&](const TorqueStep &step) { return !done.has(step); });
    if (furthest != all.end())
        next.push_back(*furthest);
    return next;
}

std::vector<qint64> fastenersWithoutTorque(const InterfaceState &item)
{
    std::vector<qint64> open;
    for (const TorqueStep &step : torqueStepsLeft(item))
        open.push_back(step.fastener);
    std::sort(open.begin(), open.end());
    open.erase(std::unique(open.begin(), open.end()), open.end());
    return open;
}

std::optional<QString> missingTorque(const InterfaceState &item)
{
    const auto open = fastenersWithoutTorque(item);
    if (open.empty())
        return std::nullopt;
    QStringList numbers;
    for (const qint64 fastener : open)
        numbers << QString::number(fastener);
    const QString missing = tr(QT_TRANSLATE_NOOP("Requirement", "Torque is missing on fastener %1 of %2.")).arg(numbers.join(QStringLiteral(", "))).arg(item.listed.torque->fasteners);
    if (passesOf(*item.listed.torque) == 1)
        return missing;
    return tr(QT_TRANSLATE_NOOP("Requirement", "%1 Pass %2 of %3 is not finished.")).arg(missing).arg(torqueStepsLeft(item).front().pass).arg(passesOf(*item.listed.torque));
}

bool isHalfDoneByAnother(const InterfaceState &item, const PersonId &person)
{
    const bool begunByAnother = std::any_of(item.torque.begin(), item.torque.end(), [&](const auto &r) { return r.mark.by != person; });
    return begunByAnother && !torqueStepsLeft(item).empty() && !item.torqueTakenOverBy.contains(person);
}

bool startsTorqueAgain(const InterfaceState &item, const PersonId &person, const TorqueStep &step)
{
    return isHalfDoneByAnother(item, person) && step == torqueSteps(*item.listed.torque).front();
}

} // namespace core
