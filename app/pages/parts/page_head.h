// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QGridLayout;

namespace ullage {

/// The head of a page: words at the left, buttons at the right; the buttons stand below the words where one line is too narrow for both.
class PageHead final : public QWidget {
    Q_OBJECT
public:
    /// Takes both over.
    PageHead(QWidget* words, QWidget* buttons, QWidget* parent = nullptr);

    /// Wide enough for the wider of the two.
    [[nodiscard]] QSize minimumSizeHint() const override;
    /// Looks again whether one line is enough; for after the words have changed.
    void fit();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    QWidget *words_, *buttons_;
    QGridLayout* grid_;
};

} // namespace ullage
