// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/photo_image.h"

#include "model/photo.h"

#include <QBuffer>
#include <QByteArray>
#include <QImageReader>

#include <algorithm>

namespace ullage {

namespace {

/// Enough for the most pixels that a logbook takes, 8 bytes each at the deepest PNG.
constexpr int allocation_mb = static_cast<int>(photo_limit_pixels * 8 / 1'000'000);

} // namespace

QImage photo_image(const std::string& bytes, QSize within) {
    QByteArray content = QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size()));
    QBuffer buffer(&content);
    if (!buffer.open(QIODevice::ReadOnly)) return {};
    if (QImageReader::allocationLimit() < allocation_mb) QImageReader::setAllocationLimit(allocation_mb);
    QImageReader reader(&buffer);
    reader.setDecideFormatFromContent(true);
    reader.setAutoTransform(true);
    const QSize whole = reader.size();
    if (within.isValid() && whole.isValid()) {
        // The size asked for is that before turning.
        const QSize room = reader.transformation().testFlag(QImageIOHandler::TransformationRotate90) ? within.transposed() : within;
        const QSize fitted = whole.scaled(room, Qt::KeepAspectRatio);
        if (fitted.width() < whole.width()) reader.setScaledSize(fitted.expandedTo({1, 1}));
    }
    return reader.read();
}

} // namespace ullage
