// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/clock.h"
#include "formats/folder/logbook_folder.h"
#include "formats/sheets/run_sheet.h"
#include "fuzz_target.h"
#include "mutator.h"
#include "support/photo_bytes.h"
#include "support/source_dir.h"

#include <fmt/format.h>

namespace ullage::test {
namespace {

namespace fs = std::filesystem;

/// Two runs, one of them with a photo and a log.
Logbook small_logbook(const Clock& clock) {
    Logbook book = Logbook::in_memory(clock).value();
    for (const char* sheet : {"03-pelm-900-no-load-drain.csv", "02-pelm-900-drain-64-w.csv"}) {
        const RunRecord run = book.import(read_run_sheet(bytes_of(source_dir() / "sample-data" / sheet), sheet).value().record).value();
        Trace trace;
        trace.run_uuid = run.run.uuid;
        trace.file_name = "log.csv";
        trace.fingerprint = sheet;
        trace.offset_ms = 4000;
        [[maybe_unused]] const auto added = book.add_trace(trace, [&](Trace&, const SampleTaker& take) {
            for (int i = 0; i < 20; ++i) {
                TraceSample sample{run.readings.front().values.time_ms + i * 10'000, 100.0 + i, 60.5, {}, {}};
                if (const auto taken = take({&sample, 1}); !taken) return taken;
            }
            return Result<void>();
        });
        [[maybe_unused]] const auto photo =
            book.add_photo(run.run.uuid, run.readings[1].uuid, {"photo.jpg", bare_jpeg(), PhotoMoment{run.readings[1].values.time_ms, true}});
    }
    return book;
}

class FolderFuzz final : public FuzzTarget {
public:
    FolderFuzz(std::uint64_t seed, const fs::path& into) : root_(into / "folder") {
        fs::remove_all(root_);
        const Logbook book = small_logbook(clock_);
        if (const auto written = write_logbook_folder(book, root_); !written) trouble_ = written.error().sentence();
        else contents_.emplace(std::vector<std::string>{bytes_of(root_ / folder_contents_name)}, seed);
    }

    bool one() override {
        if (!contents_) return broken("a folder cannot be written: " + trouble_);
        write_bytes_to(root_ / folder_contents_name, contents_->next());
        ++inputs_;
        Logbook book = Logbook::in_memory(clock_).value();
        const Result<FolderTally> read = import_logbook_folder(book, root_);
        const std::size_t runs = book.run_records().value().size();
        if (!read) return (runs == 0 && !read.error().sentence().empty()) || broken("half of a folder came in: " + read.error().sentence());
        ++read_;
        return runs == read.value().runs || broken("a folder counts runs that are not there");
    }

    [[nodiscard]] std::string tally() const override { return fmt::format("{} folders, {} of them read", inputs_, read_); }

private:
    SystemClock clock_;
    fs::path root_;
    std::string trouble_;
    std::optional<Mutator> contents_;
    long inputs_ = 0, read_ = 0;
};

} // namespace

std::unique_ptr<FuzzTarget> fuzz_folders(std::uint64_t seed, const fs::path& into) { return std::make_unique<FolderFuzz>(seed, into); }

} // namespace ullage::test
