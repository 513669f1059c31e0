// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store.
#pragma once

#include "base/result.h"
#include "model/photo.h"

#include <string_view>

namespace ullage::store {

/// The kind of picture by its content; the name says nothing. Looks at headers only: JPEG from the start of image to
/// the frame header (ITU-T T.81, B.1.1.3 and B.2.2), PNG signature and IHDR chunk with its CRC (ISO/IEC 15948:2004, 5.2
/// and 11.2.2). Errors (bad_input, naming `file_name`): empty, over photo_limit_bytes, neither JPEG nor PNG, a damaged
/// header, over photo_limit_pixels.
[[nodiscard]] Result<PhotoFormat> check_photo(std::string_view bytes, const std::string& file_name);

} // namespace ullage::store
