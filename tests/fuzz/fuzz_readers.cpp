// SPDX-License-Identifier: GPL-3.0-or-later
// Feeds spoiled inputs to what reads them. Usage: fuzz_readers [--target logs|logbook|photo|loads|pv|commands] [--seconds N] [--seed S]
// [--into FOLDER]. The inputs at work lie in FOLDER (default: .) under names that begin with "fuzz_", so that what ended the program can be looked
// at. Exit code 1 where a promise is broken; the sanitizers of the build, a limit of 60 s for each input and one of 1 GB of memory end the program
// themselves.
#include "fuzz/fuzz_target.h"

#include <fmt/format.h>

#include <sys/resource.h>
#include <unistd.h>

#include <array>
#include <charconv>
#include <chrono>
#include <cstdio>
#include <fstream>
#include <iterator>

#include <algorithm>

// Address space is no measure where the sanitizer keeps its shadow in it, so the sanitizer itself watches the memory.
extern "C" const char* __asan_default_options();
extern "C" const char* __asan_default_options() { return "hard_rss_limit_mb=1024:max_allocation_size_mb=1024:quarantine_size_mb=64"; }

namespace ullage::test {

bool FuzzTarget::broken(const std::string& promise) {
    fmt::print("BROKEN: {}\n", promise);
    return false;
}

std::string bytes_of(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

void write_bytes_to(const std::filesystem::path& path, std::string_view bytes) { std::ofstream(path, std::ios::binary) << bytes; }

std::vector<std::string> texts_of(const std::filesystem::path& folder, std::string_view ending) {
    std::vector<std::filesystem::path> paths;
    for (const auto& entry : std::filesystem::directory_iterator(folder))
        if (entry.path().extension() == ending) paths.push_back(entry.path());
    std::ranges::sort(paths);
    std::vector<std::string> texts;
    for (const auto& path : paths) texts.push_back(bytes_of(path));
    return texts;
}

namespace {

constexpr unsigned most_seconds_an_input = 60;

using TargetMaker = std::unique_ptr<FuzzTarget> (*)(std::uint64_t seed, const std::filesystem::path& into);

constexpr std::array<std::pair<std::string_view, TargetMaker>, 9> targets{{{"logs", fuzz_logs},
                                                                           {"logbook", fuzz_logbooks},
                                                                           {"photo", fuzz_photos},
                                                                           {"live", fuzz_live},
                                                                           {"loads", fuzz_load_lists},
                                                                           {"tables", fuzz_tables},
                                                                           {"pv", fuzz_pv_sheets},
                                                                           {"folders", fuzz_folders},
                                                                           {"commands", fuzz_commands}}};

struct FuzzArguments {
    TargetMaker target = fuzz_logs;
    long seconds = 60;
    std::uint64_t seed = 1;
    std::filesystem::path into = ".";
};

template <class Number>
bool read_number(std::string_view text, Number& number) {
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    return error == std::errc{} && end == text.data() + text.size();
}

bool read_target(std::string_view name, TargetMaker& target) {
    const auto found = std::ranges::find(targets, name, &std::pair<std::string_view, TargetMaker>::first);
    if (found == targets.end()) return false;
    target = found->second;
    return true;
}

bool read_arguments(int argc, char** argv, FuzzArguments& arguments) {
    if (argc % 2 == 0) return false;
    for (int i = 1; i + 1 < argc; i += 2) {
        const std::string_view word = argv[i], value = argv[i + 1];
        const bool understood = word == "--seconds"  ? read_number(value, arguments.seconds)
                                : word == "--seed"   ? read_number(value, arguments.seed)
                                : word == "--target" ? read_target(value, arguments.target)
                                                     : word == "--into";
        if (word == "--into") arguments.into = value;
        if (!understood) return false;
    }
    return true;
}

int fuzz(const FuzzArguments& arguments) {
    std::filesystem::create_directories(arguments.into);
    const std::filesystem::path into = std::filesystem::absolute(arguments.into);
    const std::unique_ptr<FuzzTarget> target = arguments.target(arguments.seed, into);
    const auto end = std::chrono::steady_clock::now() + std::chrono::seconds(arguments.seconds);
    bool sound = true;
    while (sound && std::chrono::steady_clock::now() < end) {
        alarm(most_seconds_an_input);
        sound = target->one();
    }
    alarm(0);
    fmt::print("seed {}: {}\n", arguments.seed, target->tally());
    if (!sound) fmt::print("the inputs lie in {}\n", into.string());
    return sound ? 0 : 1;
}

} // namespace
} // namespace ullage::test

int main(int argc, char** argv) {
    ullage::test::FuzzArguments arguments;
    if (!ullage::test::read_arguments(argc, argv, arguments)) {
        fmt::print(stderr, "Usage: fuzz_readers [--target logs|logbook|photo|loads|pv|commands] [--seconds N] [--seed S] [--into FOLDER]\n");
        return 2;
    }
#ifndef ULLAGE_SANITIZED
    const rlimit memory{1'000'000'000, 1'000'000'000};
    setrlimit(RLIMIT_AS, &memory);
#endif
    return ullage::test::fuzz(arguments);
}
