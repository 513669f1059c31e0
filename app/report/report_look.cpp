// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/report_look.h"

#include "formats/text/table_unicode.h"
#include "style/words.h"

#include <QCoreApplication>

#include <algorithm>

namespace ullage {

namespace {

constexpr int photo_units = 400; ///< width of a photo, and its height at most
constexpr int letters_px = 11;   ///< in a drawing of that width; about 8.5 pt on a page

QSize photo_size(const PhotoContent& photo) {
    return photo.image.isNull() ? QSize(photo_units, photo_units) : photo.image.size().scaled(photo_units, photo_units, Qt::KeepAspectRatio);
}

int height_of(const PictureContent& content) {
    if (const auto* photo = std::get_if<PhotoContent>(&content)) return std::max(1, photo_size(*photo).height());
    if (const auto* bars = std::get_if<BarContent>(&content)) return 70 + 40 * static_cast<int>(std::max<std::size_t>(1, bars->bars.size()));
    return std::holds_alternative<VesselRowContent>(content) ? 230 : 270;
}

/// Few vessels stand at the left rather than lost in the middle of the page.
int width_of(const PictureContent& content) {
    if (const auto* photo = std::get_if<PhotoContent>(&content)) return std::max(1, photo_size(*photo).width());
    const auto* row = std::get_if<VesselRowContent>(&content);
    return row ? std::min(report_text_units, 40 + 150 * static_cast<int>(std::max<std::size_t>(1, row->columns.size()))) : report_text_units;
}

const ReportHeading* heading(const ReportBlock* block) { return std::get_if<ReportHeading>(block); }

} // namespace

Error report_given_up() { return Error{Failure::refused, say(phrase("report", "the report was cancelled; nothing was written")), {}, {}}; }

Paper paper_of(const QLocale& locale) { return locale.measurementSystem() == QLocale::ImperialUSSystem ? Paper::letter : Paper::a4; }

char decimal_sign_of(const QLocale& locale) { return locale.decimalPoint() == QLatin1String(",") ? ',' : '.'; }

QString shown(std::string_view text) { return raw_text(one_line(text)); }

std::vector<const ReportBlock*> shown_blocks(const Report& report, const ReportPictures& pictures) {
    std::vector<const ReportBlock*> blocks;
    for (const ReportBlock& block : report.blocks) {
        const auto* picture = std::get_if<ReportPicture>(&block);
        if (!picture || pictures.contains(picture->key)) blocks.push_back(&block);
    }
    // From the end, so that a chapter goes too once its parts have gone.
    for (std::size_t at = blocks.size(); at-- > 0;) {
        const ReportHeading* own = heading(blocks[at]);
        if (!own) continue;
        const ReportHeading* next = at + 1 < blocks.size() ? heading(blocks[at + 1]) : nullptr;
        if (at + 1 == blocks.size() || (next && next->level <= own->level)) blocks.erase(blocks.begin() + static_cast<std::ptrdiff_t>(at));
    }
    return blocks;
}

PictureSpec report_picture_spec(const PictureContent& content) {
    PictureSpec spec;
    spec.size = {width_of(content), height_of(content)};
    spec.ground = QColor(Qt::white);
    QFont font(QStringLiteral("DejaVu Sans"));
    // In pixels, as a size in points would be scaled by the page's resolution once more; without hinting, as the page has none.
    font.setPixelSize(letters_px);
    font.setHintingPreference(QFont::PreferNoHinting);
    spec.font = font;
    return spec;
}

QString weight_sign(Weight weight) {
    switch (weight) {
    case Weight::fault: return QStringLiteral("\u25A0 ") + QCoreApplication::translate("report", "fault");
    case Weight::doubt: return QStringLiteral("\u25B2 ") + QCoreApplication::translate("report", "doubt");
    case Weight::note: return QStringLiteral("\u25CF ") + QCoreApplication::translate("report", "note");
    }
    return {};
}

} // namespace ullage
