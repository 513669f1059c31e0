// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/run/photo_intake.h"

#include "dialogs/photo_words.h"
#include "services/background_work.h"
#include "style/words.h"

#include <QBuffer>
#include <QFile>
#include <QFileInfo>
#include <QImage>
#include <QMimeData>
#include <QMimeDatabase>
#include <QUrl>

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

/// Quick to write rather than small: 12 megapixels take well under a second.
constexpr int png_quality = 80;

bool called_picture(const QUrl& url) {
    return url.isLocalFile() &&
           QMimeDatabase().mimeTypeForFile(url.toLocalFile(), QMimeDatabase::MatchExtension).name().startsWith(QLatin1String("image/"));
}

Result<NewPhoto> photo_from_file(const QString& path) {
    const QFileInfo info(path);
    const auto refused = [&](Failure failure, const QString& what, const QString& remedy) {
        return Error{failure, utf8_of(what), utf8_of(info.fileName()), utf8_of(remedy)};
    };
    if (!info.exists()) return refused(Failure::not_found, tr("there is no such file"), tr("check the name and the folder"));
    if (!info.isFile()) return refused(Failure::bad_input, tr("this is no file"), tr("choose a picture"));
    if (info.size() > photo_limit_bytes) {
        const qint64 rounded_up = (info.size() + 99'999) / 100'000 * 100'000; // so that it does not read like the limit
        return refused(Failure::bad_input, tr("the file has %1; a logbook takes %2").arg(photo_size_words(rounded_up), photo_limits_words()),
                       tr("save it smaller, as JPEG for example"));
    }
    QFile file(path);
    QByteArray bytes;
    if (file.open(QIODevice::ReadOnly)) bytes = file.read(photo_limit_bytes + 1);
    switch (file.error()) {
    case QFileDevice::NoError: break;
    case QFileDevice::OpenError:
    case QFileDevice::PermissionsError: return refused(Failure::io, tr("the file cannot be opened"), tr("check that you may read it"));
    case QFileDevice::ResourceError: return refused(Failure::io, tr("too many files are open"), tr("close other programs and try again"));
    default: return refused(Failure::io, tr("the file cannot be read to its end"), tr("check the disk or card that it is on, or copy it elsewhere"));
    }
    return NewPhoto{utf8_of(info.fileName()), bytes_of(bytes), {}};
}

Result<NewPhoto> photo_from_image(const QImage& image) {
    const std::string name = "pasted.png";
    if (image.isNull())
        return Error{Failure::bad_input, utf8_of(tr("the picture could not be taken over")), name, utf8_of(tr("save it as a file and attach that"))};
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG", png_quality);
    return NewPhoto{name, bytes_of(bytes), {}};
}

} // namespace

bool holds_picture_files(const QMimeData& mime) {
    const auto urls = mime.urls();
    return !urls.isEmpty() && std::all_of(urls.begin(), urls.end(), called_picture);
}

bool holds_pictures(const QMimeData& mime) { return mime.hasUrls() ? holds_picture_files(mime) : mime.hasImage(); }

PhotoIntake photos_from_files(const QStringList& paths, QWidget* window) {
    auto read = result_beside(window, tr("Reading photos"), [&](WorkProgress& progress) {
        PhotoIntake intake;
        for (const QString& path : paths) {
            if (progress.cancelled()) break;
            progress.at(static_cast<std::int64_t>(intake.size()), paths.size());
            intake.push_back(photo_from_file(path));
        }
        return intake;
    });
    return read ? std::move(*read) : PhotoIntake();
}

PhotoIntake photos_from(const QMimeData& mime, QWidget* window) {
    if (!mime.hasUrls()) {
        const auto image = qvariant_cast<QImage>(mime.imageData());
        auto read = result_beside(window, tr("Reading photos"), [&](WorkProgress&) { return PhotoIntake{photo_from_image(image)}; });
        return read ? std::move(*read) : PhotoIntake();
    }
    QStringList paths;
    for (const QUrl& url : mime.urls()) paths << url.toLocalFile();
    return photos_from_files(paths, window);
}

} // namespace ullage
