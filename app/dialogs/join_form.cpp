// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/join_form.h"

#include "style/spacing.h"
#include "style/words.h"

#include <QHBoxLayout>
#include <QListWidget>
#include <QPushButton>
#include <QTreeWidget>

#include <algorithm>

namespace ullage {

namespace {

constexpr int key_of_difference = Qt::UserRole;
constexpr int arrival_lines = 5, difference_lines = 7;
constexpr int join_form_letters = 92, widest_join_form_px = 1100;
enum JoinColumn { field_column, here_column, there_column, join_columns };

int height_of(const QWidget& widget, int lines) { return lines * (widget.fontMetrics().height() + spacing::half_px); }

/// What a difference without fields comes to, or one whose fields stand below it.
QString matter_words(const JoinDifference& difference) {
    switch (difference.matter) {
    case JoinMatter::withdrawn_here: return JoinForm::tr("withdrawn here, not there");
    case JoinMatter::withdrawn_there: return JoinForm::tr("withdrawn there, not here");
    case JoinMatter::same_readings: return JoinForm::tr("the same readings as a run here: stays out unless ticked");
    case JoinMatter::overlapping: return JoinForm::tr("tells of the same time as a log here, which it would replace");
    case JoinMatter::differs: break;
    }
    return difference.changed_there_only ? JoinForm::tr("changed there alone") : JoinForm::tr("not the same");
}

} // namespace

JoinForm::JoinForm(const JoinPlan& plan, const QString& other, QWidget* parent)
    : FormDialog(tr("Join another logbook"), tr("Join"), parent), plan_(plan) {
    setObjectName(QStringLiteral("joinForm"));
    setMinimumWidth(std::min(fontMetrics().averageCharWidth() * join_form_letters, widest_join_form_px));
    showArrivals(other);
    if (!plan_.differences.empty()) showDifferences();
    showNotices();
}

void JoinForm::showArrivals(const QString& other) {
    if (plan_.arrivals.empty()) {
        addParagraph(QStringLiteral("arrivalsWords"), tr("%1 has nothing that this logbook lacks.").arg(other.toHtmlEscaped()));
        return;
    }
    addParagraph(QStringLiteral("arrivalsWords"), tr("This comes in from %1:").arg(other.toHtmlEscaped()));
    auto* list = new QListWidget(this);
    list->setObjectName(QStringLiteral("arrivalsList"));
    list->setAccessibleName(tr("What comes in"));
    list->setWordWrap(true);
    list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list->setMinimumHeight(height_of(*list, std::min(arrival_lines, static_cast<int>(plan_.arrivals.size()) + 1)));
    for (const JoinArrival& arrival : plan_.arrivals) {
        const QString title = text_of(arrival.title), content = text_of(say_arrival(arrival));
        const QString line = content.isEmpty() ? title : tr("%1: %2", "a run, and what comes in of it").arg(title, content);
        list->addItem(arrival.needs.empty() ? line : tr("%1 – only where its line below is ticked").arg(line));
    }
    addWide(list);
}

void JoinForm::showDifferences() {
    addParagraph(QStringLiteral("differencesWords"), tr("This differs. It stays as it is here; tick what is to be taken from the other logbook:"));
    differences_ = new QTreeWidget(this);
    differences_->setObjectName(QStringLiteral("differencesTree"));
    differences_->setAccessibleName(tr("What differs"));
    differences_->setColumnCount(join_columns);
    differences_->setHeaderLabels({tr("take from the other"), tr("here"), tr("in the other")});
    differences_->setRootIsDecorated(false);
    differences_->setAllColumnsShowFocus(true);
    differences_->setMinimumHeight(height_of(*differences_, difference_lines));
    for (const JoinDifference& difference : plan_.differences) {
        const QString title = text_of(difference.title);
        auto* item = new QTreeWidgetItem(differences_, {tr("%1: %2", "a record, and in what it differs").arg(title, matter_words(difference))});
        item->setData(field_column, key_of_difference, text_of(difference.key()));
        item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
        item->setCheckState(field_column, Qt::Unchecked);
        item->setFirstColumnSpanned(true);
        item->setToolTip(field_column, item->text(field_column));
        for (const JoinField& field : difference.fields) {
            const auto shown = [](const Message& value) { return value.empty() ? tr("not stated") : text_of(value); };
            auto* line = new QTreeWidgetItem(item, {text_of(field.name), shown(field.here), shown(field.there)});
            for (const int column : {here_column, there_column}) line->setToolTip(column, line->text(column));
            line->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
        }
    }
    differences_->expandAll();
    differences_->setItemsExpandable(false);
    constexpr int field_letters = 30, value_letters = 28;
    const int letter_px = differences_->fontMetrics().averageCharWidth();
    differences_->setColumnWidth(field_column, field_letters * letter_px);
    differences_->setColumnWidth(here_column, value_letters * letter_px);
    differences_->setCurrentItem(differences_->topLevelItem(0));
    addWide(differences_);
    auto* buttons = new QWidget(this);
    auto* line = new QHBoxLayout(buttons);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(spacing::grid_px);
    const struct {
        const char* name;
        QString text, tip;
        std::set<std::string> keys;
    } choices[] = {{"keepAllButton", tr("&Keep all"), tr("Nothing is taken from the other logbook"), {}},
                   {"takeNewerButton", tr("Take &newer"), tr("Takes what was changed in the other logbook alone"), plan_.keys_changed_there_only()},
                   {"takeAllButton", tr("Take &all"), tr("Takes every difference from the other logbook"), plan_.all_keys()}};
    for (const auto& choice : choices) {
        auto* button = new QPushButton(choice.text, buttons);
        button->setObjectName(QLatin1String(choice.name));
        button->setToolTip(choice.tip);
        button->setAutoDefault(false);
        connect(button, &QPushButton::clicked, this, [this, keys = choice.keys] { tick(keys); });
        line->addWidget(button);
    }
    line->addStretch();
    addWide(buttons);
}

void JoinForm::showNotices() {
    if (plan_.notices.empty()) return;
    QStringList words;
    for (const Message& notice : plan_.notices) words << text_of(notice).toHtmlEscaped();
    constexpr qsizetype most_told = 6;
    if (words.size() > most_told) {
        const qsizetype more = words.size() - most_told;
        words = words.mid(0, most_told);
        words << tr("%1 more notices like these.").arg(more);
    }
    addParagraph(QStringLiteral("noticesWords"), words.join(QStringLiteral("<br>")));
}

void JoinForm::tick(const std::set<std::string>& keys) {
    for (int row = 0; row < differences_->topLevelItemCount(); ++row) {
        auto* item = differences_->topLevelItem(row);
        const bool taken = keys.contains(utf8_of(item->data(field_column, key_of_difference).toString()));
        item->setCheckState(field_column, taken ? Qt::Checked : Qt::Unchecked);
    }
}

void JoinForm::read() {
    taken_.clear();
    for (int row = 0; differences_ && row < differences_->topLevelItemCount(); ++row) {
        const auto* item = differences_->topLevelItem(row);
        if (item->checkState(field_column) == Qt::Checked) taken_.insert(utf8_of(item->data(field_column, key_of_difference).toString()));
    }
}

} // namespace ullage
