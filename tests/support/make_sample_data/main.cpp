// SPDX-License-Identifier: GPL-3.0-or-later
// Writes the run sheets of the sample scenario into a folder and prints the table of their truth for its README.
#include "exchange/run_sheet.h"
#include "support/scenario.h"
#include "support/scenario_claims.h"

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
    std::filesystem::create_directories(folder, failure);
    if (failure) {
        std::cerr << folder.string() << ": cannot be made (" << failure.message() << "); name another folder\n";
        return 1;
    }
    const auto runs = ullage::test::sample_scenario();
    std::vector<std::pair<std::string, const ullage::RunRecord*>> sheets;
    for (const auto& run : runs) sheets.emplace_back(run.file_name, &run.simulated.record);
    const auto claim_runs = ullage::test::sample_claim_runs();
    for (const auto& run : claim_runs) sheets.emplace_back(run.file_name, &run.record);
    for (const auto& [file_name, record] : sheets) {
        const std::filesystem::path path = folder / file_name;
        std::ofstream file(path, std::ios::binary | std::ios::trunc);
        file << ullage::write_run_sheet(*record);
        file.close();
        if (!file) {
            std::cerr << path.string() << ": cannot be written; check the disk and the folder's permissions\n";
            return 1;
        }
    }
    std::cout << ullage::test::truth_table(runs);
    return 0;
}
