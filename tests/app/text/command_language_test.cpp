// SPDX-License-Identifier: GPL-3.0-or-later
// Commands in a language that is not English: names and options stay, what is said of them is translated.
#include "cli/text/manual.h"
#include "command_fixture.h"
#include "support/marked_language.h"

namespace ullage::test {
namespace {

using CommandLanguage = Commands;

bool holds(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

TEST_F(CommandLanguage, help_says_what_options_do_in_the_language_and_keeps_their_names) {
    const SpeakingIn speaking(marked_language);
    const std::string help = run({"compare", "--help"}).out;
    for (const char* part : {"--at-load", "LOGBOOK", "§a row for each drain", "§common load", "§Usage", "§Print this help message", "§Options:"})
        EXPECT_TRUE(holds(help, part)) << part << '\n' << help;
    for (const Command& command : text_commands()) {
        EXPECT_TRUE(holds(run({"--help"}).out, std::string(command.name)));
        EXPECT_TRUE(holds(on_one_line(run({"--help"}).out), '\xC2' + std::string("\xA7") + on_one_line(command.summary.english))) << command.name;
    }
}

TEST_F(CommandLanguage, the_manual_page_is_in_it_and_the_completion_is_the_same) {
    const std::string completion = bash_completion(text_commands());
    const SpeakingIn speaking(marked_language);
    const std::string page = manual_page(text_commands());
    for (const char* part : {".SH §NAME\n", ".SH \"§EXIT STATUS\"\n", "§Compare the units", "\\fB\\-\\-every\\-drain\\fR", "\\fILOGBOOK\\fR"})
        EXPECT_TRUE(holds(page, part)) << part << '\n' << page;
    EXPECT_EQ(bash_completion(text_commands()), completion);
}

TEST_F(CommandLanguage, errors_are_said_in_it) {
    const SpeakingIn speaking(marked_language);
    EXPECT_TRUE(holds(run({"analyse"}).err, "§LOGBOOK is required")) << run({"analyse"}).err;
    EXPECT_TRUE(holds(run({"compare", "a", "--wrong"}).err, "§The following argument was not expected: --wrong"))
        << run({"compare", "a", "--wrong"}).err;
    EXPECT_TRUE(holds(run({"compare", "a", "--at-load", "0"}).err, "§`0` is no number above 0")) << run({"compare", "a", "--at-load", "0"}).err;
    EXPECT_TRUE(holds(run({"compare", "a", "--format", "xlsx"}).err, "§xlsx is no text for a terminal"));
}

TEST_F(CommandLanguage, text_is_in_it_and_json_is_not) {
    const std::string sheet = written("drain.csv", drain_sheet());
    const SpeakingIn speaking(marked_language);
    EXPECT_FALSE(holds(run({"analyse", sheet, "--format", "json"}).out, MarkedLanguage::mark));
    const std::string text = run({"analyse", sheet}).out;
    for (const char* part : {"§ended: ", "§Where the energy went", "§Uncertainty of the delivered energy", "§Drains used"})
        EXPECT_TRUE(holds(text, part)) << part << '\n' << text;
}

} // namespace
} // namespace ullage::test
