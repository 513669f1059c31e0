// SPDX-License-Identifier: GPL-3.0-or-later
#include "shipped/shipped_fixture.h"

#include "support/source_dir.h"

#include "base/clock.h"
#include "formats/sheets/pv_sheet_text.h"
#include "store/logbook.h"

#include <algorithm>
#include <filesystem>
#include <fstream>

namespace ullage::test {

std::unique_ptr<TempFolder> Shipped::home_;

namespace {

/// No command brings photos and PV sheets in, so the store does: a picture that the program has drawn, with a reading of the charge, and a sheet.
void add_photo_and_sheet(const std::string& logbook, const std::string& bytes, const std::string& sheet_file) {
    const SystemClock clock;
    Result<Logbook> book = Logbook::open(logbook, OpenMode::record, clock);
    ASSERT_TRUE(book.ok()) << book.error().sentence();
    const Result<std::vector<RunRecord>> records = book.value().run_records();
    ASSERT_TRUE(records.ok()) << records.error().sentence();
    const auto charge = std::ranges::find_if(records.value(), [](const RunRecord& record) { return record.run.kind == RunKind::charge; });
    ASSERT_NE(charge, records.value().end());
    const auto added = book.value().add_photo(charge->run.uuid, charge->readings.front().uuid, {"display.png", bytes, {}});
    ASSERT_TRUE(added.ok()) << added.error().sentence();
    Result<PvSheetText> sheet = read_pv_sheet(bytes_of(sheet_file), sheet_file);
    ASSERT_TRUE(sheet.ok()) << sheet.error().sentence();
    sheet.value().sheet.name = "Roof";
    const auto kept = book.value().add(sheet.value().sheet);
    ASSERT_TRUE(kept.ok()) << kept.error().sentence();
}

} // namespace

std::string sample_file(const std::string& name) { return (source_dir() / "sample-data" / name).string(); }

void Shipped::SetUpTestSuite() {
    home_ = std::make_unique<TempFolder>();
    std::vector<std::string> import{"import", logbook()};
    for (const auto& entry : std::filesystem::directory_iterator(source_dir() / "sample-data"))
        if (entry.path().extension() == ".csv") import.push_back(entry.path().string());
    std::ranges::sort(import.begin() + 2, import.end());
    ASSERT_GE(import.size(), 14U);
    good(import);
    good({"import-trace", sample_file("logs/12-pelm-900-drain-logged.csv"), "--logbook", logbook(), "--unit", "Pelm 900", "--run", "4"});
    good({"import-loads", sample_file("load-lists/show-night.csv"), "--logbook", logbook()});
    good({"pictures", sample_file("01-tarrow-2k-drain-180-w.csv"), "--into", file("drawn"), "--width-mm", "120", "--height-mm", "80"});
    add_photo_and_sheet(logbook(), bytes_of(file("drawn/tarrow-2k-run-1-energy.png")), sample_file("pv-tarrow-2k-roof.txt"));
}

void Shipped::TearDownTestSuite() { home_.reset(); }

std::string Shipped::running_logbook(const std::string& name) {
    const std::string sheet = file(name + ".csv"), book = file(name + ".ullage");
    std::ofstream(sheet) << "# unit: Lantern 900\n# maker: Hedgerow Works\n# rated_energy_wh: 900\n# meter: Bench meter\n# run: drain\n"
                            "# started_full: yes\n# ended: still running\n# time_zone: UTC\ntime,gauge_percent,register_wh\n"
                            "2027-05-06T09:00Z,100,0\n";
    good({"import", book, sheet});
    return book;
}

Ended Shipped::good(const std::vector<std::string>& args) {
    Ended ended = run_program(*home_, args);
    std::string called;
    for (const std::string& arg : args) called += ' ' + arg;
    EXPECT_EQ(ended.signal, 0) << called;
    EXPECT_EQ(ended.code, 0) << called;
    EXPECT_EQ(ended.err, "") << called;
    return ended;
}

std::string Shipped::written(std::vector<std::string> args, const std::string& name) {
    std::filesystem::create_directories(std::filesystem::path(file(name)).parent_path());
    args.insert(args.end(), {"--output", file(name)});
    good(args);
    EXPECT_TRUE(std::filesystem::exists(file(name))) << name;
    return bytes_of(file(name));
}

} // namespace ullage::test
