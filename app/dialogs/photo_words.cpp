// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/photo_words.h"

#include "base/number.h"
#include "style/words.h"

#include <algorithm>

namespace ullage {

QString moment_with_seconds(UtcMs time_ms, const std::string& zone) {
    return QStringLiteral("%1 %2:%3")
        .arg(raw_text(date_text(time_ms, zone)), raw_text(clock_text(time_ms, zone)),
             QStringLiteral("%1").arg(to_local(time_ms, zone).second, 2, 10, QLatin1Char('0')));
}

QString photo_moment_words(const PhotoMoment& moment, const std::string& zone) {
    const QString words = moment_with_seconds(moment.time_ms, zone);
    if (!moment.zone_assumed) return words;
    return tr("%1 (the camera gave no time zone; read in %2)").arg(words, raw_text(zone));
}

QString photo_size_words(std::int64_t size_bytes) {
    const auto size = static_cast<double>(size_bytes);
    if (size_bytes >= 1'000'000) return QStringLiteral("%1 MB").arg(text_of(say_number(size / 1e6, 1)));
    return QStringLiteral("%1 kB").arg(text_of(say_number(std::max(1.0, size / 1e3), 0)));
}

QString photo_words(const Photo& photo, const std::string& zone) {
    const QString taken = photo.taken ? tr("taken %1").arg(photo_moment_words(*photo.taken, zone)) : tr("no time in it");
    return QStringLiteral("%1, %2, %3").arg(text_of(photo.file_name), photo_size_words(photo.size_bytes), taken);
}

QString photo_limits_words() {
    return tr("JPEG or PNG, at most %1 MB and %2 megapixels each").arg(photo_limit_bytes / 1'000'000).arg(photo_limit_pixels / 1'000'000);
}

} // namespace ullage
