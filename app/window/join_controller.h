// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/controller.h"

#include <set>
#include <string>

namespace ullage {

/// Another logbook that is joined with the open one.
class JoinController final : public Controller {
    Q_OBJECT
public:
    using Controller::Controller;

    void chooseLogbook(); ///< asks which
    /// Shows what the logbook would bring and what differs, and joins it as chosen there.
    void join(const QString& path);

private:
    [[nodiscard]] Result<Joined> joinBeside(const Document::JoinProposal& proposal, const std::set<std::string>& taken);
};

} // namespace ullage
