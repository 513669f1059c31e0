// SPDX-License-Identifier: GPL-3.0-or-later
// The worked example that help tells, in the program and in resources/help, is what the program works out.
#include "cli/text/commands.h"
#include "document/sample_logbook.h"
#include "support/source_dir.h"
#include "window/example_page.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QRegularExpression>
#include <QTextDocument>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <sstream>

namespace ullage::test {
namespace {

std::string file_text(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

/// Lines joined, so that a text may be wrapped anywhere.
std::string on_one_line(const std::string& text) { return QString::fromStdString(text).simplified().toStdString(); }

WorkedExample example() {
    auto records = sample_runs();
    EXPECT_TRUE(records.ok());
    auto made = worked_example(records.value());
    EXPECT_TRUE(made.ok());
    return std::move(made.value());
}

std::string printed(std::vector<std::string> args) {
    std::ostringstream out, err;
    args.insert(args.begin(), {"compare", (source_dir() / "sample-data").string()});
    EXPECT_EQ(run_command(args, text_commands(), out, err), exit_good) << err.str();
    return out.str();
}

TEST(WorkedExample, the_page_in_the_repository_tells_it_word_for_word) {
    const std::string page = on_one_line(file_text(source_dir() / "resources/help/example.md"));
    for (const ExampleStep& step : example().steps) {
        EXPECT_NE(page.find(step.title), std::string::npos) << step.title;
        for (const std::string& sentence : step.sentences) EXPECT_NE(page.find(on_one_line(sentence)), std::string::npos) << sentence;
    }
}

TEST(WorkedExample, its_figures_are_those_of_the_compare_command) {
    const WorkedExample made = example();
    const std::string tested = printed({}), pairs = printed({"--pairs"}), moved = printed({"--at-load", "120"}), drains = printed({"--every-drain"}),
                      pairs_moved = printed({"--pairs", "--at-load", "120"}),
                      close = printed({"--pairs", "--at-load", "180"}) + printed({"--at-load", "180"});
    const std::string all = tested + pairs + moved + drains + pairs_moved + close;
    static const QRegularExpression figure(QStringLiteral("(?:\u2212|-)?[0-9.]*[0-9] ± [0-9.]*[0-9]"));
    int held = 0;
    for (const ExampleStep& step : made.steps)
        for (const std::string& sentence : step.sentences)
            for (auto each = figure.globalMatch(QString::fromStdString(sentence)); each.hasNext(); ++held) {
                const QString text = each.next().captured().replace(QChar(0x2212), QLatin1Char('-'));
                EXPECT_NE(all.find(text.toStdString()), std::string::npos) << text.toStdString() << " in " << sentence;
            }
    EXPECT_GE(held, 12);
}

TEST(WorkedExample, shows_a_changed_order_and_pairs_resolved_and_not_resolved) {
    const WorkedExample made = example();
    std::string all;
    for (const ExampleStep& step : made.steps)
        for (const std::string& sentence : step.sentences) all += sentence + '\n';
    EXPECT_NE(all.find("it is the other way round"), std::string::npos) << all;
    EXPECT_NE(all.find("so the two are clearly different"), std::string::npos) << all;
    EXPECT_NE(all.find("too close to call with these meters"), std::string::npos) << all;
    EXPECT_NE(all.find("cannot be converted and stays as tested"), std::string::npos) << all;
}

TEST(WorkedExample, the_slow_drain_lost_about_what_the_no_load_draw_took) {
    // Delivered = energy before own consumption − no-load draw × hours − a small quadratic loss; the simulation's no-load draw is 14.0 W
    // (sample-data/README.md).
    const WorkedExample made = example();
    const ComparisonRow *fast = nullptr, *slow = nullptr;
    for (const ComparisonRow& row : made.drains.rows) {
        if (row.unit.name != "Osk 1200") continue;
        if (row.run_title.text().find("311 W") != std::string::npos) fast = &row;
        if (row.run_title.text().find("64 W") != std::string::npos) slow = &row;
    }
    ASSERT_TRUE(fast && slow);
    const double lost_wh = *fast->delivered_wh.value - *slow->delivered_wh.value, longer_h = *slow->duration_h.value - *fast->duration_h.value;
    EXPECT_NEAR(lost_wh, 14.0 * longer_h, 10); // two registers, each within some 5 Wh
}

TEST(WorkedExample, the_page_of_help_holds_sentences_and_drawings_that_can_be_decoded) {
    const QString html = worked_example_html(400);
    QTextDocument page;
    page.setHtml(html);
    const std::string shown = page.toPlainText().simplified().toStdString();
    const WorkedExample made = example();
    int drawn = 0;
    for (const ExampleStep& step : made.steps) {
        for (const std::string& sentence : step.sentences) EXPECT_NE(shown.find(on_one_line(sentence)), std::string::npos) << sentence;
        drawn += step.picture.empty() ? 0 : 1;
    }
    static const QRegularExpression image(QStringLiteral("base64,([^']+)'"));
    int found = 0;
    for (auto each = image.globalMatch(html); each.hasNext(); ++found)
        EXPECT_EQ(QImage::fromData(QByteArray::fromBase64(each.next().captured(1).toLatin1())).size(), QSize(800, 400));
    EXPECT_EQ(found, drawn);
    EXPECT_EQ(drawn, 3);
}

TEST(WorkedExample, the_pictures_of_the_page_in_the_repository_are_there) {
    const std::filesystem::path folder = source_dir() / "resources/help";
    const QString text = QString::fromStdString(file_text(folder / "example.md"));
    static const QRegularExpression link(QStringLiteral("!\\[[^\\]]+\\]\\(([^)]+)\\)"));
    int found = 0;
    for (auto each = link.globalMatch(text); each.hasNext(); ++found) {
        const std::filesystem::path path = folder / each.next().captured(1).toStdString();
        EXPECT_FALSE(QImage(QString::fromStdString(path.string())).isNull()) << path;
    }
    EXPECT_EQ(found, 3);
}

TEST(WorkedExample, without_its_units_it_says_what_is_missing) {
    const auto made = worked_example({});
    ASSERT_FALSE(made.ok());
    EXPECT_EQ(made.error().failure, Failure::not_found);
}

} // namespace
} // namespace ullage::test
