// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/report/report_content.h"
#include "report/kept_text.h"
#include "report/page_flow.h"

namespace ullage {

/// Sets a table with title, notes and remarks. The head is repeated on every page that a row reaches; a row stays whole unless it
/// is taller than a page. Columns share the width by what their longest words and texts need.
/// `kept` sets its texts.
void flow_table(PageFlow& flow, const ReportTable& block, const KeptText& kept);

} // namespace ullage
