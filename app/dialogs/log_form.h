// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/form_dialog.h"
#include "model/run_record.h"
#include "trace/trace_import.h"

#include <map>
#include <string>
#include <vector>

class QCheckBox;
class QProgressBar;
class QTableWidget;

namespace ullage {

/// How a meter's log is read before it is imported: what was found in its beginning, with the first rows and the doubtful ones, each of it open to
/// correction; what the log leaves open has to be answered first. On submitted() the caller imports with detection() and options(), whose progress
/// moves the form's bar and carries its Cancel, and then calls accept() or refuse().
class LogForm final : public FormDialog {
    Q_OBJECT
public:
    /// `kept` are the answers of Document::traceAnswers(); the run's own meter is chosen at first.
    LogForm(const RunRecord& record, const std::vector<Meter>& meters, QString path, std::map<std::string, std::string> kept,
            QWidget* parent = nullptr);

    [[nodiscard]] QString path() const { return path_; }
    [[nodiscard]] const TraceDetection& detection() const { return preview_.detection; }
    [[nodiscard]] std::optional<MeterId> meterUuid() const;
    [[nodiscard]] bool follow() const; ///< another program is still writing the log
    /// With a progress that shows itself here and returns false after Cancel. The form must outlive its use.
    [[nodiscard]] TraceReadOptions options();
    /// After an import: closes the form; where rows were left out or taken with a doubt, lists them first.
    void showImported(const TraceTally& tally);
    /// After the rest of a log was taken that the run had already.
    void showTaken();
    /// After an import that failed or was cancelled: says so and gives the fields free again.
    void refuseImport(const QString& sentence);

public slots:
    void reject() override; ///< while an import runs: cancels that

protected:
    void read() override;

private:
    void addChoices();
    void look();
    void showFound();
    void showRows();
    void chooseRole(std::size_t column, int place);
    void estimateOffset();
    void checkWhole();
    [[nodiscard]] LayoutAnswers answers() const;
    [[nodiscard]] Result<TraceReadOptions> readOptions() const;
    [[nodiscard]] bool goOn(std::int64_t bytes);
    void setBusy(bool busy);

    RunRecord record_;
    QString path_;
    std::map<std::string, std::string> kept_;
    TracePreview preview_;
    TraceReadOptions options_;
    bool busy_ = false, cancelled_ = false;
    std::map<std::size_t, ColumnRole> told_; ///< columns that the user has settled
    std::optional<UtcMs> estimated_ms_;      ///< what the offset field held after an estimate
    std::optional<double> estimated_u_s_;
    QLabel *found_, *questions_, *doubts_, *estimate_;
    QTableWidget *rows_, *skipped_rows_;
    QComboBox *meter_, *delimiter_, *decimal_, *date_order_, *times_, *register_unit_, *gauge_unit_;
    QLineEdit *zone_, *start_, *offset_;
    QCheckBox* follow_;
    QPushButton *estimate_button_, *check_button_;
    QProgressBar* progress_;
};

} // namespace ullage
