// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "support/simulator_run.h"

#include <string_view>
#include <vector>

namespace ullage::test {

/// One of the company's units: what its maker claims, and how it truly is.
struct CompanyUnit {
    Unit claims;
    SimulatedUnit physics;
    GaugeLaw gauge;
};

[[nodiscard]] CompanyUnit osk_1200();
[[nodiscard]] CompanyUnit pelm_900();
[[nodiscard]] CompanyUnit tarrow_2k();

/// The company's meters; their registers run on from run to run.
[[nodiscard]] MeterSetup socket_meter_a();
[[nodiscard]] MeterSetup socket_meter_b();

/// A note in the tester's shorthand.
struct Note {
    std::string_view clock; ///< "23:30"; earlier than the note before means the next day
    std::string_view parts; ///< of `g` gauge, `r` register, `m` meter power, `d` display power, `L` mark "load changed"
    std::string_view remark = {};
};

/// 24-hour clock in May in Europe/Vienna (UTC+2) as an instant.
[[nodiscard]] UtcMs may_2027(int day, int hour, int minute);

/// The notes as a plan for a run that started at `start_clock`.
[[nodiscard]] std::vector<PlannedReading> plan_of(std::string_view start_clock, const std::vector<Note>& notes);

} // namespace ullage::test
