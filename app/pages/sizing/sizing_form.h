// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sizing/sizing_choices.h"

#include <QWidget>

#include <functional>
#include <vector>

class QDoubleSpinBox;
class QGridLayout;
class QLabel;

namespace ullage {

/// The choices of a sizing as fields. Each number stays within its range by itself; the twelve months may stay unstated.
class SizingForm final : public QWidget {
    Q_OBJECT
public:
    explicit SizingForm(QWidget* parent = nullptr);

    [[nodiscard]] SizingChoices choices() const;
    void setChoices(const SizingChoices& choices);

    /// The choices as a line for the settings; setText() takes it, and passes over what it cannot use.
    [[nodiscard]] QString text() const;
    void setText(const QString& text);

signals:
    void changed();

private:
    /// One field with its place in the choices.
    struct Field {
        QString key;
        QDoubleSpinBox* spin;
        std::function<double(const SizingChoices&)> get;
        std::function<void(SizingChoices&, double)> set;
    };
    struct Range {
        double low, high, step;
        int decimals;
    };
    void addGroup(QGridLayout& grid, const QString& title);
    void addField(QGridLayout& grid, const char* key, const QString& title, const QString& suffix, const Range& range, const QString& tip,
                  std::function<double(const SizingChoices&)> get, std::function<void(SizingChoices&, double)> set);
    void addMonths(QGridLayout& grid);
    void addBattery(QGridLayout& grid);

    std::vector<Field> fields_;
    int place_ = 0; ///< of the next field: two stand side by side
    bool filling_ = false;
};

} // namespace ullage
