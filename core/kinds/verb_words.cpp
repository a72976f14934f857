// SPDX-FileCopyrightText: The Remate authors
// SPDX-License-Identifier: Apache-2.0

#include "core/kinds/verb_words.hpp"

#include <QCoreApplication>

namespace core {

QString verbInWords(const Verbs &verbs, QString Verbs::*which)
{
    const char *member = which == &Verbs::off ? "off" : which == &Verbs::offDone ? "off_done" : which == &Verbs::on ? "on" : "on_done";
    return QCoreApplication::translate("Kind", (verbs.*which).toUtf8().constData(), member);
}

} // namespace core
