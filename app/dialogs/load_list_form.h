// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/form_dialog.h"
#include "model/load_list.h"

namespace ullage {

/// Name and remark of a load list; its appliances stay as they are.
class LoadListForm final : public FormDialog {
    Q_OBJECT
public:
    /// Starts from `list`; one without uuid is a new list.
    explicit LoadListForm(const LoadList& list, QWidget* parent = nullptr);

    /// The list as submitted.
    [[nodiscard]] const LoadList& list() const { return list_; }

protected:
    void read() override;

private:
    LoadList list_;
    QLineEdit *name_, *remark_;
};

} // namespace ullage
