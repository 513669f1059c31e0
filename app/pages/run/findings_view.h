// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "pages/run/findings_items.h"

#include <QFrame>
#include <QScrollArea>

#include <vector>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace ullage {

/// One finding: tag, sentence, evidence. A click, Space or Enter selects its readings.
class FindingRow final : public QFrame {
    Q_OBJECT
public:
    explicit FindingRow(const FindingItem& item, QWidget* parent = nullptr);
    [[nodiscard]] const FindingItem& item() const { return item_; }
    void setSelected(bool selected);
    [[nodiscard]] bool isSelected() const { return selected_; }

signals:
    void activated();
    void accepted(); ///< the tester agrees with the assumption

protected:
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void applyFonts();

    FindingItem item_;
    QLabel *sentence_label_, *evidence_label_;
    bool selected_ = false;
};

/// The findings of a run, one below the other; scrolls when they are many. Up and Down move between them. What is not known is folded behind a button
/// that counts it, unless nothing else is said.
class FindingsView final : public QScrollArea {
    Q_OBJECT
public:
    explicit FindingsView(QWidget* parent = nullptr);

    /// Shows findings; an unchanged list keeps its selection. `empty_text` stands where there are none.
    void setItems(const std::vector<FindingItem>& items, const QString& empty_text);
    [[nodiscard]] std::vector<FindingRow*> rows() const { return rows_; }
    /// Takes the selection from the list without announcing it.
    void clearSelection();

signals:
    void readingsChosen(const std::vector<ReadingId>& readingUuids);
    void assumptionAccepted(const ReadingId& readingUuid);

protected:
    void keyPressEvent(QKeyEvent* event) override;

private:
    void rebuild();
    void select(FindingRow* chosen);
    void fold(bool folded);

    std::vector<FindingItem> items_;
    QString empty_text_;
    QVBoxLayout* column_;
    std::vector<FindingRow*> rows_;
    QPushButton* unknown_button_ = nullptr; ///< absent where nothing is folded
    bool folded_ = true;                    ///< as the tester left it
};

} // namespace ullage
