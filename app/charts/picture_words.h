// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/instant.h"
#include "charts/picture.h"

#include <QRectF>
#include <QString>

#include <string>

class QPainter;

namespace ullage {

/// Paints into `area` what lets a picture stand alone: above it what it shows (`description`) and of what (`subject`), below it how it is read
/// (`key`) and spec.source. Returns what is left for the drawing. The key is left out where the words would take more than two fifths of the height,
/// and all of them where that does not help.
[[nodiscard]] QRectF paint_picture_words(QPainter& painter, const QRectF& area, const PictureContent& content, const PictureSpec& spec);

/// "The Lantern, 29 November 2026; made with Ullage 0.1.0": for PictureSpec::source. Without a publisher's name the date comes first.
[[nodiscard]] QString picture_source(UtcMs now_ms, const std::string& zone, const std::string& publisher = {});

} // namespace ullage
