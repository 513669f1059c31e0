// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "models/logbook_tree_model.h"

#include <QString>

#include <functional>
#include <string>

class QWidget;

namespace ullage {

/// A page as the window knows it: a row of its table of pages. Choosing, remembering and showing again, the tree and making pages ahead go by it
/// alone. `uuid` is of what the page shows, such as a run; empty for pages that span all of the logbook. It is a text, since it may be of any kind of
/// record: that which `row` says.
struct PageEntry {
    QString name;                                          ///< object name of the page, by which it is remembered
    LogbookTreeModel::Row row;                             ///< its row, or the kind of its rows, in the tree
    std::function<const QWidget*()> widget;                ///< null while it is not made
    std::function<void()> make;                            ///< ahead of being asked for
    std::function<void(const std::string& uuid)> show;     ///< in the window, with what it is to show
    std::function<std::string()> uuid;                     ///< of what it shows
    std::function<bool(const std::string& uuid)> is_there; ///< the logbook still has it
};

} // namespace ullage
