// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/command_options.h"

#include "base/number.h"

#include <cmath>
#include <cstdlib>
#include <utility>

namespace ullage {

namespace {

/// As the library will read it; nan where it is no number at all.
double option_number(const std::string& text) {
    char* end = nullptr;
    const double number = std::strtod(text.c_str(), &end);
    return text.empty() || *end != '\0' ? std::nan("") : number;
}

std::string odd_number(const std::string& text) {
    const double number = option_number(text);
    if (std::isnan(number)) return say(phrase("commands", "`%1` is no number; write one such as 431 or 0.5"), text);
    if (std::abs(number) <= largest_option) return {};
    return say(phrase("commands", "`%1` is far beyond anything that is measured; the most is %2"), text, exact_text(largest_option));
}

/// Says of a number for which `good` does not hold what `words` make of it.
template <class Good, class Words>
CLI::Validator number_check(Good good, Words words) {
    return {[good, words](std::string& text) { return good(option_number(text)) ? std::string() : std::string(words(text)); }, std::string()};
}

} // namespace

void check_numbers(CLI::App& app) {
    for (CLI::Option* option : app.get_options())
        // A transformation goes before the checks of the option itself, whose words are for numbers.
        if (option->get_type_name().find("FLOAT") != std::string::npos) option->transform(CLI::Validator(odd_number, std::string()));
    for (CLI::App* command : app.get_subcommands([](CLI::App*) { return true; })) check_numbers(*command);
}

CLI::Validator above_zero() {
    return number_check([](double number) { return number > 0; },
                        [](const std::string& text) { return say(phrase("commands", "`%1` is no number above 0"), text); });
}

CLI::Validator zero_or_more() {
    return number_check([](double number) { return number >= 0; },
                        [](const std::string& text) { return say(phrase("commands", "`%1` is no number from 0 up"), text); });
}

CLI::Validator between(double lowest, double highest) {
    return number_check([=](double number) { return number >= lowest && number <= highest; },
                        [=](const std::string& text) {
                            return say(phrase("commands", "`%1` is no number from %2 to %3"), text, exact_text(lowest), exact_text(highest));
                        });
}

void add_force_option(CLI::App& command, bool& force) {
    command.add_flag(
        "--force", force,
        say(phrase("commands",
                   "replace also a file that this program did not write as it is, an input of this call, or a logbook that nobody uses")));
}

Replacing replacing_of(bool force, std::vector<std::string> inputs) {
    return {force ? Replacing::Consent::any : Replacing::Consent::own, std::move(inputs)};
}

} // namespace ullage
