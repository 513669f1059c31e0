// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/form_dialog.h"

#include <map>
#include <string>
#include <vector>

class QComboBox;
class QListWidget;
class QPushButton;

namespace ullage {

/// Which columns of the comparison are in sight and go out, and in which order: a ready set, a set of the tester's own, or ticks in the list. Lines
/// are dragged, or moved with Alt and the arrow keys. Columns that are the tester's own affair are marked.
class ColumnsDialog final : public FormDialog {
    Q_OBJECT
public:
    using Keys = std::vector<std::string>;

    /// `chosen`: keys in order; `own`: the tester's sets by name.
    ColumnsDialog(const Keys& chosen, std::map<std::string, Keys> own, QWidget* parent = nullptr);

    /// As submitted: the keys ticked, in the order of the list.
    [[nodiscard]] const Keys& chosen() const { return chosen_; }
    /// Sets that were kept under a name, and those taken out, which are empty.
    [[nodiscard]] const std::map<std::string, Keys>& changedSets() const { return changed_; }

protected:
    void read() override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void showKeys(const Keys& keys);
    void showSets();
    void useSet(int place);
    void removeSet();
    void moveLine(int by);
    [[nodiscard]] Keys ticked() const;

    std::map<std::string, Keys> own_, changed_;
    Keys chosen_;
    QComboBox* sets_;
    QListWidget* list_;
    QLineEdit* name_;
    QPushButton* remove_;
};

} // namespace ullage
