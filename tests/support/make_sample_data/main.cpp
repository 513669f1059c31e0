// SPDX-License-Identifier: GPL-3.0-or-later
// Writes run sheets, load list and log of the sample scenario into a folder and prints the table of their truth for its README.
#include "formats/sheets/load_list_file.h"
#include "formats/sheets/run_sheet.h"
#include "support/scenario.h"
#include "support/scenario_claims.h"
#include "support/scenario_log.h"
#include "support/scenario_specimen.h"

#include <filesystem>
#include <fstream>
#include <iostream>
#include <string>
#include <system_error>
#include <utility>
#include <vector>

int main(int argc, char** argv) {
    if (argc != 2) {
        std::cerr << "usage: make_sample_data FOLDER\n";
        return 2;
    }
    const std::filesystem::path folder(argv[1]);
    std::error_code failure;
    std::filesystem::create_directories(folder / "load-lists", failure);
    if (!failure) std::filesystem::create_directories(folder / "logs", failure);
    if (failure) {
        std::cerr << folder.string() << ": cannot be made (" << failure.message() << "); name another folder\n";
        return 1;
    }
    auto runs = ullage::test::sample_scenario();
    auto logged = ullage::test::sample_logged_run();
    std::vector<std::pair<std::filesystem::path, std::string>> files{{folder / "logs" / logged.run.file_name, std::move(logged.log)}};
    runs.push_back(std::move(logged.run));
    for (auto& run : ullage::test::sample_specimen_runs()) runs.push_back(std::move(run));
    const auto [list_file, list] = ullage::test::sample_load_list();
    files.emplace_back(folder / "load-lists" / list_file, ullage::write_load_list(list));
    for (const auto& run : runs) files.emplace_back(folder / run.file_name, ullage::write_run_sheet(run.simulated.record));
    const auto claim_runs = ullage::test::sample_claim_runs();
    for (const auto& run : claim_runs) files.emplace_back(folder / run.file_name, ullage::write_run_sheet(run.record));
    for (const auto& [path, text] : files) {
        std::ofstream file(path, std::ios::binary | std::ios::trunc);
        file << text;
        file.close();
        if (!file) {
            std::cerr << path.string() << ": cannot be written; check the disk and the folder's permissions\n";
            return 1;
        }
    }
    std::cout << ullage::test::truth_table(runs);
    return 0;
}
