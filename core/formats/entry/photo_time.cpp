// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/entry/photo_time.h"

#include "formats/entry/inside/photo_tags.h"

namespace ullage {

std::optional<PhotoMoment> photo_time(std::string_view bytes, std::string_view zone) {
    // The library reads many more formats, none of which a logbook keeps.
    if (!bytes.starts_with("\xff\xd8\xff") && !bytes.starts_with("\x89PNG\r\n")) return std::nullopt;
    const auto read = photo_tags.get();
    // Without it the photo is kept all the same.
    return read ? read.value()(bytes, zone) : std::nullopt;
}

} // namespace ullage
