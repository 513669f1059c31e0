// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <QWidget>

class QBoxLayout;
class QFrame;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace ullage {

/// What a newcomer sees: what the program does, and three doors into it: the sample, a guided first run, a table of one's own. With a logbook open
/// that holds no unit yet the doors lead into that logbook.
class WelcomePage final : public QWidget {
    Q_OBJECT
public:
    explicit WelcomePage(QWidget* parent = nullptr);

    void setLogbookOpen(bool open);
    void setRecentFiles(const QStringList& files);
    void setGuideShown(bool shown); ///< the guide goes on above, so its door is not needed

signals:
    void newLogbookAsked();
    void openLogbookAsked();
    void sampleLogbookAsked();
    void guideAsked();
    void tableAsked();
    void recentFileAsked(const QString& path);
    void addUnitAsked();
    void addMeterAsked();
    void importAsked();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    enum class When { always, without_logbook, with_logbook };
    QWidget* makeHead();
    QWidget* makeOtherWays();
    /// A card with a picture and words, and the place of its buttons.
    struct Door {
        QFrame* card;
        QVBoxLayout* buttons;
    };
    Door makeDoor(const QIcon& picture, const QString& title, const QString& words);
    QPushButton* addButton(QBoxLayout& line, const char* name, const QString& text, When when, void (WelcomePage::*asked)());
    void showDoors();
    void arrange(); ///< side by side where that is wide enough

    QLabel* lead_;
    QWidget* middle_;
    QBoxLayout* doors_;
    QFrame *sample_ = nullptr, *guide_ = nullptr, *own_ = nullptr, *first_ = nullptr;
    QList<QPushButton*> without_logbook_, with_logbook_;
    QWidget *recent_, *other_ways_ = nullptr;
    QVBoxLayout* recent_list_;
    bool open_ = false, guide_shown_ = false;
    bool any_recent_ = false;
};

} // namespace ullage
