// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/appearance.h"

#include "services/settings.h"
#include "style/theme.h"

#include <QApplication>
#include <QFont>

namespace ullage {

namespace {

void set_text_size(const Settings& settings) {
    static const QFont desktop_font = QApplication::font();
    constexpr double step = 0.1;
    auto font = desktop_font;
    const double factor = 1 + step * settings.textStep();
    if (font.pointSizeF() > 0) font.setPointSizeF(font.pointSizeF() * factor);
    else font.setPixelSize(qMax(1, qRound(font.pixelSize() * factor)));
    if (font != QApplication::font()) QApplication::setFont(font);
}

} // namespace

void prepare_appearance(QApplication& application, const Settings& settings) {
    set_text_size(settings);
    prepare_theme(application, settings.theme());
}

void apply_appearance(QApplication& application, const Settings& settings) {
    set_text_size(settings);
    apply_theme(application, settings.theme());
}

} // namespace ullage
