// SPDX-License-Identifier: GPL-3.0-or-later
// Tables and drawings of a report as files of their own.
#include "report_fixture.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QImage>

namespace ullage::test {
namespace {

using ReportFiles = ReportTest;

ReportLook with_files() { return {Paper::a4, '.', {}, true}; }

TEST_F(ReportFiles, each_table_is_a_page_and_each_drawing_a_picture_in_the_folder_beside_it) {
    const MadeReport made = comparison();
    const QString path = QString::fromStdString(folder / "all.pdf");
    ASSERT_TRUE(write_report(made.report, made.pictures, path, with_files()).ok());
    const QDir into(report_files_folder(path));
    EXPECT_EQ(into.dirName(), QStringLiteral("all-files"));
    qsizetype tables = 0, drawings = 0;
    for (const ReportBlock* block : shown_blocks(made.report, made.pictures)) {
        tables += std::holds_alternative<ReportTable>(*block) ? 1 : 0;
        drawings += std::holds_alternative<ReportPicture>(*block) ? 1 : 0;
    }
    EXPECT_GE(tables, 3);
    EXPECT_GE(drawings, 3);
    const QStringList pages = into.entryList({QStringLiteral("*.html")}), pictures = into.entryList({QStringLiteral("*.png")});
    EXPECT_EQ(pages.size(), tables);
    EXPECT_EQ(pictures.size(), drawings);
    EXPECT_GE(QImage(into.filePath(pictures.front())).width(), 1000);
    for (const QString& page : pages) EXPECT_EQ(run_command("xmllint --noout '" + into.filePath(page).toStdString() + "'").text, "");
    // Once more: its own files are replaced.
    EXPECT_TRUE(write_report(made.report, made.pictures, path, with_files(), {Replacing::Consent::ordinary, {}}).ok());
    EXPECT_EQ(into.entryList({QStringLiteral("*.html")}), pages);
}

TEST_F(ReportFiles, a_file_of_somebody_elses_is_not_replaced_and_the_report_stands) {
    const MadeReport made = comparison();
    const QString path = QString::fromStdString(folder / "all.html");
    ASSERT_TRUE(write_report(made.report, made.pictures, path, with_files()).ok());
    const QDir into(report_files_folder(path));
    QFile foreign(into.filePath(into.entryList({QStringLiteral("*.html")}).front()));
    ASSERT_TRUE(foreign.open(QFile::WriteOnly));
    foreign.write("somebody's own words");
    foreign.close();
    const Result<void> written = write_report(made.report, made.pictures, path, with_files(), {Replacing::Consent::ordinary, {}});
    ASSERT_FALSE(written.ok());
    EXPECT_NE(written.error().sentence().find("the report is written, but not all files beside it"), std::string::npos) << written.error().sentence();
    EXPECT_EQ(bytes(foreign.fileName().toStdString()), "somebody's own words");
    EXPECT_TRUE(QFileInfo::exists(path));
}

} // namespace
} // namespace ullage::test
