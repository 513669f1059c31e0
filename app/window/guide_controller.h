// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/controller.h"
#include "window/guide_bar.h"

namespace ullage {

class RecordController;

/// Where a guided first run is: told by what the logbook holds, so that every way of doing a step counts, and undoing it too.
struct GuidePlace {
    GuideStep step = GuideStep::unit;
    RunId run;        ///< the latest; empty before there is one
    int readings = 0; ///< of it that count
};
[[nodiscard]] GuidePlace guide_place(const Document& document);

/// The guided first run: leads through the forms that everybody uses and records nothing itself. Which logbook is guided stands in the settings, so
/// that the guide goes on when it is opened again.
class GuideController final : public Controller {
    Q_OBJECT
public:
    GuideController(const Workplace& at, GuideBar& bar, RecordController& records);

    /// Guides through the open logbook where it is fresh or halfway through its first run, else asks for a new one.
    void begin();
    void leave();
    void refresh(); ///< after what is open, or is in it, has changed

private:
    [[nodiscard]] bool guided() const;
    [[nodiscard]] GuideWords words(const GuidePlace& place) const;
    void go(); ///< to where the step is done

    GuideBar& bar_;
    RecordController& records_;
};

} // namespace ullage
