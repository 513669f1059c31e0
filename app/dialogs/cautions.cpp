// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/cautions.h"

#include <QCoreApplication>

namespace ullage {

namespace {

QString tr(const char* text) { return QCoreApplication::translate("cautions", text); }

} // namespace

QStringList cautions() {
    return {
        tr("Stay in attendance for high-power runs, or use a fire-safe place."),
        tr("Never exceed the ratings of sockets, cords and the unit."),
        tr("Stop on heat, smell, swelling or noise."),
        tr("Mind ventilation, and keep children away."),
        tr("PV strings are live in daylight and can carry dangerous DC voltage."),
        tr("Local electrical codes and a licensed electrician come first."),
    };
}

QString caution_line() {
    return tr("Stay in attendance or use a fire-safe place; stop on heat, smell, swelling or noise.");
}

QString specimen_line() { return tr("One specimen each. Not a safety certification."); }

} // namespace ullage
