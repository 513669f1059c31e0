// SPDX-License-Identifier: GPL-3.0-or-later
// The program as shipped in the language that is asked for.
#include "shipped/shipped_fixture.h"

#include <nlohmann/json.hpp>

namespace ullage::test {
namespace {

class ShippedLanguages : public Shipped {};

TEST_F(ShippedLanguages, speaks_the_language_that_is_asked_for_and_leaves_what_machines_read_as_it_is) {
    const std::string english = good({"compare", logbook()}).out, json = good({"compare", logbook(), "--format", "json"}).out;
    struct {
        const char *code, *usable;
    } const spoken[] = {{"de", "nutzbarer Anteil"}, {"fr", "fraction utile"}, {"es", "fracción útil"}};
    for (const auto& each : spoken) {
        const std::string said = good({"--language", each.code, "compare", logbook()}).out;
        EXPECT_TRUE(contains(said, each.usable)) << said;
        EXPECT_FALSE(contains(said, "usable fraction")) << said;
        EXPECT_EQ(good({"compare", logbook(), "--format", "json", std::string("--language=") + each.code}).out, json);
        const std::string report = written({"report", logbook(), "--compare", "--language", each.code}, std::string("report-") + each.code + ".html");
        EXPECT_TRUE(contains(report, each.usable)) << each.code;
        EXPECT_FALSE(contains(report, "usable fraction")) << each.code;
    }
    EXPECT_TRUE(contains(english, "usable fraction"));
}

TEST_F(ShippedLanguages, says_which_languages_there_are_where_another_is_asked_for) {
    const Ended refused = run_program(home(), {"compare", logbook(), "--language", "tlh"});
    EXPECT_EQ(refused.code, 2);
    EXPECT_TRUE(contains(refused.err, "tlh") && contains(refused.err, "en, de, fr or es")) << refused.err;
}

TEST_F(ShippedLanguages, says_that_the_code_of_a_language_is_missing_and_which_there_are) {
    for (const std::vector<std::string>& words : {std::vector<std::string>{"compare", logbook(), "--language"},
                                                  {"compare", logbook(), "--language="},
                                                  {"--language", "", "compare", logbook()},
                                                  {"--language"}}) {
        const Ended refused = run_program(home(), words);
        EXPECT_EQ(refused.code, 2);
        EXPECT_EQ(refused.out, "");
        EXPECT_EQ(refused.err,
                  "ullage: the code of a language is missing behind `--language`; write en, de, fr or es there, as in `--language es`\n");
    }
}

} // namespace
} // namespace ullage::test
