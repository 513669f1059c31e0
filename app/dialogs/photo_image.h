// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <QSize>

#include <string>

namespace ullage {

/// The picture in these bytes of a JPEG or PNG file, turned as its camera was held; a null image when it is damaged.
/// With `within` it is scaled down to fit in there, which costs less than decoding it whole; it is never enlarged.
[[nodiscard]] QImage photo_image(const std::string& bytes, QSize within = {});

} // namespace ullage
