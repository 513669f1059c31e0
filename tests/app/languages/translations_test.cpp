// SPDX-License-Identifier: GPL-3.0-or-later
// The files of translations against the source and against one another.
#include "support/source_dir.h"
#include "support/temp_folder.h"

#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QXmlStreamReader>
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

namespace ullage::test {
namespace {

const QString letter_of_menu = QStringLiteral("&[^& ]");
constexpr const char* translated[] = {"de", "fr", "es"};

struct Entry {
    std::vector<QString> forms; ///< one, or one for each form of plural
    bool finished = true;
};

/// "context / source / disambiguation" to what it is in a language.
using Entries = std::map<QString, std::pair<QString, Entry>>;

Entries entries_of(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    QXmlStreamReader xml(&file);
    Entries entries;
    QString context, source, comment;
    Entry entry;
    while (!xml.atEnd()) {
        xml.readNext();
        const auto name = xml.name();
        if (xml.isStartElement()) {
            if (name == QLatin1String("name")) context = xml.readElementText();
            else if (name == QLatin1String("message")) source.clear(), comment.clear(), entry = {};
            else if (name == QLatin1String("source")) source = xml.readElementText();
            else if (name == QLatin1String("comment")) comment = xml.readElementText();
            else if (name == QLatin1String("numerusform")) entry.forms.push_back(xml.readElementText());
            else if (name == QLatin1String("translation")) {
                entry.finished = !xml.attributes().hasAttribute(QStringLiteral("type"));
                xml.readNext();
                if (xml.isCharacters() && !xml.text().trimmed().isEmpty()) entry.forms.push_back(xml.text().toString());
                else if (xml.isStartElement() && xml.name() == QLatin1String("numerusform")) entry.forms.push_back(xml.readElementText());
            }
        }
        if (xml.isEndElement() && name == QLatin1String("message")) entries[context + " / " + source + " / " + comment] = {source, entry};
    }
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
    return entries;
}

QString file_of(const QString& folder, const char* language) {
    return QDir(folder).filePath(QStringLiteral("ullage_%1.ts").arg(QLatin1String(language)));
}

/// A folder of the sources.
QString in_source(const char* folder) { return QString::fromStdString((source_dir() / folder).string()); }

QString committed() { return in_source("resources/languages"); }

/// Each of what `pattern` finds, once, in order.
QStringList found_in(const QString& text, const char* pattern) {
    QStringList found;
    for (auto each = QRegularExpression(QLatin1String(pattern)).globalMatch(text); each.hasNext();) found << each.next().captured();
    found.removeDuplicates();
    found.sort();
    return found;
}

class Translation : public testing::TestWithParam<const char*> {};

} // namespace

TEST_P(Translation, has_each_text_of_the_source_and_none_that_is_gone) {
    const TempFolder folder;
    QProcess update;
    update.start(QStringLiteral("sh"), {committed() + "/update.sh", "--into", QString::fromStdString(folder.path().string())});
    ASSERT_TRUE(update.waitForFinished(120'000));
    ASSERT_EQ(update.exitCode(), 0) << update.readAllStandardError().toStdString();
    const Entries here = entries_of(file_of(committed(), GetParam())),
                  fresh = entries_of(file_of(QString::fromStdString(folder.path().string()), GetParam()));
    ASSERT_GT(fresh.size(), 1000u);
    for (const auto& [key, entry] : fresh) EXPECT_TRUE(here.contains(key)) << "new, run resources/languages/update.sh: " << key.toStdString();
    for (const auto& [key, entry] : here) EXPECT_TRUE(fresh.contains(key)) << "gone, run resources/languages/update.sh: " << key.toStdString();
}

TEST_P(Translation, is_complete_in_every_form_of_plural) {
    for (const auto& [key, entry] : entries_of(file_of(committed(), GetParam()))) {
        EXPECT_TRUE(entry.second.finished && !entry.second.forms.empty()) << "untranslated: " << key.toStdString();
        if (entry.first.contains("%n")) {
            EXPECT_EQ(entry.second.forms.size(), 2u) << key.toStdString();
        }
        for (const QString& form : entry.second.forms) EXPECT_FALSE(form.trimmed().isEmpty()) << key.toStdString();
    }
}

TEST_P(Translation, keeps_places_tags_lines_and_blanks) {
    for (const auto& [key, entry] : entries_of(file_of(committed(), GetParam())))
        for (const QString& form : entry.second.forms) {
            const QString& source = entry.first;
            EXPECT_EQ(found_in(form, "%L?[1-9]"), found_in(source, "%L?[1-9]")) << key.toStdString();
            EXPECT_EQ(found_in(form, "</?[a-z]+[^>]*>"), found_in(source, "</?[a-z]+[^>]*>")) << key.toStdString();
            EXPECT_EQ(form.count('\n'), source.count('\n')) << key.toStdString();
            EXPECT_EQ(form.startsWith(' '), source.startsWith(' ')) << key.toStdString();
            EXPECT_EQ(form.endsWith(' '), source.endsWith(' ')) << key.toStdString();
            EXPECT_EQ(form.endsWith(u'…'), source.endsWith(u'…')) << key.toStdString();
            EXPECT_EQ(form.contains(QRegularExpression(letter_of_menu)), source.contains(QRegularExpression(letter_of_menu))) << key.toStdString();
        }
}

INSTANTIATE_TEST_SUITE_P(Each, Translation, testing::ValuesIn(translated), [](const auto& each) { return std::string(each.param); });

TEST(HelpPages, are_there_in_every_language_with_the_same_parts_and_the_same_code) {
    const QString english = in_source("resources/help");
    const auto parts = [](const QString& path) {
        QFile file(path);
        EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
        const QString text = QString::fromUtf8(file.readAll());
        QStringList heads;
        for (const QString& line : text.split('\n'))
            if (line.startsWith('#')) heads << line.section(' ', 0, 0);
        QStringList fences = text.split(QStringLiteral("```"));
        QString code;
        for (qsizetype i = 1; i < fences.size(); i += 2) code += fences[i];
        return std::tuple(heads, code, text.count(QRegularExpression("^\\|", QRegularExpression::MultilineOption)));
    };
    for (const char* language : translated)
        for (const char* page : {"commands.md", "figures.md", "formats.md", "import.md", "json.md", "live.md", "method.md"}) {
            const QString there = english + '/' + language + '/' + page;
            EXPECT_EQ(parts(there), parts(english + '/' + page)) << there.toStdString();
        }
}

} // namespace ullage::test
