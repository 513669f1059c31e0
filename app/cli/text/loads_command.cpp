// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/clock.h"
#include "cli/text/command_parts.h"
#include "cli/text/commands.h"
#include "cli/text/load_lists_source.h"
#include "cli/text/opened_logbook.h"
#include "formats/results/load_list_table.h"
#include "formats/sheets/load_list_file.h"
#include "store/logbook.h"

#include <algorithm>
#include <ostream>

namespace ullage {

namespace {

Result<Message> import_list(Logbook& logbook, const std::string& path) {
    const Result<LoadList> list = load_list_of_file(path);
    if (!list) return list.error();
    const Result<std::vector<LoadList>> known = logbook.load_lists();
    if (!known) return known.error();
    for (const LoadList& other : known.value())
        if (other.name == list.value().name && other.appliances == list.value().appliances)
            return say(phrase("commands", "%1: load list %2 is in the logbook already, left out"), path, other.name);
    const Result<LoadList> added = logbook.add(list.value());
    if (!added) {
        Error error = added.error();
        error.where = path;
        return error;
    }
    return say_count(list.value().appliances.size(), phrases("commands", "%1: load list %2 with %n lines", "%1: load list %2 with %n line"), path,
                     list.value().name);
}

} // namespace

int import_loads_command(const ImportLoadsArguments& arguments, std::ostream& out, std::ostream& err) {
    const SystemClock clock;
    std::vector<Message> notices;
    Result<Logbook> logbook = opened_or_made(arguments.logbook, clock, notices);
    if (!logbook) return refuse(err, logbook.error());
    tell(err, notices);
    int code = exit_good;
    Message but;
    for (const std::string& file : arguments.files) {
        const Result<Message> done = import_list(logbook.value(), file);
        if (!done) {
            code = refuse(err, done.error());
            continue;
        }
        out << line_of(done.value()) << std::flush;
        but = say(phrase("commands", "what could be imported is in the logbook: %1"), arguments.logbook);
    }
    const int printed = print({}, out, err, but);
    return code == exit_good ? printed : code;
}

int loads_command(const LoadsArguments& arguments, std::ostream& out, std::ostream& err) {
    if (arguments.file.empty() == arguments.logbook.empty()) {
        (void)refuse(err, {Failure::bad_input, say(phrase("commands", "name a load list (.csv) or a logbook, one of the two")), "loads",
                           say(phrase("commands", "see ullage loads --help"))});
        return exit_usage;
    }
    const Result<TableFormat> format = asked_format(arguments.output);
    if (!format) {
        (void)refuse(err, format.error());
        return exit_usage;
    }
    const std::vector<std::string> inputs{arguments.file, arguments.logbook};
    if (!arguments.file.empty()) {
        const Result<LoadList> list = load_list_of_file(arguments.file);
        if (!list) return refuse(err, list.error());
        return put_table(load_list_table(list.value()), format.value(), arguments.output, inputs, out, err);
    }
    std::vector<Message> notices;
    const Result<std::vector<LoadList>> lists = load_lists_of_logbook(arguments.logbook, notices);
    if (!lists) return refuse(err, lists.error());
    tell(err, notices);
    if (!arguments.list.empty()) {
        const Result<LoadList> list = load_list_named(lists.value(), arguments.list, arguments.logbook);
        if (!list) return refuse(err, list.error());
        if (!arguments.sheet) return put_table(load_list_table(list.value()), format.value(), arguments.output, inputs, out, err);
        return put_text(write_load_list(list.value()), arguments.output, inputs, out, err);
    }
    return put_table(load_lists_table(lists.value()), format.value(), arguments.output, inputs, out, err);
}

} // namespace ullage
