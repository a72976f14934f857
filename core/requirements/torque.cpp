// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/requirements/torque.hpp"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace core {

std::vector<qint64> fastenersWithoutTorque(const InterfaceState &item)
{
    std::vector<qint64> open;
    if (!item.listed.torque)
        return open;
    std::vector<bool> done(static_cast<std::size_t>(item.listed.torque->fasteners) + 1, false);
    for (const TorqueReading &reading : item.torque) {
        if (reading.fastener >= 1 && reading.fastener <= item.listed.torque->fasteners)
            done[static_cast<std::size_t>(reading.fastener)] = true;
    }
    for (qint64 fastener = 1; fastener <= item.listed.torque->fasteners; ++fastener) {
        if (!done[static_cast<std::size_t>(fastener)])
            open.push_back(fastener);
    }
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
    return QCoreApplication::translate("Requirement", "Torque is missing on fastener %1 of %2.")
        .arg(numbers.join(QStringLiteral(", ")))
        .arg(item.listed.torque->fasteners);
}

bool isHalfDoneByAnother(const InterfaceState &item, const PersonId &person)
{
    const bool begunByAnother = std::any_of(item.torque.begin(), item.torque.end(), [&](const auto &r) { return r.mark.by != person; });
    return begunByAnother && !fastenersWithoutTorque(item).empty() && !item.torqueTakenOverBy.contains(person);
}

bool startsTorqueAgain(const InterfaceState &item, const PersonId &person, qint64 fastener)
{
    return fastener == 1 && isHalfDoneByAnother(item, person);
}

} // namespace core
