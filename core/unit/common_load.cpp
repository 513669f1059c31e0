// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/common_load.h"

#include "base/number.h"

namespace ullage {

Message say_common_load(const CommonLoad& load) {
    const Message watts =
        load.duty < 1 ? say(phrase("unit", "%1 W on average (%2 W for %3 % of the time)"), say_number(load.mean_w(), load.mean_w() < 10 ? 1 : 0),
                            say_number(load.power_w, 0), say_number(100 * load.duty, 0))
                      : say_digits(exact_text(load.power_w) + " W");
    return load.name.empty() ? watts : say_joined({load.name, watts}, ", ");
}

std::string common_load_text(const CommonLoad& load) { return say_common_load(load); }

} // namespace ullage
