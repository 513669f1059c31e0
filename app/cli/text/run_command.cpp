// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/commands.h"

#include "base/version.h"
#include "cli/text/command_options.h"
#include "cli/text/command_parts.h"
#include "cli/text/manual.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <memory>
#include <optional>
#include <ostream>
#include <utility>

namespace ullage {

bool names_command(std::string_view first_argument, const std::vector<Command>& commands) {
    constexpr std::string_view of_the_program[] = {"--version", "--help", "-h", "--man-page", "--bash-completion"};
    return std::ranges::count(of_the_program, first_argument) > 0 || std::ranges::count(commands, first_argument, &Command::name) > 0;
}

namespace {

/// What stands before and behind `middle`; nothing where it does not stand there.
std::optional<std::pair<std::string, std::string>> parted(std::string_view text, std::string_view middle) {
    const std::size_t at = text.find(middle);
    if (at == std::string_view::npos) return std::nullopt;
    return std::pair(std::string(text.substr(0, at)), std::string(text.substr(at + middle.size())));
}

/// What the library says of wrong words, which it words in English, as far as the options here can cause it.
Message usage_words(const std::string& said) {
    if (said == "A subcommand is required") return say(phrase("commands", "A subcommand is required"));
    if (const auto parts = parted(said, " is required"); parts && parts->second.empty())
        return say(phrase("commands", "%1 is required"), parts->first);
    if (const auto parts = parted(said, "The following argument was not expected: "); parts && parts->first.empty())
        return say(phrase("commands", "The following argument was not expected: %1"), parts->second);
    if (const auto parts = parted(said, "The following arguments were not expected: "); parts && parts->first.empty())
        return say(phrase("commands", "The following arguments were not expected: %1"), parts->second);
    if (const auto parts = parted(said, "Could not convert: "); parts && parts->first.empty())
        return say(phrase("commands", "Could not convert: %1"), parts->second);
    if (const auto parts = parted(said, " excludes ")) return say(phrase("commands", "%1 excludes %2"), parts->first, parts->second);
    if (const auto parts = parted(said, " requires ")) return say(phrase("commands", "%1 requires %2"), parts->first, parts->second);
    if (const auto parts = parted(said, " not in {")) return say(phrase("commands", "%1 not in %2"), parts->first, '{' + parts->second);
    if (const auto parts = parted(said, ": "), wanted = parts ? parted(parts->second, " required ") : std::nullopt;
        wanted && said.ends_with(" missing"))
        return say(phrase("commands", "%1: %2 required %3 missing"), parts->first, wanted->first,
                   wanted->second.substr(0, wanted->second.size() - std::string_view(" missing").size()));
    return said;
}

/// The words of the library in a help.
void say_labels(CLI::App& app) {
    const auto formatter = std::make_shared<CLI::Formatter>();
    formatter->label("Usage", say(phrase("commands", "Usage")));
    formatter->label("OPTIONS", say(phrase("commands", "OPTIONS")));
    formatter->label("SUBCOMMAND", say(phrase("commands", "SUBCOMMAND")));
    formatter->label("Positionals", say(phrase("commands", "Positionals")));
    formatter->label("REQUIRED", say(phrase("commands", "REQUIRED")));
    formatter->label("Needs", say(phrase("commands", "Needs")));
    formatter->label("Excludes", say(phrase("commands", "Excludes")));
    app.formatter(formatter);
    app.option_defaults()->group(say(phrase("commands", "Options")));
    app.set_help_flag("-h,--help", say(phrase("commands", "Print this help message and exit")));
    app.set_version_flag("--version", "ullage " + std::string(program_version()),
                         say(phrase("commands", "Display program version information and exit")));
    app.footer(
        say(phrase("commands", "With --language CODE (en, de, fr or es) every command speaks another language than that of the environment.")));
}

} // namespace

int run_command(std::span<const std::string> args, const std::vector<Command>& commands, std::ostream& out, std::ostream& err) {
    if (args.size() == 1 && args.front() == "--man-page") return print(manual_page(commands), out, err);
    if (args.size() == 1 && args.front() == "--bash-completion") return print(bash_completion(commands), out, err);
    CLI::App app(say(phrase("commands", "Ullage: what a storage unit delivers, against what its label and its gauge say")), "ullage");
    say_labels(app);
    app.require_subcommand(1);
    std::vector<std::pair<CLI::App*, Command::Run>> runs;
    for (const Command& command : commands) {
        CLI::App* added = app.add_subcommand(std::string(command.name), say(command.summary));
        added->group(say(phrase("commands", "Subcommands")));
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
        const std::string help = asked.empty() ? "ullage --help" : "ullage " + asked.front()->get_name() + " --help";
        tell(err, {say(phrase("commands", "%1; see %2"), usage_words(error.what()), help)});
        return exit_usage;
    }
    return std::ranges::find_if(runs, [](const auto& each) { return each.first->parsed(); })->second(out, err);
}

} // namespace ullage
