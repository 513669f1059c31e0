// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/command_parts.h"

#include "cli/text/commands.h"
#include "formats/text/table_unicode.h"

#include <ostream>

namespace ullage {

int refuse(std::ostream& err, const Error& error) {
    err << "ullage: " << one_line(error.sentence()) << '\n';
    return exit_bad_input;
}

void tell(std::ostream& err, const std::vector<Message>& notices) {
    for (const Message& notice : notices) err << "ullage: " << line_of(notice);
}

std::string line_of(const Message& words) { return one_line(words.text()) + '\n'; }

Message say_alternatives(const std::vector<Message>& choices) {
    Message all;
    for (const Message& choice : choices) all = all.empty() ? choice : say(phrase("commands", "%1 or %2"), all, choice);
    return all;
}

Message say_names(const std::vector<std::string>& names) {
    std::vector<Message> quoted;
    for (const std::string& name : names) quoted.emplace_back('`' + name + '`');
    return say_joined(quoted, ", ");
}

Error with_done(Error error, const Message& but) {
    if (but.empty()) return error;
    error.remedy = error.remedy.empty() ? but : say_joined({error.remedy, but}, "; ");
    return error;
}

int print(const std::string& text, std::ostream& out, std::ostream& err, const Message& but) {
    out << text << std::flush;
    if (out) return exit_good;
    const Error lost{Failure::io, say(phrase("commands", "the result could not be written")), say(phrase("commands", "standard output")),
                     say(phrase("commands", "check where it goes to"))};
    return refuse(err, with_done(lost, but));
}

} // namespace ullage
