// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/photo_image.h"

#include "model/jpeg_head.h"

#include <QBuffer>
#include <QByteArray>
#include <QImageReader>

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

/// Bytes that come to an end when nobody wants them any more: no decoder can be stopped otherwise.
class StoppableBuffer final : public QBuffer {
public:
    StoppableBuffer(QByteArray* bytes, const std::atomic<bool>* cancelled) : QBuffer(bytes), cancelled_(cancelled) {}

protected:
    qint64 readData(char* data, qint64 most) override { return cancelled_ != nullptr && *cancelled_ ? -1 : QBuffer::readData(data, most); }

private:
    const std::atomic<bool>* cancelled_;
};

std::int64_t pixels_of(QSize size) { return std::int64_t{size.width()} * size.height(); }

QSize halved_to(QSize size, std::int64_t most_pixels) {
    // JPEG is decoded at a half, a quarter or an eighth for less than the whole costs.
    while (pixels_of(size) > most_pixels) size = {(size.width() + 1) / 2, (size.height() + 1) / 2};
    return size;
}

constexpr std::int64_t photo_memory_bytes = std::int64_t{photo_memory_mb} << 20;

bool needs_too_much(QSize whole, QImage::Format format) {
    const int bytes_each = format == QImage::Format_Invalid ? 4 : QImage::toPixelFormat(format).bitsPerPixel() / 8;
    return pixels_of(whole) * bytes_each > photo_memory_bytes;
}

/// What the decoder of such a picture holds besides the picture, at whatever size that is decoded.
std::int64_t bytes_beside(const std::string& bytes, PhotoFormat format) {
    const auto head = format == PhotoFormat::jpeg ? jpeg_head(bytes) : std::nullopt;
    return head ? head->coefficient_bytes : 0;
}

/// As the screen wants it, so that showing it copies nothing.
QImage for_screen(QImage image) {
    const QImage::Format format = image.hasAlphaChannel() ? QImage::Format_ARGB32_Premultiplied : QImage::Format_RGB32;
    return std::move(image).convertToFormat(format); // in place where it can be
}

} // namespace

ShownPhoto photo_image(const std::string& bytes, PhotoFormat format, QSize within, const std::atomic<bool>* cancelled) {
    static const bool limited = [] {
        QImageReader::setAllocationLimit(photo_memory_mb);
        return true;
    }();
    static_cast<void>(limited);
    QByteArray content = QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size()));
    StoppableBuffer buffer(&content, cancelled);
    if (!buffer.open(QIODevice::ReadOnly)) return {};
    QImageReader reader(&buffer, format == PhotoFormat::png ? "png" : "jpeg");
    reader.setAutoDetectImageFormat(false);
    reader.setDecideFormatFromContent(false);
    reader.setAutoTransform(true);
    ShownPhoto photo;
    const QSize stored = reader.size();
    const bool upright = reader.transformation().testFlag(QImageIOHandler::TransformationRotate90);
    if (stored.isValid()) {
        photo.whole = upright ? stored.transposed() : stored;
        constexpr std::int64_t bytes_of_pixel = 4;
        const std::int64_t room = (photo_memory_bytes - bytes_beside(bytes, format)) / bytes_of_pixel;
        if (room < photo_fitted_pixels) {
            photo.too_large = true;
            return photo;
        }
        QSize wanted = halved_to(stored, std::min(photo_shown_pixels, room));
        // The size asked for is that before turning.
        if (within.isValid()) wanted = stored.scaled(upright ? within.transposed() : within, Qt::KeepAspectRatio).expandedTo({1, 1});
        if (wanted.width() < stored.width()) reader.setScaledSize(wanted);
    }
    const QImage::Format decoded = reader.imageFormat();
    photo.image = reader.read();
    if (cancelled != nullptr && *cancelled) photo.image = {};
    if (photo.image.isNull()) {
        photo.too_large = stored.isValid() && needs_too_much(stored, decoded);
        return photo;
    }
    photo.image = for_screen(std::move(photo.image));
    photo.fitted = photo.image;
    if (const QSize size = halved_to(photo.image.size(), photo_fitted_pixels); size != photo.image.size())
        photo.fitted = photo.image.scaled(size, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    return photo;
}

} // namespace ullage
