// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/controller.h"

namespace ullage {

/// Load lists and their appliances, as chosen on the page of load lists, and the export of the sizing that rests on them.
class LoadListController final : public Controller {
    Q_OBJECT
public:
    using Controller::Controller;

    void addLoadList();
    void editLoadList();
    void withdrawLoadList();
    void addAppliance();
    void editAppliance();
    void removeAppliance();
    void exportSizing();
};

} // namespace ullage
