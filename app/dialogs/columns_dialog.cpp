// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/columns_dialog.h"

#include "formats/results/comparison_columns.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>

#include <algorithm>
#include <iterator>
#include <tuple>
#include <utility>

namespace ullage {

namespace {

constexpr int key_role = Qt::UserRole;
constexpr int list_lines = 12;
enum SetPlace { as_ticked, for_readers, for_spreadsheet, first_own };

} // namespace

ColumnsDialog::ColumnsDialog(const Keys& chosen, std::map<std::string, Keys> own, QWidget* parent)
    : FormDialog(tr("Columns"), tr("Use these"), parent), own_(std::move(own)), sets_(addChoice(QStringLiteral("set"), tr("&Set"))),
      list_(new QListWidget(this)), remove_(new QPushButton(tr("&Remove this set"), this)) {
    setObjectName(QStringLiteral("columnsDialog"));
    list_->setObjectName(QStringLiteral("columnsList"));
    list_->setAccessibleName(tr("Columns"));
    list_->setDragDropMode(QAbstractItemView::InternalMove);
    list_->setMinimumHeight(list_lines * (list_->fontMetrics().height() + spacing::half_px));
    list_->installEventFilter(this);
    addWide(list_);
    auto* buttons = new QWidget(this);
    auto* line = new QHBoxLayout(buttons);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(spacing::grid_px);
    for (const auto& [name, text, by] : {std::tuple{"upButton", tr("&Up"), -1}, std::tuple{"downButton", tr("&Down"), 1}}) {
        auto* button = new QPushButton(text, buttons);
        button->setObjectName(QLatin1String(name));
        connect(button, &QPushButton::clicked, this, [this, step = by] { moveLine(step); });
        line->addWidget(button);
    }
    remove_->setObjectName(QStringLiteral("removeSetButton"));
    line->addStretch();
    line->addWidget(remove_);
    addWide(buttons);
    name_ = addLine(QStringLiteral("name"), tr("&Keep as"), tr("a name, to keep these columns as a set of yours"));
    addParagraph(QStringLiteral("columnsWords"),
                 tr("The table on the page, its copies, exports and reports have these columns, from left to right. At one "
                    "load the figures there stand in place of those as tested."));
    showSets();
    showKeys(chosen);
    if (chosen == ready_columns(readers_set)) sets_->setCurrentIndex(for_readers);
    if (chosen == ready_columns(spreadsheet_set)) sets_->setCurrentIndex(for_spreadsheet);
    for (auto set = own_.begin(); set != own_.end(); ++set)
        if (set->second == chosen) sets_->setCurrentIndex(first_own + static_cast<int>(std::distance(own_.begin(), set)));
    connect(sets_, &QComboBox::activated, this, &ColumnsDialog::useSet);
    connect(sets_, &QComboBox::currentIndexChanged, this, [this](int place) { remove_->setEnabled(place >= first_own); });
    connect(list_, &QListWidget::itemChanged, this, [this] { sets_->setCurrentIndex(as_ticked); });
    connect(list_->model(), &QAbstractItemModel::rowsMoved, this, [this] { sets_->setCurrentIndex(as_ticked); });
    connect(remove_, &QPushButton::clicked, this, &ColumnsDialog::removeSet);
    remove_->setEnabled(sets_->currentIndex() >= first_own);
}

void ColumnsDialog::showSets() {
    const QSignalBlocker still(sets_);
    sets_->clear();
    sets_->addItems({tr("as ticked below"), tr("for readers"), tr("for a spreadsheet: all columns")});
    for (const auto& [name, keys] : own_) sets_->addItem(text_of(name));
}

void ColumnsDialog::showKeys(const Keys& keys) {
    const QSignalBlocker still(list_);
    list_->clear();
    const std::vector<ColumnName> all = comparison_columns();
    const auto add = [this](const ColumnName& column, bool ticked) {
        auto* item = new QListWidgetItem(column.own ? tr("%1 (yours: not for readers)").arg(text_of(column.title)) : text_of(column.title), list_);
        item->setData(key_role, text_of(column.key));
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable | Qt::ItemIsDragEnabled);
        item->setCheckState(ticked ? Qt::Checked : Qt::Unchecked);
    };
    for (const std::string& key : keys)
        if (const auto column = std::ranges::find(all, key, &ColumnName::key); column != all.end()) add(*column, true);
    for (const ColumnName& column : all)
        if (!std::ranges::count(keys, column.key)) add(column, false);
    list_->setCurrentRow(0);
}

void ColumnsDialog::useSet(int place) {
    if (place == for_readers) showKeys(*ready_columns(readers_set));
    if (place == for_spreadsheet) showKeys(*ready_columns(spreadsheet_set));
    if (place >= first_own) showKeys(std::next(own_.begin(), place - first_own)->second);
}

void ColumnsDialog::removeSet() {
    const int place = sets_->currentIndex();
    if (place < first_own) return;
    const auto set = std::next(own_.begin(), place - first_own);
    changed_[set->first].clear();
    own_.erase(set);
    showSets();
    remove_->setEnabled(false);
}

void ColumnsDialog::moveLine(int by) {
    const int row = list_->currentRow(), to = row + by;
    if (row < 0 || to < 0 || to >= list_->count()) return;
    list_->insertItem(to, list_->takeItem(row));
    list_->setCurrentRow(to);
    sets_->setCurrentIndex(as_ticked);
}

bool ColumnsDialog::eventFilter(QObject* watched, QEvent* event) {
    if (watched == list_ && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->modifiers() == Qt::AltModifier && (key->key() == Qt::Key_Up || key->key() == Qt::Key_Down)) {
            moveLine(key->key() == Qt::Key_Up ? -1 : 1);
            return true;
        }
    }
    return FormDialog::eventFilter(watched, event);
}

ColumnsDialog::Keys ColumnsDialog::ticked() const {
    Keys keys;
    for (int row = 0; row < list_->count(); ++row)
        if (list_->item(row)->checkState() == Qt::Checked) keys.push_back(utf8_of(list_->item(row)->data(key_role).toString()));
    return keys;
}

void ColumnsDialog::read() {
    chosen_ = ticked();
    if (chosen_.empty()) explain(sets_, tr("No column is ticked: tick at least one."));
    const std::string name = text(name_);
    if (name == readers_set || name == spreadsheet_set) explain(name_, tr("This name belongs to a ready set; choose another."));
    else if (!name.empty()) changed_[name] = chosen_;
}

} // namespace ullage
