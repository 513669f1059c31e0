// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/remembered_page.h"

#include "services/settings.h"
#include "style/words.h"

#include <QFileInfo>
#include <QStringList>

namespace ullage {

namespace {

const QString page_key = QStringLiteral("page");
constexpr QLatin1Char between('\n');

} // namespace

std::optional<RememberedPage> remembered_page(const Settings& settings, const QString& logbook) {
    const auto parts = settings.remembered(page_key).split(between);
    if (parts.size() != 3 || parts[0] != logbook) return std::nullopt;
    return RememberedPage{parts[1], utf8_of(parts[2])};
}

void remember_page(Settings& settings, const QString& logbook, const RememberedPage& page) {
    settings.remember(page_key, QStringList{logbook, page.name, raw_text(page.uuid)}.join(between));
}

std::unique_ptr<LogbookAhead> logbook_of_start(const Settings& settings, const Clock& clock, const std::optional<QString>& named) {
    const QString path = named ? *named : settings.lastFile();
    if (!named && (path.isEmpty() || !QFileInfo::exists(path))) return nullptr;
    const auto page = remembered_page(settings, path);
    return std::make_unique<LogbookAhead>(path, clock, page ? page->uuid : std::string());
}

} // namespace ullage
