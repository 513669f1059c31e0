// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/sheets/pv_sheet_text.h"
#include "formats/text/sheet_keys.h"
#include "joining/inside/field_words.h"
#include "joining/join_table.h"
#include "support/marked_language.h"
#include "two_logbooks.h"

namespace ullage {
namespace {

using namespace test;

TEST(JoinLanguage, has_words_in_the_language_in_use_for_every_key_in_which_records_may_differ) {
    const SpeakingIn marked(marked_language);
    for (const SheetKey& key : sheet_keys()) EXPECT_TRUE(is_marked(joining::say_field(key.name).text())) << key.name;
    for (const PvKey& key : pv_keys()) EXPECT_TRUE(is_marked(joining::say_field(key.name).text())) << key.name;
}

TEST(JoinLanguage, says_the_program_s_words_and_numbers_in_the_language_in_use_and_what_a_person_wrote_as_it_is) {
    TwoLogbooks two;
    ullage::Run run = two.run;
    run.kind = RunKind::standby;
    run.started_full = false;
    run.ambient_c = 20.5;
    run.load = "2.5 kettles";
    take(two.there->update(run));
    const SpeakingIn marked(marked_language);
    const JoinPlan plan = take(plan_join(*two.here, *two.there));
    std::vector<std::string> there;
    for (const JoinField& field : plan.differences.at(0).fields) there.push_back(field.there.text());
    EXPECT_EQ(there, (std::vector<std::string>{"§standby", "§no", "2.5 kettles", "20,5"}));
    const Table table = join_table(plan, {}, say(phrase("joining", "Joining")));
    EXPECT_TRUE(is_marked(std::get<Message>(table.rows.at(0).at(0)).text()));
    for (const TableColumn& column : table.columns) EXPECT_TRUE(is_marked(column.title.text())) << column.key;
}

} // namespace
} // namespace ullage
