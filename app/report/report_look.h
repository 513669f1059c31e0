// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/picture.h"
#include "formats/report/report_content.h"

#include <QLocale>
#include <QString>

#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace ullage {

enum class Paper { a4, letter };

/// What a report's drawings show, by the key of their block.
using ReportPictures = std::map<std::string, PictureContent>;

/// How a report is laid out.
struct ReportLook {
    Paper paper = Paper::a4;
    char decimal_sign = '.'; ///< within drawings; texts of a Report have theirs already
    /// Called after each small piece of work, where there is one; false gives the report up.
    std::function<bool()> turn = {};
    bool files_beside = false; ///< each table and drawing is a file of its own too, see write_report_files()

    [[nodiscard]] bool goes_on() const { return !turn || turn(); }
};

/// Why a report that was given up does not stand anywhere.
[[nodiscard]] Error report_given_up();

/// Letter where the locale measures as the United States do, else A4.
[[nodiscard]] Paper paper_of(const QLocale& locale);
/// ',' where the locale writes a decimal comma, else '.'.
[[nodiscard]] char decimal_sign_of(const QLocale& locale);

/// "0.1.0" and other UTF-8 as Qt's text, on one line, without what no format can hold (one_line).
[[nodiscard]] QString shown(std::string_view text);

/// The blocks that can be shown: without drawings that are not in `pictures`, and without headings that then head nothing.
[[nodiscard]] std::vector<const ReportBlock*> shown_blocks(const Report& report, const ReportPictures& pictures);

/// The width of a report's text in units of its drawings.
inline constexpr int report_text_units = 640;

/// Size (at most report_text_units wide), light palette, white ground and font of a drawing in a report.
[[nodiscard]] PictureSpec report_picture_spec(const PictureContent& content);

/// Weight of a finding by shape and word: "■ fault".
[[nodiscard]] QString weight_sign(Weight weight);

} // namespace ullage
