// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "model/photo.h"

#include <QStringList>

#include <vector>

class QMimeData;
class QWidget;

namespace ullage {

/// Photos on their way in, in their order: each with its bytes, or why it could not be read.
using PhotoIntake = std::vector<Result<NewPhoto>>;

/// Whether all that is dropped or pasted are files that are called pictures of any kind, at least one.
[[nodiscard]] bool holds_picture_files(const QMimeData& mime);
/// The same, or a picture without a file.
[[nodiscard]] bool holds_pictures(const QMimeData& mime);

/// Reads files beside `window`. Those over photo_limit_bytes are not read but refused with their size. What is in them is judged by the store.
/// Nothing where the person cancelled it.
[[nodiscard]] PhotoIntake photos_from_files(const QStringList& paths, QWidget* window);
/// Reads the picture files, else encodes the picture as PNG, beside `window` too. Precondition: holds_pictures().
[[nodiscard]] PhotoIntake photos_from(const QMimeData& mime, QWidget* window);

} // namespace ullage
