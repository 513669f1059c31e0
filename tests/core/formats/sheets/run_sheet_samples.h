// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/sheets/run_sheet.h"

#include <gtest/gtest.h>

#include <string>

namespace ullage::test {

/// A whole sheet in its normal form; unit, maker and meter are invented.
inline const std::string normal_sheet = "# unit: Brook 500\n"
                                        "# maker: Quillwater\n"
                                        "# rated_energy_wh: 512\n"
                                        "# rated_output_w: 600\n"
                                        "# price: 449.5\n"
                                        "# currency: EUR\n"
                                        "# mass_kg: 6.4\n"
                                        "# gauge_step_percent: 1\n"
                                        "# meter: bench meter 2\n"
                                        "# meter_step_wh: 1\n"
                                        "# meter_limit_percent: 1\n"
                                        "# meter_span_wh: 10000\n"
                                        "# run: drain\n"
                                        "# started_full: yes\n"
                                        "# ended: cut-off seen\n"
                                        "# time_zone: Europe/Vienna\n"
                                        "# load: projector, sound\n"
                                        "# ambient_c: 21.5\n"
                                        "time,gauge_percent,register_wh,meter_w,display_w,mark,remark\n"
                                        "2027-05-14T18:00+02:00,100,0,64,66,,\n"
                                        "2027-05-14T19:30:30+02:00,80,96,,,load changed,\"lamp added, \"\"bright\"\"\"\n"
                                        "2027-05-15T02:40+02:00,0,438,,,cut-off,\n";

/// Reads a sheet that has to be good.
inline SheetImport read_good(std::string_view text) {
    auto import = read_run_sheet(text, "a.csv");
    EXPECT_TRUE(import.ok()) << (import.ok() ? "" : import.error().sentence()) << "\n" << text;
    return import.ok() ? std::move(import).value() : SheetImport{};
}

/// The error of a sheet that has to be refused.
inline Error read_bad(std::string_view text) {
    const auto import = read_run_sheet(text, "a.csv");
    EXPECT_FALSE(import.ok()) << text;
    return import.ok() ? Error{} : import.error();
}

inline std::string replaced(std::string text, std::string_view from, std::string_view to) {
    const auto at = text.find(from);
    EXPECT_NE(at, std::string::npos) << from;
    if (at != std::string::npos) text.replace(at, from.size(), to);
    return text;
}

/// A sheet with a zone and these rows below a header row `time,remark`.
inline std::string rows_in(const std::string& zone, const std::string& rows) {
    return "# unit: A\n# run: drain\n# ended: found off\n# time_zone: " + zone + "\ntime,remark\n" + rows;
}

inline bool mentions(const std::string& text, std::string_view part) { return text.find(part) != std::string::npos; }

} // namespace ullage::test
