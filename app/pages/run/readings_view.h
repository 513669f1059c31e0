// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <QTableView>

namespace ullage {

class ReadingsModel;

/// The readings table: columns sized from the font, day headings across, words in the middle while it is empty. F2, Enter or a
/// double click asks to amend, Delete to withdraw: the chosen readings, else that of the current row. What is out of sight it brings into sight
/// first.
class ReadingsView final : public QTableView {
    Q_OBJECT
public:
    explicit ReadingsView(ReadingsModel& model, QWidget* parent = nullptr);

    void setEmptyText(const QString& text);
    /// Selects these readings and brings the first into sight; announces nothing.
    void selectReadings(const std::vector<ReadingId>& readingUuids);
    [[nodiscard]] std::vector<ReadingId> selectedReadings() const; ///< without withdrawn ones
    /// Width that shows every column whole, remarks cut to their heading, pixels.
    [[nodiscard]] int neededWidth() const;

signals:
    void readingsChosen(const std::vector<ReadingId>& readingUuids); ///< the user changed the selection
    void amendAsked(const ReadingId& readingUuid);
    void withdrawAsked(); ///< the selected ones

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void spanDays();
    void fitColumns();
    [[nodiscard]] int textWidth(int column) const;

    ReadingsModel& model_;
    QString empty_text_;
    bool selecting_ = false;
    bool at_end_ = true;
};

} // namespace ullage
