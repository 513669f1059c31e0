// SPDX-License-Identifier: GPL-3.0-or-later
#include "report_fixture.h"

#include <QRegularExpression>

namespace ullage::test {
namespace {

using ReportPdf = ReportTest;

constexpr double mm = 72 / 25.4; ///< points

struct Sheet {
    Paper paper;
    double width, height; ///< points: ISO 216 A4 is 210 mm by 297 mm, Letter 8.5 in by 11 in
};
constexpr Sheet sheets[] = {{Paper::a4, 210 * mm, 297 * mm}, {Paper::letter, 8.5 * 72, 11 * 72}};

long page_objects(const QByteArray& pdf) {
    static const QRegularExpression page(QStringLiteral("/Type\\s*/Page\\b(?!s)"));
    long count = 0;
    for (auto at = page.globalMatch(QString::fromLatin1(pdf)); at.hasNext(); at.next()) ++count;
    return count;
}

TEST_F(ReportPdf, says_on_each_page_which_of_how_many_it_is) {
    for (const Sheet& sheet : sheets)
        for (const MadeReport& made : {run(), comparison()}) {
            const std::string path = write(made, "report.pdf", sheet.paper);
            const QByteArray pdf = bytes(path);
            EXPECT_TRUE(pdf.startsWith("%PDF-"));
            const QStringList pages = page_texts(path);
            EXPECT_EQ(page_objects(pdf), pages.size());
            EXPECT_GE(pages.size(), 4);
            for (qsizetype n = 0; n < pages.size(); ++n)
                EXPECT_TRUE(pages[n].contains(QStringLiteral("page %1 of %2").arg(n + 1).arg(pages.size())))
                    << n << pages[n].right(200).toStdString();
        }
}

TEST_F(ReportPdf, the_head_of_the_readings_stands_on_every_page_that_they_reach) {
    const QStringList pages = page_texts(write(run(), "report.pdf"));
    static const QRegularExpression reading(QStringLiteral("2027-05-1\\d \\d\\d:\\d\\d .*note \\d+"));
    static const QRegularExpression head(QStringLiteral("time .*gauge .*register .*remark"), QRegularExpression::DotMatchesEverythingOption);
    int with_readings = 0, rows = 0;
    for (const QString& page : pages) {
        const auto first = reading.match(page);
        for (auto at = reading.globalMatch(page); at.hasNext(); at.next()) ++rows;
        if (!first.hasMatch()) continue;
        ++with_readings;
        const auto above = head.match(page);
        EXPECT_TRUE(above.hasMatch() && above.capturedStart() < first.capturedStart()) << page.left(600).toStdString();
    }
    EXPECT_GE(with_readings, 2);
    EXPECT_EQ(rows, 101) << "every reading once";
}

TEST_F(ReportPdf, nothing_sticks_out_of_the_page_or_its_margins) {
    for (const Sheet& sheet : sheets)
        for (const MadeReport& made : {run(), comparison()}) {
            const std::vector<PdfWord> all = words(write(made, "report.pdf", sheet.paper));
            EXPECT_GT(all.size(), 1000u);
            for (const PdfWord& word : all) {
                EXPECT_GE(word.left, 17 * mm) << word.text.toStdString() << " on page " << word.page;
                EXPECT_LE(word.right, sheet.width - 17 * mm) << word.text.toStdString() << " on page " << word.page;
                EXPECT_GE(word.top, 9 * mm) << word.text.toStdString() << " on page " << word.page;
                EXPECT_LE(word.bottom, sheet.height - 9 * mm) << word.text.toStdString() << " on page " << word.page;
            }
        }
}

TEST_F(ReportPdf, an_endless_word_and_a_remark_of_pages_are_broken_and_lose_no_letter) {
    RunRecord record = full_drain();
    record.readings[2].values.remark = std::string(3000, 'w');
    for (int n = 0; n < 4000; ++n) record.readings[4].values.remark += "xyzzy ";
    const ReportSample sample(record);
    ReportOptions options{'.', RecordBuilder::start_ms, "UTC"};
    options.own_affairs = true;
    const std::string path = write(make_run_report(sample.run(), sample.fit(), options), "report.pdf");
    long letters = 0, words_found = 0;
    for (const PdfWord& word : words(path)) {
        EXPECT_LE(word.right, sheets[0].width - 17 * mm) << word.text.toStdString();
        EXPECT_LE(word.bottom, sheets[0].height - 9 * mm) << word.text.toStdString();
        if (word.text == QString(word.text.size(), QLatin1Char('w'))) letters += word.text.size();
        words_found += word.text == QLatin1String("xyzzy") ? 1 : 0;
    }
    EXPECT_EQ(letters, 3000);
    EXPECT_EQ(words_found, 4000);
}

TEST_F(ReportPdf, drawings_are_vectors_and_text_is_text) {
    const QByteArray pdf = bytes(write(comparison(), "report.pdf"));
    EXPECT_FALSE(pdf.contains("/Subtype /Image"));
    const QString text = page_texts(folder / "report.pdf").join(QLatin1Char(' '));
    EXPECT_TRUE(text.contains(QStringLiteral("hours since start"))) << "an axis of a chart";
    EXPECT_TRUE(text.contains(QStringLiteral("rated 1000 Wh"))) << "over a vessel";
}

TEST_F(ReportPdf, a_chapter_heading_never_ends_a_page) {
    for (const MadeReport& made : {run(), comparison()}) {
        const std::string path = write(made, "report.pdf");
        const auto titles = chapters(made.report);
        for (const QString& page : page_texts(path)) {
            QStringList lines = page.split(QLatin1Char('\n'), Qt::SkipEmptyParts);
            ASSERT_GE(lines.size(), 2);
            const std::string last = lines[lines.size() - 2].trimmed().toStdString(); // the foot comes after
            EXPECT_EQ(std::count(titles.begin(), titles.end(), last), 0) << last;
        }
    }
}

TEST_F(ReportPdf, the_last_page_never_holds_a_few_lines_alone) {
    ReportOptions options{'.', RecordBuilder::start_ms, "UTC"};
    int near_the_edge = 0;
    for (int readings = 60; readings < 100; ++readings) {
        const ReportSample sample(full_drain("Alder", 10.0 / readings));
        const QStringList pages = page_texts(write(make_run_report(sample.run(), sample.fit(), options), "report.pdf"));
        const auto lines = pages.back().split(QLatin1Char('\n'), Qt::SkipEmptyParts).size();
        EXPECT_GE(lines, 8) << "with " << readings << " readings:\n" << pages.back().toStdString();
        near_the_edge += lines < 16 ? 1 : 0;
    }
    EXPECT_GE(near_the_edge, 1) << "else the readings say nothing of the edge";
}

TEST_F(ReportPdf, no_line_ends_within_a_value_a_date_or_a_name) {
    const ReportSample sample(full_drain("Alder 2 twin"));
    Report report = make_run_report(sample.run(), sample.fit(), {'.', RecordBuilder::start_ms, "UTC"}).report;
    report.blocks.clear();
    for (int letters = 1; letters < 60; ++letters)
        report.blocks.emplace_back(ReportParagraph{
            {}, std::string(static_cast<std::size_t>(letters), 'x') + " it gave 902.1 ± 9.7 Wh in 4.7 to 13 h on 14 May 2027, says Alder 2 twin"});
    const QString text = page_texts(write({report, {}}, "report.pdf")).join(QLatin1Char('\n'));
    for (const char* whole : {"902.1 ± 9.7 Wh", "4.7 to 13 h", "14 May 2027", "Alder 2 twin"}) {
        const QRegularExpression parted(
            QRegularExpression::escape(QString::fromUtf8(whole)).replace(QLatin1String("\\ "), QStringLiteral("[\\s\\x{A0}]+")));
        int found = 0;
        for (auto at = parted.globalMatch(text); at.hasNext();) {
            const QString match = at.next().captured();
            EXPECT_FALSE(match.contains(QLatin1Char('\n'))) << match.toStdString();
            ++found;
        }
        EXPECT_GE(found, 59) << whole;
    }
}

TEST_F(ReportPdf, a_name_without_a_known_end_is_refused_and_no_file_appears) {
    const MadeReport made = run();
    const QString path = QString::fromStdString(folder / "report.doc");
    const Result<void> written = write_report(made.report, made.pictures, path, {});
    ASSERT_FALSE(written.ok());
    EXPECT_NE(written.error().sentence().find(".pdf"), std::string::npos);
    EXPECT_FALSE(std::filesystem::exists(folder / "report.doc"));
    EXPECT_FALSE(write_report(made.report, made.pictures, QString::fromStdString(folder / "none/report.pdf"), {}).ok());
}

} // namespace
} // namespace ullage::test
