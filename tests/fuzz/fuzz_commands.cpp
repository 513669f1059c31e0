// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/commands.h"
#include "formats/sheets/run_sheet.h"
#include "fuzz/fuzz_target.h"
#include "fuzz/mutator.h"
#include "store/logbook.h"
#include "support/photo_bytes.h"
#include "support/source_dir.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <exception>
#include <map>
#include <sstream>
#include <stdexcept>
#include <string>

namespace ullage::test {
namespace {

namespace fs = std::filesystem;

// A word a line, so that the mutator can exchange fields and lines of a command.
constexpr std::array lines_to_spoil = {
    "import\nbench.ullage\nsheet-1.csv\nsheet-2.csv\n",
    "import\nnew.ullage\nsheet-1.csv\nlist.csv\n",
    "import-trace\nmeter.log\n--logbook\nbench.ullage\n--unit\nOsk 1200\n--run\n1\n--preview\n",
    "import-trace\nmeter.log\n--logbook\nbench.ullage\n--unit\nOsk 1200\n--run\n1\n--clock-offset\nestimate\n--gap-limit\n60\n",
    "import-trace\nmeter.log\n--logbook\nbench.ullage\n--run\n2\n--map\ntime=1,power=2:W\n--start\n2027-05-14T10:00:00Z\n--offset\n-0:01:30\n",
    "analyse\nbench.ullage\n--unit\nPelm 900\n--run\n1\n--format\njson\n--kwh-price\n0.3\n",
    "analyse\nsheet-1.csv\n",
    "compare\nbench.ullage\nsheet-2.csv\n.\n--at-load\n120\n--duty\n50\n--format\njson\n",
    "compare\nbench.ullage\n--load-list\nlist.csv\n--pairs\n--pairs-of\nusable_fraction\n--output\nout.csv\n",
    "compare\nbench.ullage\n--columns\nunit,usable_fraction\n--maker\nX\n--tag\nlent\n--least-wh\n500\n--most-wh\n2000\n--every-drain\n",
    "import-loads\nlist.csv\n--logbook\nbench.ullage\n",
    "loads\nlist.csv\n--format\nmarkdown\n--output\nout.md\n",
    "loads\n--logbook\nbench.ullage\n--list\nshow night\n--sheet\n",
    "size\nbench.ullage\n--load-list\nlist.csv\n--autonomy-days\n2\n--array\n400\n--month-sun-hours\n1,2,3,4,5,6,6,5,4,3,2,1\n--format\njson\n",
    "size\nbench.ullage\n--load-list\nshow night\n--table\ncourse\n--peak-sun-hours\n4\n--derating\n0.75\n--output\nout.html\n",
    "export-readings\nbench.ullage\n--unit\nOsk 1200\n--run\n1\n--intervals\n--format\ncsv\n--output\nout.csv\n",
    "export-sheet\nbench.ullage\n--unit\nOsk 1200\n--run\n1\n--output\nout-sheet.csv\n",
    "export-folder\nbench.ullage\n--into\nout-folder\n",
    "import\nagain.ullage\nout-folder\n",
    "pv-check\nroof.txt\n--logbook\nbench.ullage\n--unit\nTarrow 2k\n--series\n3\n--coldest-c\n-15\n--format\njson\n",
    "pv-check\n--voc-v\n24.3\n--voc-coefficient\n-0.30 %/°C\n--pv-max-v\n60\n--series\n2\n",
    "--help\n",
    "--version\n"};

/// Words that options are tried with.
constexpr std::array values = {"nan",
                               "inf",
                               "-inf",
                               "1e308",
                               "1e-320",
                               "-1",
                               "0",
                               "999999999999999999999",
                               "",
                               " ",
                               "-",
                               "--",
                               "=",
                               ".",
                               "..",
                               "bench.ullage",
                               "sheet-1.csv",
                               "list.csv",
                               "meter.log",
                               "roof.txt",
                               "photo.jpg",
                               "out.xlsx",
                               "out.tex",
                               "out.json",
                               "missing.ullage",
                               "\xC3\x28",
                               "\xE2\x80\xAE",
                               "=1+1",
                               "--output",
                               "--format",
                               "latex",
                               "xlsx",
                               "2147483648"};

constexpr std::size_t most_words = 40;

class CommandFuzz final : public FuzzTarget {
public:
    CommandFuzz(std::uint64_t seed, const fs::path& into)
        : lines_({lines_to_spoil.begin(), lines_to_spoil.end()}, seed), words_path_(into / "fuzz_command"), folder_(into / "fuzz_files") {
        fs::remove_all(folder_);
        fs::create_directories(folder_);
        fs::current_path(folder_); // no word has a slash, so nothing outside can be named
        make_files();
    }

    bool one() override {
        lay_out();
        const std::string line = drawn_line();
        write_bytes_to(words_path_, line);
        const std::vector<std::string> words = words_of(line);
        ++inputs_;
        std::ostringstream out, err;
        int code = -1;
        try {
            code = run_command(words, text_commands(), out, err);
        } catch (const std::exception& thrown) {
            return broken(std::string("a command throws: ") + thrown.what());
        }
        return says_what_it_did(code, out.str(), err.str(), words) && leaves_files_alone(words);
    }

    [[nodiscard]] std::string tally() const override {
        return fmt::format("{} commands, {} of them done, {} refused, {} not understood", inputs_, ended_[0], ended_[1], ended_[2]);
    }

private:
    /// What the commands work on, each time anew.
    void make_files() {
        const fs::path data = source_dir() / "sample-data";
        const std::vector<std::string> sheets = texts_of(data, ".csv");
        const SystemClock clock;
        {
            Result<Logbook> logbook = Logbook::create("bench.ullage", clock);
            if (!logbook) throw std::runtime_error(logbook.error().sentence());
            for (const std::string& text : sheets) {
                const Result<SheetImport> sheet = read_run_sheet(text, "sheet");
                if (!sheet || !logbook.value().import(sheet.value().record)) throw std::runtime_error("a sample sheet is not taken");
            }
        }
        files_["bench.ullage"] = bytes_of("bench.ullage");
        files_["sheet-1.csv"] = sheets.front();
        files_["sheet-2.csv"] = sheets.back();
        files_["list.csv"] = texts_of(data / "load-lists", ".csv").front();
        files_["roof.txt"] = texts_of(data, ".txt").front();
        files_["photo.jpg"] = bare_jpeg();
        std::string log = "time,Wh,W\n";
        for (int i = 0; i < 300; ++i) log += fmt::format("2027-05-14T{:02}:{:02}:00Z,{},{}\n", 10 + i / 60, i % 60, i, 60 + i % 3);
        files_["meter.log"] = log;
    }

    void lay_out() {
        for (const auto& entry : fs::directory_iterator("."))
            if (!files_.contains(entry.path().filename().string())) fs::remove_all(entry.path());
        for (const auto& [name, bytes] : files_)
            if (bytes_of(name) != bytes) write_bytes_to(name, bytes);
    }

    std::string drawn_line() {
        std::string line = lines_.pick(3) != 0 ? std::string(lines_to_spoil[lines_.pick(lines_to_spoil.size())]) : lines_.next();
        for (std::size_t k = lines_.pick(4); k > 0; --k) { // a word for another
            const std::size_t from = line.find('\n', lines_.pick(line.size() + 1));
            if (from == std::string::npos) continue;
            const std::size_t to = std::min(line.size(), line.find('\n', from + 1));
            line.replace(from + 1, to - from - 1, values[lines_.pick(values.size())]);
        }
        std::ranges::replace(line, '/', '_');
        return line;
    }

    /// Following goes on until it is interrupted, so it has a time to end here.
    std::vector<std::string> words_of(const std::string& line) {
        std::vector<std::string> words;
        std::istringstream stream(line);
        for (std::string word; words.size() < most_words && std::getline(stream, word);)
            if (!word.starts_with("--fo") || word.starts_with("--format")) words.push_back(word.substr(0, word.find('\0')));
        if (words.size() > 3 && words[0] == "import-trace" && lines_.pick(20) == 0) words.insert(words.end(), {"--follow", "--until-quiet", "0.01"});
        return words;
    }

    bool says_what_it_did(int code, const std::string& out, const std::string& err, const std::vector<std::string>& words) {
        if (code < 0 || code > 2) return broken(fmt::format("a command ends with {}", code));
        ++ended_[static_cast<std::size_t>(code)];
        if (code != exit_good && err.empty()) return broken("a command fails without a word");
        std::istringstream lines(err);
        for (std::string line; std::getline(lines, line);)
            if (!line.starts_with("ullage: ")) return broken("a message does not name the program: " + line);
        const auto asked = std::ranges::find(words, "--format");
        const bool json = asked != words.end() && asked + 1 != words.end() && *(asked + 1) == "json" && std::ranges::count(words, "--format") == 1;
        const bool to_file = std::ranges::any_of(words, [](const std::string& word) { return word.starts_with("--output"); });
        const bool help = std::ranges::any_of(words, [](const std::string& word) { return word.starts_with("-h") || word.starts_with("--"); }) &&
                          (out.starts_with("Ullage") || out.find("Usage:") != std::string::npos || out.starts_with("ullage "));
        if (code == exit_good && json && !to_file && !help && !nlohmann::json::accept(out)) return broken("JSON cannot be read");
        return true;
    }

    /// What was there is only changed by what brings something in, and of that only the logbook.
    bool leaves_files_alone(const std::vector<std::string>& words) const {
        const bool brings_in = !words.empty() && words[0].starts_with("import");
        for (const auto& [name, bytes] : files_)
            if (!(brings_in && name == "bench.ullage") && bytes_of(name) != bytes) return broken(name + " has been changed");
        return true;
    }

    Mutator lines_;
    fs::path words_path_, folder_;
    std::map<std::string, std::string> files_;
    long inputs_ = 0;
    std::array<long, 3> ended_{};
};

} // namespace

std::unique_ptr<FuzzTarget> fuzz_commands(std::uint64_t seed, const fs::path& into) { return std::make_unique<CommandFuzz>(seed, into); }

} // namespace ullage::test
