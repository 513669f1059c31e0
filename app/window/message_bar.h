// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QWidget>

class QLabel;
class QPushButton;

namespace ullage {

class WrappedLabel;

/// A line that says what went wrong, or what should be known, until it is dismissed or answered by a later success. A second message
/// before that is added, not put in the place of the first. It lies over the foot of the page, so that nothing moves under a hand.
class MessageBar final : public QWidget {
    Q_OBJECT
public:
    /// Lies over `page`, as a child of the page's parent, which must be the page's by now.
    explicit MessageBar(QWidget& page);

    void showError(const QString& sentence);
    void showNote(const QString& sentence);
    /// A note that a file stands at `path`, with buttons that open it and its folder by the desktop's means.
    void showSaved(const QString& sentence, const QString& path);
    void dismiss();
    [[nodiscard]] QString message() const; ///< empty when nothing is shown

protected:
    bool eventFilter(QObject* watched, QEvent* event) override; ///< of the page: it has moved or has another size
    bool event(QEvent* event) override;                         ///< another height is asked for

private:
    void add(const QString& sentence, bool error);
    void place();

    QWidget& page_;
    QLabel* chip_;
    WrappedLabel* words_;
    QPushButton *open_, *folder_;
    QString saved_path_; ///< of the last file that a note tells of; empty without one
    bool error_ = false;
};

} // namespace ullage
