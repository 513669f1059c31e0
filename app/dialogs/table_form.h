// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/chart_data.h"
#include "dialogs/form_dialog.h"
#include "foreign_tables/table_log.h"

#include <functional>
#include <map>
#include <set>
#include <string>
#include <vector>

class QGridLayout;
class QTableWidget;

namespace ullage {

class LineChart;

/// What the form of a table needs to know of its surroundings.
struct TableFormContext {
    std::vector<Unit> units;
    std::vector<Meter> meters;
    UtcMs now_ms = 0;
    /// Answers remembered for tables with a head of this signature, as table_answers_text() has them; empty: none.
    std::function<QString(const QString& signature)> remembered;
    /// What the run that is about to come in looks like.
    std::function<ChartContent(const RunRecord& record)> draw;
};

/// The assistant that brings in a foreign table of readings: its sheet, a role above each column, what was detected and why, what it leaves open, the
/// rows that are not taken, the run drawn, and what no table says. On submitted() the caller imports records() and then calls accept() or refuse().
class TableForm final : public FormDialog {
    Q_OBJECT
public:
    TableForm(TableBook book, const QString& name, TableFormContext context, QWidget* parent = nullptr);

    [[nodiscard]] const TableReading& reading() const { return reading_; }
    /// Answers worth remembering for tables with the same head.
    [[nodiscard]] TableAnswers answers() const;
    [[nodiscard]] const std::vector<TableRun>& runs() const { return runs_; } ///< after submitted()

protected:
    void read() override;

private:
    void addOpenFields();
    void addFactFields();
    void chooseFirstSheet();
    void takeSheet();
    /// Understands the sheet anew and shows all that follows.
    void look();
    void showFound();
    void showOpenFields();
    void showLeftRows();
    void showRunChoice();
    void showRun();
    void showFactFields();
    void showRatedFields();
    void chooseRole(std::size_t column, int place);
    [[nodiscard]] const TableSheet& sheet() const;
    [[nodiscard]] bool columnNamesUnits() const;
    [[nodiscard]] bool isLog(const ForeignRun& run) const; ///< its rows are kept as one
    /// A meter as it is stated here: a known one, a new one with name and limit, or that it is not known.
    struct MeterFields {
        QComboBox* choice = nullptr;
        QLineEdit *name = nullptr, *limit = nullptr;
    };
    [[nodiscard]] MeterFields addMeterFields(const QString& name, const QString& title);
    void showMeterFields(const MeterFields& fields, bool wanted, const QString& stated);
    [[nodiscard]] std::optional<Meter> meterOf(const MeterFields& fields) const;
    void explainMeter(const MeterFields& fields);
    [[nodiscard]] bool notes(std::optional<double> ReadingValues::*value) const; ///< in any run
    [[nodiscard]] bool metered() const;
    [[nodiscard]] bool twiceMetered() const;
    /// The unit that a run belongs to: a known one, else a new one with its name; empty where none is named.
    [[nodiscard]] Unit unitOf(const ForeignRun& run) const;
    [[nodiscard]] std::vector<std::string> newUnits() const;
    [[nodiscard]] TableFacts facts(const ForeignRun& run) const; ///< as far as they are stated
    void explainOpen();
    void explainMissing();

    TableBook book_;
    TableFormContext context_;
    TableReading reading_;
    TableAnswers kept_;                     ///< remembered for this head
    std::map<std::size_t, TableRole> told_; ///< columns that the user has settled
    std::set<TableQuestion> asked_;         ///< ever, of this sheet: their fields stay in sight
    std::vector<TableRun> runs_;
    QLabel *found_, *questions_, *left_words_;
    QTableWidget *grid_, *left_rows_;
    LineChart* chart_;
    QComboBox *sheet_ = nullptr, *date_order_ = nullptr, *decimal_ = nullptr, *register_unit_ = nullptr, *elapsed_unit_ = nullptr, *gauge_ = nullptr,
              *times_ = nullptr, *parting_ = nullptr, *rows_as_ = nullptr, *run_ = nullptr;
    QLineEdit *year_ = nullptr, *starts_ = nullptr, *zone_ = nullptr;
    MeterFields meter_, second_meter_;
    QComboBox *unit_ = nullptr, *ended_ = nullptr, *full_ = nullptr, *kind_ = nullptr;
    QLineEdit* load_ = nullptr;
    QWidget* rated_box_ = nullptr;
    QGridLayout* rated_grid_ = nullptr;
    std::map<std::string, QLineEdit*> rated_edits_;
};

} // namespace ullage
