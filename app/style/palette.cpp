// SPDX-License-Identifier: GPL-3.0-or-later
#include "style/palette.h"

namespace ullage {

const Palette& light_palette() {
    static const Palette palette{.dark = false,
                                 .ground = QColor(0xF4, 0xF3, 0xEF),
                                 .panel = QColor(0xFF, 0xFF, 0xFF),
                                 .line = QColor(0xDA, 0xD7, 0xCE),
                                 .edge = QColor(0x83, 0x88, 0x8C),
                                 .ink = QColor(0x1D, 0x27, 0x30),
                                 .soft = QColor(0x5E, 0x69, 0x73),
                                 .accent = QColor(0x0B, 0x5E, 0x8A),
                                 .on_accent = QColor(0xFF, 0xFF, 0xFF),
                                 .selection = QColor(0xE2, 0xEE, 0xF4),
                                 .delivered = QColor(0x00, 0x72, 0xB2),
                                 .gauge_implied = QColor(0xC9, 0x78, 0x00),
                                 .error = QColor(0xB5, 0x56, 0x8F),
                                 .good = QColor(0x00, 0x77, 0x62),
                                 .sky = QColor(0x2E, 0x8F, 0xC9),
                                 .vermilion = QColor(0xC2, 0x4F, 0x00),
                                 .doubt = QColor(0xFF, 0xF4, 0xDC),
                                 .doubt_ink = QColor(0x6B, 0x4A, 0x00),
                                 .fault = QColor(0xFB, 0xE7, 0xE2),
                                 .fault_ink = QColor(0x9C, 0x2F, 0x17)};
    return palette;
}

const Palette& dark_palette() {
    static const Palette palette{.dark = true,
                                 .ground = QColor(0x14, 0x19, 0x1E),
                                 .panel = QColor(0x1C, 0x23, 0x2A),
                                 .line = QColor(0x34, 0x3E, 0x47),
                                 .edge = QColor(0x6E, 0x7A, 0x84),
                                 .ink = QColor(0xE8, 0xEA, 0xEB),
                                 .soft = QColor(0x97, 0xA3, 0xAD),
                                 .accent = QColor(0x5D, 0xB3, 0xDE),
                                 .on_accent = QColor(0x14, 0x19, 0x1E),
                                 .selection = QColor(0x22, 0x32, 0x3D),
                                 .delivered = QColor(0x56, 0xB4, 0xE9),
                                 .gauge_implied = QColor(0xE6, 0x9F, 0x00),
                                 .error = QColor(0xCC, 0x79, 0xA7),
                                 .good = QColor(0x2B, 0xB5, 0x94),
                                 .sky = QColor(0x9A, 0xD2, 0xF2),
                                 .vermilion = QColor(0xE8, 0x7A, 0x3A),
                                 .doubt = QColor(0x3A, 0x32, 0x20),
                                 .doubt_ink = QColor(0xF0, 0xD5, 0x8C),
                                 .fault = QColor(0x43, 0x26, 0x1E),
                                 .fault_ink = QColor(0xF2, 0xA5, 0x8F)};
    return palette;
}

QColor blended(const QColor& top, const QColor& bottom, double share) {
    const auto mix = [share](float a, float b) { return static_cast<float>(share * a + (1.0 - share) * b); };
    return QColor::fromRgbF(mix(top.redF(), bottom.redF()), mix(top.greenF(), bottom.greenF()), mix(top.blueF(), bottom.blueF()));
}

} // namespace ullage
