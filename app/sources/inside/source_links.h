// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/late_part.h"
#include "sources/source_link.h"

namespace ullage {

/// SourceLink::make(), by the libraries that speak to meters.
inline constinit LateFunction<std::unique_ptr<SourceLink>(const LiveSource& source, const QString& password)> source_links;

} // namespace ullage
