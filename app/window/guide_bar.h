// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QWidget>

class QLabel;
class QPushButton;

namespace ullage {

class WrappedLabel;

/// The steps of a guided first run, in their order.
enum class GuideStep { unit, meter, run, readings, end, result };
inline constexpr int guide_steps = 6;

/// What the bar says at one step.
struct GuideWords {
    QString task;   ///< what to do now
    QString trial;  ///< what to type for a trial without a unit at hand; may be empty
    QString button; ///< that leads there
};

/// The strip above the page that says the one next step of a guided first run.
class GuideBar final : public QWidget {
    Q_OBJECT
public:
    explicit GuideBar(QWidget* parent = nullptr);

    void tell(GuideStep step, const GuideWords& words);
    void dismiss();

signals:
    void goAsked();    ///< to where the step is done
    void leaveAsked(); ///< the guide, or at the last step its end

private:
    QLabel *chip_, *course_;
    WrappedLabel *task_, *trial_;
    QPushButton *go_, *leave_;
};

} // namespace ullage
