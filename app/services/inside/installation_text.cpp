// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/inside/installation_parts.h"

#include "base/instant.h"
#include "services/settings.h"
#include "style/icons.h"
#include "style/words.h"

#include <QFontInfo>
#include <QFontMetricsF>
#include <QGlyphRun>
#include <QGuiApplication>
#include <QImage>
#include <QImageReader>
#include <QLocale>
#include <QPixmap>
#include <QRawFont>
#include <QStringList>
#include <QTextLayout>

#include <cmath>
#include <string>
#include <tuple>

namespace ullage {

namespace {

/// Signs beyond plain letters that pages, charts and reports show.
const QString needed_signs = QStringLiteral("°±²µ·×÷äéüßñ¿ΔΣΩαβσχ–‘’“”…€→−∞≈≠≤≥■▲▸▼▾○●◐✓✕");
constexpr double same_width_px = 0.01;

/// Whether the font, or one that stands in for it, has the sign.
bool can_be_shown(QChar sign, const QFont& font) {
    QTextLayout layout(QString(sign), font);
    layout.beginLayout();
    layout.createLine();
    layout.endLayout();
    for (const QGlyphRun& run : layout.glyphRuns())
        for (const quint32 glyph : run.glyphIndexes())
            if (glyph == 0) return false;
    return !layout.glyphRuns().isEmpty();
}

InstallationRow signs_row(const QFont& font) {
    InstallationRow row{tr("Text"), tr("signs"), InstallationRow::State::good, {}, {}};
    QString missing;
    for (const QChar sign : needed_signs)
        if (!can_be_shown(sign, font)) missing += sign;
    row.found = tr("all %1 that the program shows").arg(needed_signs.size());
    if (missing.isEmpty()) return row;
    row.state = InstallationRow::State::fault;
    row.found = tr("not in any font: %1").arg(missing);
    row.follows = tr("Boxes stand in their place. Install a font that has them, such as DejaVu Sans.");
    return row;
}

InstallationRow figures_row(const QFont& font) {
    InstallationRow row{tr("Text"), tr("figures"), InstallationRow::State::good, tr("of equal width"), {}};
    const QFontMetricsF metrics(font);
    for (char figure = '1'; figure <= '9'; ++figure)
        if (std::abs(metrics.horizontalAdvance(QLatin1Char(figure)) - metrics.horizontalAdvance(QLatin1Char('0'))) > same_width_px) {
            row.state = InstallationRow::State::note;
            row.found = tr("of unequal width");
            row.follows = tr("Numbers in columns do not stand below each other digit by digit. Another font of the desktop mends that.");
        }
    return row;
}

InstallationRow zone_row() {
    const std::string zone = machine_zone();
    InstallationRow row{tr("Region"), tr("time zone"), InstallationRow::State::good, text_of(zone), {}};
    if (zone_exists("Africa/Nairobi")) return row;
    row.state = InstallationRow::State::fault;
    row.found = tr("%1; the data of time zones are not there").arg(row.found);
    row.follows = tr("Local times are those of UTC. Install tzdata.");
    return row;
}

QString language_words(const QString& code) {
    if (code.isEmpty()) return tr("as the desktop");
    return code == QLatin1String("en") ? QStringLiteral("English") : QLocale(code).nativeLanguageName();
}

} // namespace

void check_text_and_pictures(QList<InstallationRow>& rows, const Settings& settings, const QString& paper) {
    const QFont font = QGuiApplication::font();
    const QFontInfo used(font);
    rows << InstallationRow{tr("Text"), tr("font"), {}, tr("%1, %2 points").arg(used.family()).arg(used.pointSizeF(), 0, 'g', 3), {}};
    rows << signs_row(font) << figures_row(font);

    const auto formats = QImageReader::supportedImageFormats();
    for (const auto& [format, title, follows] :
         {std::tuple("png", tr("PNG"), tr("Photos and pictures of this form cannot be shown.")),
          std::tuple("jpeg", tr("JPEG"), tr("Photos of this form are kept but cannot be shown.")),
          std::tuple("svg", tr("SVG"), tr("The window has no icon in the task bar. Install the SVG plugin of Qt (libqt6svg6)."))}) {
        const bool there = formats.contains(format);
        const auto lacking = qstrcmp(format, "svg") == 0 ? InstallationRow::State::note : InstallationRow::State::fault;
        rows << InstallationRow{tr("Pictures"), title, there ? InstallationRow::State::good : lacking,
                                there ? tr("can be read") : tr("cannot be read"), there ? QString() : follows};
    }
    constexpr int icon_px = 32;
    const QImage icon = glyph_icon(Glyph::record).pixmap(icon_px, icon_px).toImage().convertToFormat(QImage::Format_Alpha8);
    QImage blank(icon.size(), icon.format());
    blank.fill(0);
    const bool drawn = !icon.isNull() && icon != blank;
    rows << InstallationRow{tr("Pictures"), tr("icons"), drawn ? InstallationRow::State::good : InstallationRow::State::fault,
                            drawn ? tr("are drawn") : tr("are not drawn"),
                            drawn ? QString() : tr("Buttons have words alone. Install the program anew.")};

    rows << zone_row();
    const QLocale region = QLocale::system();
    rows << InstallationRow{tr("Region"), tr("region of the desktop"), {}, tr("%1, decimal sign %2").arg(region.name(), region.decimalPoint()), {}};
    rows << InstallationRow{tr("Region"), tr("language"), {}, language_words(settings.language()), {}};
    if (!paper.isEmpty()) rows << InstallationRow{tr("Region"), tr("paper of reports"), {}, paper, {}};
}

} // namespace ullage
