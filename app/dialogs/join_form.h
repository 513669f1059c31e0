// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/form_dialog.h"
#include "joining/join_plan.h"

#include <set>
#include <string>

class QTreeWidget;
class QTreeWidgetItem;

namespace ullage {

/// What joining another logbook would bring, and what differs: each difference is kept as it is here, or ticked to be taken from the other.
class JoinForm final : public FormDialog {
    Q_OBJECT
public:
    /// `other`: the name of the other logbook. The plan must outlive the form, and not be empty.
    JoinForm(const JoinPlan& plan, const QString& other, QWidget* parent = nullptr);

    /// As submitted: the keys of the differences that are taken from the other.
    [[nodiscard]] const std::set<std::string>& taken() const { return taken_; }

protected:
    void read() override;

private:
    void showArrivals(const QString& other);
    void showDifferences();
    void showNotices();
    void tick(const std::set<std::string>& keys);

    const JoinPlan& plan_;
    QTreeWidget* differences_ = nullptr;
    std::set<std::string> taken_;
};

} // namespace ullage
