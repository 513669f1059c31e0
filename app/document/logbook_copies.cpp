// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/logbook_copies.h"

#include "store/logbook.h"
#include "style/words.h"

namespace ullage {

Result<void> save_as_logbook(const QString& copy, const QString& target, const Clock& clock) {
    const auto book = Logbook::open(native_path(copy), OpenMode::read_only, clock);
    return book ? book.value().save_copy(native_path(target)) : book.error();
}

} // namespace ullage
