// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/bench/display_look.h"

#include "style/theme.h"
#include "style/words.h"

#include <array>
#include <utility>

namespace ullage {

namespace {

constexpr std::array kept_words{std::pair(Dimming::by_hours, "hours"), std::pair(Dimming::dimmed, "dimmed"), std::pair(Dimming::bright, "bright")};

} // namespace

Dimming after(Dimming dimming) {
    switch (dimming) {
    case Dimming::by_hours: return Dimming::dimmed;
    case Dimming::dimmed: return Dimming::bright;
    case Dimming::bright: break;
    }
    return Dimming::by_hours;
}

bool is_dim(Dimming dimming, int hour) {
    if (dimming == Dimming::by_hours) return hour >= dim_from_hour || hour < dim_to_hour;
    return dimming == Dimming::dimmed;
}

QString dimming_words(Dimming dimming) {
    switch (dimming) {
    case Dimming::by_hours: return tr("dimmed %1:00 to 0%2:00").arg(dim_from_hour).arg(dim_to_hour);
    case Dimming::dimmed: return tr("dimmed");
    case Dimming::bright: break;
    }
    return tr("not dimmed");
}

QString kept_dimming(Dimming dimming) {
    for (const auto& [known, word] : kept_words)
        if (known == dimming) return QLatin1String(word);
    return {};
}

Dimming dimming_from(const QString& kept) {
    for (const auto& [known, word] : kept_words)
        if (kept == QLatin1String(word)) return known;
    return Dimming::by_hours;
}

Palette display_palette(bool dim) {
    if (!dim) return current_palette();
    Palette night = dark_palette();
    night.ground = QColor(0x04, 0x05, 0x07);
    night.panel = QColor(0x0A, 0x0C, 0x0F);
    night.line = QColor(0x24, 0x21, 0x1C);
    night.ink = QColor(0xB8, 0x98, 0x62);
    night.soft = QColor(0x8E, 0x7A, 0x58);
    night.accent = QColor(0xB8, 0x98, 0x62);
    night.on_accent = QColor(0x0A, 0x0C, 0x0F);
    night.selection = QColor(0x1C, 0x19, 0x14);
    night.good = QColor(0x2B, 0x6E, 0x5C);
    night.fault_ink = QColor(0xD0, 0x68, 0x48);
    return night;
}

} // namespace ullage
