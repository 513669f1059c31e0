// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "chart_content/report_making.h"
#include "core/formats/report/report_samples.h"
#include "report/report_file.h"
#include "support/command_output.h"
#include "support/temp_folder.h"

#include <gtest/gtest.h>

#include <QString>
#include <QStringList>

#include <string>
#include <vector>

namespace ullage::test {

/// A word of a PDF's page, in points from its upper left corner.
struct PdfWord {
    int page = 0;
    double left = 0, top = 0, right = 0, bottom = 0;
    QString text;
};

/// The report with its drawings of these records as tested.
[[nodiscard]] MadeReport as_tested_report(const std::vector<RunRecord>& records, const std::vector<ReportedRun>& runs,
                                          const std::vector<UnitAnalysis>& units, const ReportOptions& options);

/// Writes reports into a folder of its own and looks at them from outside, with poppler's and libxml2's tools.
class ReportTest : public testing::Test {
protected:
    /// Two units, one of whose runs has a remark on each reading, an amended reading and enough readings for several pages.
    ReportTest();

    [[nodiscard]] MadeReport run(char decimal_sign = '.') const;
    [[nodiscard]] MadeReport comparison(char decimal_sign = '.') const;

    std::string write(const MadeReport& made, const char* name, Paper paper = Paper::a4, char decimal_sign = '.') const;
    [[nodiscard]] static QByteArray bytes(const std::string& path);
    /// Text of each page, as a reader sees it.
    [[nodiscard]] static QStringList page_texts(const std::string& pdf);
    [[nodiscard]] static std::vector<PdfWord> words(const std::string& pdf);
    [[nodiscard]] std::string xpath(const std::string& html, const std::string& expression) const;

    TempFolder folder;
    ReportSample alder, birch;
};

} // namespace ullage::test
