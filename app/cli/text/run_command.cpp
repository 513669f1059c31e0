// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/commands.h"

#include "base/version.h"
#include "cli/text/command_options.h"
#include "cli/text/command_parts.h"
#include "cli/text/manual.h"
#include "formats/text/table_unicode.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <ostream>
#include <utility>

namespace ullage {

bool names_command(std::string_view first_argument, const std::vector<Command>& commands) {
    constexpr std::string_view of_the_program[] = {"--version", "--help", "-h", "--man-page", "--bash-completion"};
    return std::ranges::count(of_the_program, first_argument) > 0 || std::ranges::count(commands, first_argument, &Command::name) > 0;
}

int run_command(std::span<const std::string> args, const std::vector<Command>& commands, std::ostream& out, std::ostream& err) {
    if (args.size() == 1 && args.front() == "--man-page") return print(manual_page(commands), out, err);
    if (args.size() == 1 && args.front() == "--bash-completion") return print(bash_completion(commands), out, err);
    CLI::App app("Ullage: what a storage unit delivers, against what its label and its gauge say", "ullage");
    app.set_version_flag("--version", "ullage " + std::string(program_version()));
    app.require_subcommand(1);
    std::vector<std::pair<CLI::App*, Command::Run>> runs;
    for (const Command& command : commands) {
        CLI::App* added = app.add_subcommand(std::string(command.name), std::string(command.summary));
        runs.emplace_back(added, command.read(*added));
    }
    check_numbers(app);
    try {
        app.parse(std::vector<std::string>(args.rbegin(), args.rend())); // the library takes them from the back
    } catch (const CLI::CallForHelp&) {
        const auto asked = app.get_subcommands();
        return print(asked.empty() ? app.help() : asked.front()->help(), out, err);
    } catch (const CLI::CallForVersion& version) {
        return print(std::string(version.what()) + '\n', out, err);
    } catch (const CLI::ParseError& error) {
        const auto asked = app.get_subcommands();
        err << "ullage: " << one_line(error.what()) << "; see ullage " << (asked.empty() ? std::string() : asked.front()->get_name() + ' ')
            << "--help\n";
        return exit_usage;
    }
    return std::ranges::find_if(runs, [](const auto& each) { return each.first->parsed(); })->second(out, err);
}

} // namespace ullage
