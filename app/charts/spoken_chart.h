// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace ullage {

struct BarContent;
struct ChartContent;
struct VesselRowContent;

/// What a picture shows, in sentences for who does not see it: each curve with its number of points, first, last, lowest and highest value, in the
/// digits that the picture can show; what is marked in it; each bar or vessel with its value. Of very many parts the first are told, and how many
/// more there are. A picture without any tells its empty text.
[[nodiscard]] QString spoken_figures(const ChartContent& content);
[[nodiscard]] QString spoken_figures(const BarContent& content);
[[nodiscard]] QString spoken_figures(const VesselRowContent& content);

/// Has the accessibility tree show charts and rows of vessels as charts whose description is spoken_figures(), made when it is asked for; of a row
/// each vessel is a part. May be called often.
void speak_charts();

} // namespace ullage
