// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/common_load.h"

#include "base/number.h"

namespace ullage {

std::string common_load_text(const CommonLoad& load) {
    const std::string watts = load.duty < 1 ? fixed_text(load.mean_w(), load.mean_w() < 10 ? 1 : 0) + " W on average (" +
                                                  fixed_text(load.power_w, 0) + " W for " + fixed_text(100 * load.duty, 0) + " % of the time)"
                                            : exact_text(load.power_w) + " W";
    return load.name.empty() ? watts : load.name + ", " + watts;
}

} // namespace ullage
