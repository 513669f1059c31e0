// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/parts/page_parts.h"
#include "style/spoken_areas.h"
#include "style/wrapped_label.h"

#include <QEvent>
#include <QLabel>
#include <QPushButton>

namespace ullage {

namespace {

class LinesKeeper final : public QObject {
public:
    LinesKeeper(QWidget& part, int lines) : QObject(&part), part_(part), lines_(lines) {
        part.installEventFilter(this);
        keep();
    }

    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) keep();
        return QObject::eventFilter(watched, event);
    }

private:
    void keep() { part_.setMinimumHeight(lines_ * part_.fontMetrics().height()); }

    QWidget& part_;
    int lines_;
};

} // namespace

QLabel* new_paragraph(const char* name, Tone tone, TextSize size) {
    auto* label = new WrappedLabel;
    label->setObjectName(QString::fromLatin1(name));
    label->setTextFormat(Qt::PlainText);
    label->letBeMarked();
    set_text_style(*label, tone, size);
    return label;
}

QPushButton* new_button(const char* name, const QString& text) {
    auto* made = new QPushButton(text);
    made->setObjectName(QString::fromLatin1(name));
    return made;
}

void keep_lines(QWidget& part, int lines) { new LinesKeeper(part, lines); }

QScrollArea* scrolling(QWidget& content, QWidget* parent) {
    speak_scroll_areas();
    auto* area = new QScrollArea(parent);
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setWidget(&content);
    // setWidget() has filled both.
    area->viewport()->setAutoFillBackground(false);
    content.setAutoFillBackground(false);
    return area;
}

} // namespace ullage
