// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/picture.h"

#include "charts/bar_stage.h"
#include "charts/line_stage.h"
#include "charts/picture_words.h"
#include "formats/files/whole_file.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QApplication>
#include <QBuffer>
#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QGraphicsScene>
#include <QPainter>
#include <QSvgGenerator>

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

constexpr int longest_side = 20000;
constexpr double most_pixels = 4e8;
constexpr double units_per_metre = 96 / 0.0254; // a unit is a CSS pixel

ChartLook look_of(const PictureSpec& spec) {
    QColor ground = spec.ground.value_or(spec.palette.ground);
    ground.setAlpha(255);
    return {spec.palette, ground, tabular(spec.font.value_or(QApplication::font()))};
}

Result<void> check(const PictureSpec& spec) {
    if (spec.size.width() < 1 || spec.size.height() < 1 || spec.size.width() > longest_side || spec.size.height() > longest_side)
        return Error{Failure::bad_input,
                     say(phrase("charts", "a picture of %1 by %2 cannot be drawn"), say_number(spec.size.width()), say_number(spec.size.height())),
                     say(phrase("charts", "picture size")), say(phrase("charts", "choose sides from 1 to %1"), say_number(longest_side))};
    if (!std::isfinite(spec.scale) || spec.scale <= 0)
        return Error{Failure::bad_input, say(phrase("charts", "the scale is not a positive number")), say(phrase("charts", "picture scale")),
                     say(phrase("charts", "choose a scale such as 1 or 2"))};
    return {};
}

// Lays a chart's stage out off screen and paints its scene.
template <class Stage, class Content>
void paint_chart(QPainter& painter, const QRectF& target, const Content& content, const PictureSpec& spec) {
    QGraphicsScene scene;
    auto* chart = new QChart; // the scene owns it
    scene.addItem(chart);
    Stage stage(*chart);
    const QSizeF size(spec.size);
    stage.setLook(look_of(spec));
    stage.setSize(size);
    stage.setContent(content);
    // Without a view nobody asks for the layout that Qt Charts has posted to itself.
    QCoreApplication::sendPostedEvents(chart);
    scene.setSceneRect(QRectF(QPointF(), size));
    scene.render(&painter, target, scene.sceneRect(), Qt::IgnoreAspectRatio);
}

void paint_row(QPainter& painter, const QRectF& target, const VesselRowContent& content, const PictureSpec& spec) {
    const ChartLook look = look_of(spec);
    painter.save();
    painter.translate(target.topLeft());
    painter.scale(target.width() / spec.size.width(), target.height() / spec.size.height());
    const QRectF area(QPointF(), QSizeF(spec.size));
    painter.fillRect(area, look.ground);
    const double margin = 2.0 * spacing::grid_px;
    paint_vessel_row(painter, content, area.adjusted(margin, margin, -margin, -margin), look);
    painter.restore();
}

/// The whole photo, as large as the target allows.
void paint_photo(QPainter& painter, const QRectF& target, const PhotoContent& content) {
    if (content.image.isNull()) return;
    QRectF place(QPointF(), QSizeF(content.image.size()).scaled(target.size(), Qt::KeepAspectRatio));
    place.moveCenter(target.center());
    painter.drawImage(place, content.image);
}

QString description_of(const PictureContent& content) {
    return std::visit([](const auto& any) { return any.description; }, content);
}

Result<QByteArray> png_bytes(const PictureContent& content, const PictureSpec& spec) {
    auto image = render_picture(content, spec);
    if (!image) return image.error();
    if (const QString text = description_of(content); !text.isEmpty()) image.value().setText(QStringLiteral("Description"), text);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    if (!image.value().save(&buffer, "PNG"))
        return Error{
            Failure::io, say(phrase("charts", "the picture could not be put into PNG form")), {}, say(phrase("charts", "try a smaller size"))};
    return bytes;
}

} // namespace

Result<void> check_image(const PictureSpec& spec) {
    if (auto checked = check(spec); !checked) return checked;
    const double width = std::round(spec.size.width() * spec.scale);
    const double height = std::round(spec.size.height() * spec.scale);
    if (width < 1 || height < 1 || width * height > most_pixels || std::max(width, height) > 32000)
        return Error{Failure::bad_input, say(phrase("charts", "size and scale make an image that is too small or too large")),
                     say(phrase("charts", "picture scale")), say(phrase("charts", "choose a smaller size or scale"))};
    return {};
}

Result<void> paint_picture(QPainter& painter, const QRectF& target, const PictureContent& content, const PictureSpec& spec) {
    if (auto checked = check(spec); !checked) return checked;
    if (spec.with_words) {
        const QRectF whole(QPointF(), QSizeF(spec.size));
        painter.save();
        painter.translate(target.topLeft());
        painter.scale(target.width() / whole.width(), target.height() / whole.height());
        painter.fillRect(whole, look_of(spec).ground);
        const QRectF left = paint_picture_words(painter, whole, content, spec).toRect();
        PictureSpec bare = spec;
        bare.with_words = false;
        bare.size = left.size().toSize();
        const Result<void> painted = paint_picture(painter, left, content, bare);
        painter.restore();
        return painted;
    }
    if (const auto* lines = std::get_if<ChartContent>(&content)) paint_chart<LineStage>(painter, target, *lines, spec);
    else if (const auto* bars = std::get_if<BarContent>(&content)) paint_chart<BarStage>(painter, target, *bars, spec);
    else if (const auto* row = std::get_if<VesselRowContent>(&content)) paint_row(painter, target, *row, spec);
    else paint_photo(painter, target, std::get<PhotoContent>(content));
    return {};
}

Result<QImage> render_picture(const PictureContent& content, const PictureSpec& spec) {
    if (auto checked = check_image(spec); !checked) return checked.error();
    QImage image(static_cast<int>(std::round(spec.size.width() * spec.scale)), static_cast<int>(std::round(spec.size.height() * spec.scale)),
                 QImage::Format_RGB32);
    if (image.isNull())
        return Error{Failure::io,
                     say(phrase("charts", "there is not enough memory for the picture")),
                     {},
                     say(phrase("charts", "choose a smaller size or scale"))};
    image.fill(look_of(spec).ground);
    QPainter painter(&image);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    if (auto painted = paint_picture(painter, QRectF(QPointF(), QSizeF(image.size())), content, spec); !painted) return painted.error();
    painter.end();
    // Only now: while painting, the resolution would make text larger.
    image.setDotsPerMeterX(static_cast<int>(std::round(units_per_metre * spec.scale)));
    image.setDotsPerMeterY(image.dotsPerMeterX());
    return image;
}

Result<QByteArray> svg_picture(const PictureContent& content, const PictureSpec& spec) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    QSvgGenerator generator;
    generator.setOutputDevice(&buffer);
    generator.setResolution(96); // so that a unit of the drawing is a CSS pixel
    generator.setSize(spec.size);
    generator.setViewBox(QRect(QPoint(), spec.size));
    generator.setTitle(description_of(content));
    QPainter painter;
    if (!painter.begin(&generator))
        return Error{Failure::io, say(phrase("charts", "the picture could not be put into SVG form")), {}, say(phrase("charts", "try PNG instead"))};
    const auto painted = paint_picture(painter, QRectF(QPointF(), QSizeF(spec.size)), content, spec);
    painter.end();
    if (!painted) return painted.error();
    return bytes;
}

Result<void> write_picture(const PictureContent& content, const QString& path, const PictureSpec& spec, const Replacing& replacing) {
    const QFileInfo info(path);
    const QString end = info.suffix().toLower();
    if (end != QLatin1String("png") && end != QLatin1String("svg"))
        return Error{Failure::bad_input, say(phrase("charts", "a picture's name must end in .png or .svg")), utf8_of(path),
                     say(phrase("charts", "add the ending that you want"))};
    if (!info.absoluteDir().exists())
        return Error{Failure::not_found, say(phrase("charts", "the folder does not exist")), utf8_of(info.absolutePath()),
                     say(phrase("charts", "make the folder or choose another"))};
    const auto bytes = end == QLatin1String("png") ? png_bytes(content, spec) : svg_picture(content, spec);
    if (!bytes) return bytes.error();
    return write_whole_file(native_path(path), {bytes.value().constData(), static_cast<std::size_t>(bytes.value().size())}, replacing);
}

} // namespace ullage
