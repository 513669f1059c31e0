// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>

class QFrame;
class QLabel;
class QPushButton;
class QSplitter;
class QTableView;
class QTreeView;
class QWidget;

namespace ullage {

/// Colour of a label's text.
enum class Tone { ink, soft, accent, delivered, good, fault };
/// Weight of a finding, as a small coloured word; the word itself says the same, colour only helps.
enum class Chip { note, good, doubt, fault };
/// Sizes of text, all relative to the application's font.
enum class TextSize { small, caption, body, group, figure, title };

/// Size of text as a multiple of the application's font.
[[nodiscard]] double text_factor(TextSize size);

/// The application's font at `size` for what is painted by hand (delegates, charts); labels take set_text_style(), because
/// a style sheet takes a font set on a widget away again. `group` is in capitals; `figure` and `title` are bold. Figures are tabular in all of them.
[[nodiscard]] QFont text_font(TextSize size);

/// `font` with figures of equal width and height, for columns of numbers.
[[nodiscard]] QFont tabular(QFont font);

/// The button that does what the page is for; one a page.
void make_primary(QPushButton& button);
/// A button without a box until the pointer is over it; also for tool buttons.
void make_quiet(QWidget& button);
/// A bordered card.
void make_panel(QFrame& frame);
/// A hairline, horizontal or vertical as its layout stretches it.
void make_rule(QFrame& frame, bool vertical);
/// Text in `tone`, set at `size`.
void set_text_style(QLabel& label, Tone tone, TextSize size = TextSize::body);
/// A finding's weight beside its sentence.
void make_chip(QLabel& label, Chip chip);
/// Marks a field whose text cannot be used (or can again), besides the words that say why.
void set_wrong(QWidget& field, bool wrong);
/// A table without grid: whole rows selected, quiet headers, tabular figures, row height from the font.
void make_table(QTableView& table);
/// The list of units at the window's side.
void make_side_tree(QTreeView& tree);
/// A splitter whose grip is a hairline rather than a gap.
void make_thin(QSplitter& splitter);

} // namespace ullage
