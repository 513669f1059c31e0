// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/manual.h"

#include "base/version.h"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <memory>
#include <string_view>

namespace ullage {

namespace {

/// A command as its options are read, without what runs it.
std::unique_ptr<CLI::App> described(const Command& command) {
    auto app = std::make_unique<CLI::App>(say(command.summary), std::string(command.name));
    (void)command.read(*app);
    return app;
}

std::string option_words(const CLI::Option& option) {
    std::string words;
    for (const std::string& name : option.get_snames()) words += (words.empty() ? "-" : ", -") + name;
    for (const std::string& name : option.get_lnames()) words += (words.empty() ? "--" : ", --") + name;
    return words;
}

/// The words that an option takes, where its help lists them in braces.
std::vector<std::string> choices_of(const CLI::Option& option) {
    const std::string type = option.get_type_name();
    const auto open = type.find('{'), close = type.rfind('}');
    std::vector<std::string> choices;
    if (open == std::string::npos || close == std::string::npos) return choices;
    std::string word;
    for (const char c : type.substr(open + 1, close - open - 1) + ",") {
        if (c != ',') {
            word += c;
            continue;
        }
        const bool plain = std::ranges::all_of(word, [](unsigned char each) { return std::isalnum(each) != 0 || each == '-'; });
        if (!word.empty() && plain) choices.push_back(word);
        word.clear();
    }
    return choices;
}

/// What stands for the value of an option: nothing for a flag.
std::string value_word(const CLI::Option& option) {
    if (option.get_expected_max() == 0) return {};
    const std::string type = option.get_type_name();
    const std::string plain = type.substr(0, type.find(':'));
    return plain.empty() || plain == "TEXT" ? "VALUE" : plain;
}

/// For troff: hyphens stay hyphens, and no line begins as a request.
std::string roff(std::string_view text) {
    std::string escaped;
    bool begins = true;
    for (const char c : text) {
        if (begins && (c == '.' || c == '\'')) escaped += "\\&";
        if (c == '\\') escaped += "\\e";
        else if (c == '-') escaped += "\\-";
        else escaped += c;
        begins = c == '\n';
    }
    return escaped;
}

/// The text with a word of it in this font of troff.
std::string in_font(std::string text, std::string_view word, char font) {
    const std::size_t at = text.find(word);
    return at == std::string::npos ? text : text.replace(at, word.size(), fmt::format("\\f{}{}\\fR", font, word));
}

void write_command(const Command& command, std::string& page) {
    const auto app = described(command);
    std::string synopsis = fmt::format("\\fBullage {}\\fR", roff(command.name)), places, options;
    for (const CLI::Option* option : app->get_options()) {
        const std::string choices = fmt::format("{}", fmt::join(choices_of(*option), ", "));
        std::string help = roff(option->get_description());
        if (!choices.empty() && option->get_description().find(choices_of(*option).front()) == std::string::npos)
            help += (help.empty() ? "" : "; ") + roff(choices);
        if (option->get_positional()) {
            const std::string name = roff(option->get_name(true));
            const std::string many = option->get_expected_max() > 1 ? "..." : "";
            synopsis += option->get_required() ? fmt::format(" \\fI{}\\fR{}", name, many) : fmt::format(" [\\fI{}\\fR{}]", name, many);
            places += fmt::format(".TP\n\\fI{}\\fR\n{}\n", name, help);
            continue;
        }
        if (option == app->get_help_ptr()) continue; // said once, of all commands
        const std::string value = value_word(*option);
        const std::string words = fmt::format("\\fB{}\\fR{}", roff(option_words(*option)), value.empty() ? "" : " \\fI" + roff(value) + "\\fR");
        if (option->get_required()) synopsis += " " + words;
        options += fmt::format(".TP\n{}\n{}{}\n", words, help,
                               option->get_required() ? " " + roff(say(phrase("commands", "(required)")).text()) : std::string());
    }
    page +=
        fmt::format(".SS {}\n{} [\\fIoptions\\fR]\n.PP\n{}.\n{}{}", roff(command.name), synopsis, roff(say(command.summary).text()), places, options);
}

/// One pattern of a shell's `case`: what stands before the cursor, and the words that may follow.
std::string completion_case(const std::string& pattern, const std::vector<std::string>& words) {
    return fmt::format("            {}) words=\"{}\" ;;\n", pattern, fmt::join(words, " "));
}

} // namespace

std::string manual_page(const std::vector<Command>& commands) {
    std::string page = fmt::format(".\\\" SPDX-License-Identifier: GPL-3.0-or-later\n.\\\" Written by `ullage --man-page`.\n"
                                   ".TH ULLAGE 1 \"\" \"ullage {}\" \"{}\"\n.nh\n.ad l\n",
                                   program_version(), roff(say(phrase("commands", "User commands")).text()));
    const auto section = [&page](const Phrase& heading) {
        const std::string words = roff(say(heading).text());
        page += words.find(' ') == std::string::npos ? ".SH " + words + '\n' : ".SH \"" + words + "\"\n";
    };
    const auto text = [&page](const Message& words) { page += roff(words.text()) + '\n'; };
    const auto entry = [&page, &text](std::string_view term, const Message& words) {
        page.append(".TP\n").append(term).append("\n");
        text(words);
    };
    section(phrase("commands", "NAME"));
    page += "ullage \\- ";
    text(say(phrase("commands", "say what a battery storage unit delivers, against what its label and its gauge say")));
    section(phrase("commands", "SYNOPSIS"));
    page += "\\fBullage\\fR [\\fILOGBOOK\\fR]\n.br\n\\fBullage\\fR \\fICOMMAND\\fR [\\fIoptions\\fR]\n";
    section(phrase("commands", "DESCRIPTION"));
    text(say(phrase("commands",
                    "A tester drains a battery storage unit through real loads for many hours and notes what its own gauge and an energy meter "
                    "say. Ullage records these readings, computes the delivered energy and the usable fraction with their uncertainty, finds "
                    "faults of the gauge, and compares units.")));
    page += ".PP\n";
    page += in_font(roff(say(phrase("commands",
                                    "Without a command it opens its window, on the logbook that was open last or on %1. The commands do the same job "
                                    "in text, without a display. Results go to the standard output, problems to the standard error, one line "
                                    "each."),
                             "LOGBOOK")
                             .text()),
                    "LOGBOOK", 'I') +
            '\n';
    section(phrase("commands", "OPTIONS"));
    entry("\\fB\\-h\\fR, \\fB\\-\\-help\\fR", say(phrase("commands", "Say what there is; behind a command what that takes.")));
    entry("\\fB\\-\\-version\\fR", say(phrase("commands", "Say the version.")));
    entry("\\fB\\-\\-man\\-page\\fR", say(phrase("commands", "Write this page.")));
    entry("\\fB\\-\\-bash\\-completion\\fR", say(phrase("commands", "Write the completion of commands and options for bash.")));
    section(phrase("commands", "COMMANDS"));
    for (const Command& command : commands) write_command(command, page);
    section(phrase("commands", "FILES"));
    entry("\\fI*.ullage\\fR",
          say(phrase("commands", "A logbook, an SQLite file with all units, meters, runs, readings, photos and logs. Copy this one file to "
                                 "keep it.")));
    entry("\\fI~/.config/ullage/ullage.ini\\fR", say(phrase("commands", "Settings of the window.")));
    section(phrase("commands", "ENVIRONMENT"));
    page += ".TP\n\\fBULLAGE_SOURCE_PASSWORD\\fR\n" +
            in_font(roff(say(phrase("commands", "The password of a live meter for %1, in place of asking."), "watch").text()), "watch", 'B') + '\n';
    section(phrase("commands", "EXIT STATUS"));
    entry("0", say(phrase("commands", "It was done.")));
    entry("1", say(phrase("commands", "Bad input, or a result that could not be written.")));
    entry("2", say(phrase("commands", "Wrong usage.")));
    section(phrase("commands", "CAUTION"));
    text(say(phrase("commands",
                    "Mains voltage and charged batteries can kill and burn. Results of this program are no safety certification. Local codes and "
                    "licensed practice come first.")));
    return page;
}

std::string bash_completion(const std::vector<Command>& commands) {
    std::string names, cases;
    for (const Command& command : commands) {
        names += std::string(command.name) + ' ';
        const auto app = described(command);
        std::vector<std::string> options;
        std::string of_command;
        for (const CLI::Option* option : app->get_options()) {
            if (option->get_positional()) continue;
            for (const std::string& name : option->get_lnames()) options.push_back("--" + name);
            if (const auto choices = choices_of(*option); !choices.empty() && !option->get_lnames().empty())
                of_command += completion_case(fmt::format("\"{} --{}\"", command.name, option->get_lnames().front()), choices);
        }
        cases += of_command + completion_case(fmt::format("\"{} \"*", command.name), options);
    }
    return fmt::format("# SPDX-License-Identifier: GPL-3.0-or-later\n"
                       "# Completion of ullage for bash, written by `ullage --bash-completion`.\n"
                       "_ullage() {{\n"
                       "    local current=${{COMP_WORDS[COMP_CWORD]}} before=${{COMP_WORDS[COMP_CWORD-1]}} command=${{COMP_WORDS[1]}} words=\n"
                       "    if [ \"$COMP_CWORD\" = 1 ]; then\n"
                       "        words=\"{}--help --version\"\n"
                       "    else\n"
                       "        case \"$command $before\" in\n"
                       "{}"
                       "        esac\n"
                       "    fi\n"
                       "    mapfile -t COMPREPLY < <(compgen -W \"$words\" -- \"$current\")\n"
                       "    case $current in -*) ;; *) mapfile -t -O \"${{#COMPREPLY[@]}}\" COMPREPLY < <(compgen -f -- \"$current\") ;; esac\n"
                       "}}\n"
                       "complete -o filenames -F _ullage ullage\n",
                       names, cases);
}

} // namespace ullage
