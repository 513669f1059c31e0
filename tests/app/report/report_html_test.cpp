// SPDX-License-Identifier: GPL-3.0-or-later
#include "report_fixture.h"

#include <QRegularExpression>
#include <QXmlStreamReader>

namespace ullage::test {
namespace {

using ReportHtml = ReportTest;

TEST_F(ReportHtml, is_well_formed) {
    for (const auto& [made, name] : {std::pair(run(), "run.html"), std::pair(comparison(), "comparison.html")}) {
        const std::string path = write(made, name);
        QXmlStreamReader reader(bytes(path));
        while (!reader.atEnd()) reader.readNext();
        EXPECT_FALSE(reader.hasError()) << reader.errorString().toStdString() << " in line " << reader.lineNumber();
        const CommandOutput check = run_command("xmllint --noout '" + path + "'");
        EXPECT_EQ(check.exit_code, 0) << check.text;
        EXPECT_EQ(check.text, "");
    }
}

TEST_F(ReportHtml, what_a_tester_typed_stays_text) {
    const std::string attack = "<script>alert(\"x\" & 'y')</script>";
    RunRecord record = full_drain(attack);
    record.unit.maker = "\"><img src=x onerror=alert(1)>";
    record.meter->name = attack;
    record.run.load = "]]> &amp; <b>";
    for (Reading& reading : record.readings) reading.values.remark = attack + "\n\x01\xC3(";
    ReportSample hostile(record);
    hostile.histories = {{record.readings[0].uuid, {{1, {}, false, 0, attack}, {2, record.readings[0].values, true, 0, attack}}}};
    const std::vector<RunRecord> records{hostile.record};
    const ReportOptions options{'.', RecordBuilder::start_ms, "UTC"};
    for (const auto& [made, name] : {std::pair(make_run_report(hostile.run(), hostile.fit(), options), "run.html"),
                                     std::pair(as_tested_report(records, {hostile.run()}, analyse_units(records), options), "comparison.html")}) {
        const std::string path = write(made, name);
        EXPECT_EQ(run_command("xmllint --noout '" + path + "'").text, "");
        EXPECT_FALSE(bytes(path).contains("<script"));
        EXPECT_EQ(xpath(path, "count(//*[local-name()='img'])"), "0");
        EXPECT_EQ(xpath(path, "count(//*[local-name()='script'])"), "0");
        EXPECT_NE(xpath(path, "string(//*[local-name()='h1'])").find(name == std::string("run.html") ? attack : "Comparison"), std::string::npos);
    }
}

TEST_F(ReportHtml, stands_alone_with_its_drawings_as_svg) {
    const std::string path = write(run(), "run.html");
    EXPECT_EQ(xpath(path, "count(//*[local-name()='figure']/*[local-name()='svg'])"), "4");
    EXPECT_EQ(xpath(path, "count(//*[local-name()='image'])"), "0") << "vectors, no pixels";
    EXPECT_EQ(xpath(path, "count(//@src)"), "0");
    EXPECT_EQ(xpath(path, "count(//*[local-name()='link'])"), "0");
    // Names of things within one drawing do not clash with those of another.
    const int ids = std::stoi(xpath(path, "count(//@id)"));
    EXPECT_EQ(std::stoi(xpath(path, "count(//*[@id and not(@id = preceding::*/@id) and not(@id = ancestor::*/@id)])")), ids);
}

TEST_F(ReportHtml, has_nothing_that_a_checker_of_html_warns_of) {
    for (const auto& [made, name] : {std::pair(run(), "run.html"), std::pair(comparison(), "comparison.html")})
        EXPECT_EQ(run_command("tidy -q -e '" + write(made, name) + "'").text, "");
}

TEST_F(ReportHtml, each_table_brings_its_numbers_in_full_as_a_file_within_the_page) {
    const std::string path = write(run(), "run.html");
    EXPECT_EQ(xpath(path, "count(//*[local-name()='table'])"), xpath(path, "count(//*[local-name()='a'][@download])"));
    const std::string csv = xpath(path, "string(//*[local-name()='a'][contains(@href, 'gauge_percent')]/@href)");
    EXPECT_TRUE(csv.starts_with("data:text/csv;charset=utf-8,")) << csv;
    EXPECT_NE(csv.find("register_wh"), std::string::npos);
}

TEST_F(ReportHtml, every_note_mark_leads_to_its_note) {
    const std::string path = write(comparison(), "comparison.html");
    EXPECT_NE(xpath(path, "count(//*[local-name()='sup']/*[local-name()='a'])"), "0");
    EXPECT_EQ(xpath(path, "count(//*[local-name()='a'][starts-with(@href, '#')][not(substring(@href, 2) = //@id)])"), "0");
}

TEST_F(ReportHtml, tables_have_heads_that_print_repeats_and_the_paper_is_named) {
    const std::string a4 = write(run(), "a4.html"), letter = write(run(), "letter.html", Paper::letter);
    EXPECT_EQ(xpath(a4, "count(//*[local-name()='table'])"), xpath(a4, "count(//*[local-name()='table']/*[local-name()='thead'])"));
    EXPECT_TRUE(bytes(a4).contains("size: A4;"));
    EXPECT_TRUE(bytes(letter).contains("size: letter;"));
    EXPECT_TRUE(bytes(a4).contains("table-header-group"));
}

TEST_F(ReportHtml, a_comma_reader_finds_commas_in_drawings_too) {
    const QByteArray comma = bytes(write(comparison(','), "comma.html", Paper::a4, ','));
    static const QRegularExpression with_comma(QStringLiteral(">\\d+,\\d+ ± \\d+,\\d+ %<")),
        with_point(QStringLiteral(">\\d+\\.\\d+ ± \\d+\\.\\d+ %<"));
    EXPECT_TRUE(QString::fromUtf8(comma).contains(with_comma)) << "a value beside its bar";
    EXPECT_FALSE(QString::fromUtf8(comma).contains(with_point));
    EXPECT_TRUE(QString::fromUtf8(bytes(write(comparison(), "point.html"))).contains(with_point));
}

} // namespace
} // namespace ullage::test
