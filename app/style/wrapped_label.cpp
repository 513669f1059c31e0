// SPDX-License-Identifier: GPL-3.0-or-later
#include "style/wrapped_label.h"

#include <utility>

namespace ullage {

WrappedLabel::WrappedLabel(const QString& text, QWidget* parent) : QLabel(text, parent) { setWordWrap(true); }

void WrappedLabel::know() const {
    ensurePolished(); // a style sheet may give it another font
    Look look{text(), font(), contentsMargins() + margin(), textInteractionFlags(), indent(), minimumSize(), maximumSize()};
    if (look == known_look_) return;
    known_look_ = std::move(look);
    hint_ = least_ = {};
    known_.fill({});
}

QSize WrappedLabel::sizeHint() const {
    know();
    if (!hint_.isValid()) hint_ = QLabel::sizeHint();
    return hint_;
}

QSize WrappedLabel::minimumSizeHint() const {
    know();
    if (!least_.isValid()) least_ = QLabel::minimumSizeHint();
    return least_;
}

int WrappedLabel::heightForWidth(int width) const {
    know();
    for (const Height& known : known_)
        if (known.at_width_px == width) return known.height_px;
    const int height = QLabel::heightForWidth(width);
    known_[next_] = {width, height};
    next_ = (next_ + 1) % known_.size();
    return height;
}

} // namespace ullage
