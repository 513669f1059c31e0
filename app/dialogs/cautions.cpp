// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/cautions.h"

#include "style/words.h"

namespace ullage {

namespace {

QString pv_line() { return tr("PV strings are live in daylight and can carry dangerous DC voltage."); }

} // namespace

QStringList cautions() {
    return {
        tr("Stay in attendance for high-power runs, or use a fire-safe place."),
        tr("Never exceed the ratings of sockets, cords and the unit."),
        tr("Stop on heat, smell, swelling or noise."),
        tr("Mind ventilation, and keep children away."),
        pv_line(),
        tr("Local electrical codes and a licensed electrician come first."),
    };
}

QStringList cautions(RunKind kind) {
    QStringList lines = cautions();
    switch (kind) {
    case RunKind::drain: break;
    case RunKind::no_load_drain:
        lines.removeAll(pv_line()); // nothing is connected
        lines.prepend(tr("The output stays live for as long as the run lasts: cover the sockets."));
        break;
    case RunKind::charge:
        lines.prepend(tr("Charge only from a source within the input limits of the unit; never charge a unit that is hot, wet or damaged."));
        break;
    case RunKind::sustained_output:
        lines.prepend(tr("At the rated output cords and sockets grow hot: unwind cords, use no adapters in a chain, stay beside it."));
        break;
    case RunKind::peak_output:
        lines.prepend(tr("Peak loads can trip, arc or start by surprise: switch at the load, keep hands and tools clear, stay beside it."));
        break;
    case RunKind::standby:
        lines.removeAll(pv_line()); // nothing is connected
        lines.prepend(tr("A unit left alone for days needs a fire-safe place; do not let it rest empty or in the heat."));
        break;
    }
    return lines;
}

QString caution_line() {
    return tr("Stay in attendance or use a fire-safe place; stop on heat, smell, swelling or noise.");
}

QString specimen_line() { return tr("One specimen each. Not a safety certification."); }

} // namespace ullage
