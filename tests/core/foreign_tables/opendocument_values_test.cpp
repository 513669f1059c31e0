// SPDX-License-Identifier: GPL-3.0-or-later
// Values of cells by OpenDocument 1.3 Part 3, 19.385: numbers, and days, moments and durations as XML Schema Part 2 (W3C, 28 October 2004) writes
// them in its own examples: duration 3.2.6, dateTime 3.2.7, date 3.2.9. The examples are written from memory.
#include "core/foreign_tables/packed.h"
#include "foreign_tables/table_book.h"

namespace ullage::test {
namespace {

/// What the one cell with these attributes holds.
GridCell cell_of(const std::string& attributes, const std::string& shown = "shown") {
    const std::string content = "<office:document-content xmlns:office=\"o\" xmlns:table=\"t\" xmlns:text=\"x\"><office:body><office:spreadsheet>"
                                "<table:table table:name=\"One\"><table:table-row><table:table-cell " +
                                attributes + "><text:p>" + shown +
                                "</text:p></table:table-cell></table:table-row></table:table></office:spreadsheet></office:body>"
                                "</office:document-content>";
    const Result<TableBook> book =
        read_table_book(packed({{"mimetype", "application/vnd.oasis.opendocument.spreadsheet"}, {"content.xml", content}}), "table");
    EXPECT_TRUE(book) << (book ? "" : book.error().sentence());
    return book ? book.value().sheets.front().at(0, 0) : GridCell();
}

GridCell moment_of(const std::string& value) { return cell_of("office:value-type=\"date\" office:date-value=\"" + value + "\""); }
GridCell duration_of(const std::string& value) { return cell_of("office:value-type=\"time\" office:time-value=\"" + value + "\""); }

TEST(OpenDocumentValues, days_and_moments_are_those_stored_and_not_those_shown) {
    EXPECT_EQ(moment_of("1999-10-26"), (GridCell{"1999-10-26", true}));
    EXPECT_EQ(moment_of("2002-10-10T12:00:00-05:00"), (GridCell{"2002-10-10 12:00:00-05:00", true}));
    EXPECT_EQ(moment_of("2002-10-10T17:00:00Z"), (GridCell{"2002-10-10 17:00:00Z", true}));
    EXPECT_EQ(moment_of("2002-10-10T12:00:00"), (GridCell{"2002-10-10 12:00:00", true}));
    EXPECT_EQ(moment_of("2002-10-10T12:00:00.123456Z").text, "2002-10-10 12:00:00.123Z");
}

TEST(OpenDocumentValues, durations_count_days_and_one_of_months_has_no_length) {
    EXPECT_EQ(duration_of("PT1004199059S").text, "PT1004199059S") << "beyond all clocks";
    EXPECT_EQ(duration_of("P1DT2S").text, "24:00:02");
    EXPECT_EQ(duration_of("PT130S").text, "00:02:10");
    EXPECT_EQ(duration_of("PT2M10S").text, "00:02:10");
    EXPECT_EQ(duration_of("PT26H30M00.5S").text, "26:30:00.500");
    EXPECT_EQ(duration_of("P3D").text, "72:00:00");
    EXPECT_EQ(duration_of("P1Y2M3DT10H30M").text, "P1Y2M3DT10H30M") << "a month has no fixed length";
    EXPECT_EQ(duration_of("-P120D").text, "-P120D") << "no time of a reading";
}

TEST(OpenDocumentValues, numbers_percent_and_texts_are_those_stored) {
    EXPECT_EQ(cell_of("office:value-type=\"float\" office:value=\"431.5\"", "432"), (GridCell{"431.5", true}));
    EXPECT_EQ(cell_of("office:value-type=\"percentage\" office:value=\"0.69\"", "69%"), (GridCell{"69 %", true}));
    EXPECT_EQ(cell_of("office:value-type=\"string\"", "off, found at 7"), (GridCell{"off, found at 7", false}));
    EXPECT_EQ(cell_of("office:value-type=\"string\" office:string-value=\"off\"", "OFF"), (GridCell{"off", false}));
}

} // namespace
} // namespace ullage::test
