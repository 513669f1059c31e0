// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "charts/chart_data.h"
#include "charts/chart_look.h"
#include "charts/vessel_row.h"
#include "formats/files/replacing.h"

#include <QByteArray>
#include <QFont>
#include <QImage>
#include <QSize>
#include <QString>

#include <optional>
#include <variant>

class QPainter;

namespace ullage {

/// A photo among drawings.
struct PhotoContent {
    QImage image;
    QString description;
};

/// Anything that this room can draw.
using PictureContent = std::variant<ChartContent, BarContent, VesselRowContent, PhotoContent>;

/// How a picture is made.
struct PictureSpec {
    QSize size{960, 540}; ///< in units of the drawing; a unit is a pixel at scale 1
    double scale = 1;     ///< pixels a unit in PNG and QImage; does not matter for SVG
    Palette palette = light_palette();
    std::optional<QColor> ground = {}; ///< absent: the palette's ground; alpha is dropped, a picture is always opaque
    std::optional<QFont> font = {};    ///< absent: the application's font
    /// Whether it says itself what it shows, of what and how it is read, for a file that goes out alone; see paint_picture_words().
    bool with_words = false;
    QString source = {}; ///< then its last line, see picture_source()
};

/// Refuses what render_picture() would refuse: a size that is not positive or beyond 20 000 units, a scale that is not positive, an image
/// beyond 400 million pixels.
[[nodiscard]] Result<void> check_image(const PictureSpec& spec);

/// Draws `content` into `target` of any painter (a report's page, say), scaled from spec.size. Main thread only.
/// Refuses a size that is not positive or beyond 20 000 units.
Result<void> paint_picture(QPainter& painter, const QRectF& target, const PictureContent& content, const PictureSpec& spec);

/// An opaque image of spec.size times spec.scale, which says how many dots an inch has where 96 units are an inch. Refuses what
/// check_image() refuses.
Result<QImage> render_picture(const PictureContent& content, const PictureSpec& spec);

/// The picture as an SVG file's bytes, a unit of the drawing being a CSS pixel.
Result<QByteArray> svg_picture(const PictureContent& content, const PictureSpec& spec);

/// Writes a PNG or SVG file, as the end of `path` says (.png, .svg). An existing file is replaced only once the new one is
/// complete, and where `replacing` allows it. Errors: other ends, a folder that does not exist, those of write_whole_file.
Result<void> write_picture(const PictureContent& content, const QString& path, const PictureSpec& spec, const Replacing& replacing = {});

} // namespace ullage
