// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/picture.h"
#include "formats/report/worked_example.h"

#include <QString>

#include <optional>

namespace ullage {

/// The drawing of a step of the worked example; absent where it has none.
[[nodiscard]] std::optional<PictureContent> example_picture(const WorkedExample& example, const ExampleStep& step);

/// The worked example on the sample data as a page of help: sentences with figures that the program works out as it is shown, what each
/// quantity means, and drawings `width_px` wide in the colours of the theme. Where the sample data are not there it says so.
[[nodiscard]] QString worked_example_html(int width_px);

} // namespace ullage
