// SPDX-License-Identifier: GPL-3.0-or-later
#include "report_fixture.h"

#include <QFile>
#include <QRegularExpression>

namespace ullage::test {

namespace {

RunRecord long_run() {
    RunRecord record = full_drain("Alder", 0.1);
    for (std::size_t r = 0; r < record.readings.size(); ++r) record.readings[r].values.remark = "note " + std::to_string(r + 1);
    record.run.load = "lamps & fans";
    return record;
}

} // namespace

MadeReport as_tested_report(const std::vector<RunRecord>& records, const std::vector<ReportedRun>& runs, const std::vector<UnitAnalysis>& units,
                            const ReportOptions& options) {
    const Comparison comparison = compare_as_tested(records);
    return make_comparison_report(comparison, compare_at(comparison, std::nullopt), runs, units, options);
}

ReportTest::ReportTest() : alder(long_run()), birch(full_drain("Birch")) {
    const Reading& reading = alder.record.readings[5];
    ReadingValues typed = reading.values;
    typed.gauge_percent = 59;
    alder.histories = {{reading.uuid, {{1, typed, false, typed.time_ms, {}}, {2, reading.values, false, typed.time_ms + 60'000, "misread"}}}};
}

MadeReport ReportTest::run(char decimal_sign) const {
    ReportOptions options{decimal_sign, RecordBuilder::start_ms, "UTC"};
    options.own_affairs = true; // with the remarks of the readings
    return make_run_report(alder.run(), alder.fit(), options);
}

MadeReport ReportTest::comparison(char decimal_sign) const {
    const std::vector<RunRecord> records{alder.record, birch.record};
    return as_tested_report(records, {alder.run(), birch.run()}, analyse_units(records), {decimal_sign, RecordBuilder::start_ms, "UTC"});
}

std::string ReportTest::write(const MadeReport& made, const char* name, Paper paper, char decimal_sign) const {
    const std::string path = folder / name;
    const Result<void> written = write_report(made.report, made.pictures, QString::fromStdString(path), {paper, decimal_sign});
    EXPECT_TRUE(written.ok()) << written.error().sentence();
    return path;
}

QByteArray ReportTest::bytes(const std::string& path) {
    QFile file(QString::fromStdString(path));
    EXPECT_TRUE(file.open(QFile::ReadOnly)) << path;
    return file.readAll();
}

QStringList ReportTest::page_texts(const std::string& pdf) {
    const CommandOutput output = run_command("pdftotext -layout '" + pdf + "' -");
    EXPECT_EQ(output.exit_code, 0) << output.text;
    QStringList pages = QString::fromStdString(output.text).split(QLatin1Char('\f'));
    pages.removeLast(); // each page ends in a form feed
    return pages;
}

std::vector<PdfWord> ReportTest::words(const std::string& pdf) {
    const CommandOutput output = run_command("pdftotext -bbox '" + pdf + "' -");
    EXPECT_EQ(output.exit_code, 0) << output.text;
    static const QRegularExpression word(
        QStringLiteral("<word xMin=\"([-\\d.]+)\" yMin=\"([-\\d.]+)\" xMax=\"([-\\d.]+)\" yMax=\"([-\\d.]+)\">([^<]*)</word>"));
    std::vector<PdfWord> words;
    int page = 0;
    for (const QString& line : QString::fromStdString(output.text).split(QLatin1Char('\n'))) {
        if (line.contains(QLatin1String("<page "))) ++page;
        const auto match = word.match(line);
        if (match.hasMatch())
            words.push_back({page, match.captured(1).toDouble(), match.captured(2).toDouble(), match.captured(3).toDouble(),
                             match.captured(4).toDouble(), match.captured(5)});
    }
    return words;
}

std::string ReportTest::xpath(const std::string& html, const std::string& expression) const {
    std::string text = run_command("xmllint --xpath \"" + expression + "\" '" + html + "'").text;
    while (!text.empty() && text.back() == '\n') text.pop_back();
    return text;
}

} // namespace ullage::test
