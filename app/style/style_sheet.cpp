// SPDX-License-Identifier: GPL-3.0-or-later
#include "style/style_sheet.h"

#include "style/roles.h"
#include "style/words.h"

#include <QPair>

namespace ullage {
namespace {

// @name stands for a colour of the palette.
constexpr const char* containers = R"(
QMainWindow, QDialog, QWizard { background: @ground; }
QFrame[panel="true"] { background: @panel; border: 1px solid @line; border-radius: 6px; }
QFrame[rule="true"] { background: @line; border: none; }
QLabel { background: transparent; }
QLabel[tone="soft"] { color: @soft; }
QLabel[tone="accent"] { color: @accent; }
QLabel[tone="delivered"] { color: @delivered; }
QLabel[tone="good"] { color: @good; }
QLabel[tone="fault"] { color: @fault_ink; }
QLabel[textSize="small"] { font-size: @small; }
QLabel[textSize="caption"] { font-size: @caption; }
QLabel[textSize="group"] { font-size: @caption; text-transform: uppercase; letter-spacing: 0.5px; }
QLabel[textSize="figure"] { font-size: @figure; font-weight: bold; }
QLabel[textSize="title"] { font-size: @title; font-weight: bold; }
QLabel[chip] { font-size: @caption; }
QLabel[chip="note"], QLabel[chip="good"] { background: @selection; color: @ink; border-radius: 3px; padding: 1px 6px; }
QLabel[chip="doubt"] { background: @doubt; color: @doubt_ink; border-radius: 3px; padding: 1px 6px; }
QLabel[chip="fault"] { background: @fault; color: @fault_ink; border-radius: 3px; padding: 1px 6px; }
QToolTip { background: @panel; color: @ink; border: 1px solid @line; padding: 4px 6px; }
QStatusBar { background: @ground; color: @soft; }
QStatusBar::item { border: none; }
QGroupBox { border: 1px solid @line; border-radius: 6px; margin-top: 10px; padding: 10px 8px 8px 8px; }
QGroupBox::title { subcontrol-origin: margin; left: 10px; padding: 0 4px; color: @soft; }
QScrollArea, QGraphicsView { background: transparent; border: none; }
QScrollArea > QWidget > QWidget[page="true"] { background: transparent; }
QSplitter::handle { background: transparent; }
QSplitter::handle:horizontal { width: 12px; }
QSplitter::handle:vertical { height: 12px; }
QSplitter[thin="true"]::handle { background: @line; }
QSplitter[thin="true"]::handle:horizontal { width: 1px; }
QSplitter[thin="true"]::handle:vertical { height: 1px; }
QSplitter::handle:hover { background: @selection; }
)";

constexpr const char* buttons = R"(
QPushButton, QToolButton { background: @panel; color: @ink; border: 1px solid @line; border-radius: 6px; padding: 5px 12px; }
QToolButton { padding: 5px 8px; }
QPushButton:hover, QToolButton:hover { border-color: @soft; }
QPushButton:pressed, QToolButton:pressed { background: @selection; }
QPushButton:focus, QToolButton:focus { border-color: @accent; }
QPushButton:checked, QToolButton:checked { border-color: @accent; color: @accent; }
QPushButton:disabled, QToolButton:disabled { color: @off; border-color: @line; background: @ground; }
QPushButton[primary="true"] { background: @accent; color: @on_accent; border-color: @accent; font-weight: bold; }
QPushButton[primary="true"]:hover { background: @accent_hover; border-color: @accent_hover; }
QPushButton[primary="true"]:pressed { background: @accent_pressed; border-color: @accent_pressed; }
QPushButton[primary="true"]:focus { border-color: @ink; }
QPushButton[primary="true"]:disabled { background: @line; color: @soft; border-color: @line; }
QPushButton[quiet="true"], QToolButton[quiet="true"] { background: transparent; border-color: transparent; }
QPushButton[quiet="true"]:hover, QToolButton[quiet="true"]:hover { background: @selection; }
QPushButton[quiet="true"]:focus, QToolButton[quiet="true"]:focus { border-color: @accent; }
QPushButton::menu-indicator, QToolButton::menu-indicator { image: url(:/ullage/icons/down-@shade.svg); width: 10px; height: 10px;
  subcontrol-position: right center; subcontrol-origin: padding; right: 4px; }
)";

constexpr const char* fields = R"(
QLineEdit, QPlainTextEdit, QTextEdit, QAbstractSpinBox, QComboBox {
  background: @field; color: @ink; border: 1px solid @edge; border-radius: 4px; padding: 4px 7px;
  selection-background-color: @accent; selection-color: @on_accent; }
QLineEdit:hover, QPlainTextEdit:hover, QAbstractSpinBox:hover, QComboBox:hover { border-color: @soft; }
QLineEdit:focus, QPlainTextEdit:focus, QTextEdit:focus, QAbstractSpinBox:focus, QComboBox:focus {
  background: @panel; border: 2px solid @accent; padding: 3px 6px; }
QLineEdit[wrong="true"], QPlainTextEdit[wrong="true"], QAbstractSpinBox[wrong="true"], QComboBox[wrong="true"] {
  border: 2px solid @fault_ink; padding: 3px 6px; }
QLineEdit:disabled, QPlainTextEdit:disabled, QAbstractSpinBox:disabled, QComboBox:disabled { color: @off; background: @ground; }
QLineEdit[readOnly="true"] { background: transparent; }
QAbstractSpinBox::up-button, QAbstractSpinBox::down-button { background: transparent; border: none; width: 16px; }
QAbstractSpinBox::up-arrow { image: url(:/ullage/icons/up-@shade.svg); width: 10px; height: 10px; }
QAbstractSpinBox::down-arrow { image: url(:/ullage/icons/down-@shade.svg); width: 10px; height: 10px; }
QComboBox { padding-right: 20px; }
QComboBox::drop-down { border: none; width: 20px; }
QComboBox::down-arrow { image: url(:/ullage/icons/down-@shade.svg); width: 10px; height: 10px; }
QComboBox QAbstractItemView { background: @panel; color: @ink; border: 1px solid @line; padding: 4px; outline: 0;
  selection-background-color: @selection; selection-color: @ink; }
QAbstractItemView QLineEdit, QAbstractItemView QLineEdit:focus { border: 1px solid @accent; border-radius: 0; padding: 0 4px; background: @panel; }
QProgressBar { background: @ground; border: 1px solid @line; border-radius: 4px; max-height: 8px; text-align: center; }
QProgressBar::chunk { background: @accent; border-radius: 3px; }
)";

constexpr const char* lists = R"(
QTableView, QTreeView, QListView { background: @panel; color: @ink; border: none; outline: 0; gridline-color: transparent;
  selection-background-color: @selection; selection-color: @ink; }
QTreeView[side="true"] { background: @ground; padding: 8px 0; }
QTreeView[side="true"]::item { padding: 5px 2px; border: none; }
QTreeView[side="true"]::item:hover, QTreeView[side="true"]::item:selected { background: transparent; }
QHeaderView { background: @panel; border: none; font-size: @caption; }
QHeaderView::section { background: @panel; color: @soft; border: none; border-bottom: 1px solid @line; padding: 6px 7px; font-weight: normal; }
QTableCornerButton::section { background: @panel; border: none; border-bottom: 1px solid @line; }
QTabWidget::pane { border: none; border-top: 1px solid @line; }
QTabWidget::tab-bar { left: 8px; }
QTabBar { background: transparent; qproperty-drawBase: 0; }
QTabBar::tab { background: transparent; color: @soft; border: none; border-bottom: 2px solid transparent; padding: 7px 2px; margin: 0 8px; }
QTabBar::tab:hover { color: @ink; }
QTabBar::tab:selected { color: @ink; border-bottom: 2px solid @accent; }
QTabBar::tab:focus { color: @accent; }
QTabBar::tab:disabled { color: @off; }
QTabBar::scroller { width: 44px; }
QTabBar QToolButton { padding: 0; border-color: transparent; border-radius: 0; }
QTabBar QToolButton::left-arrow { image: url(:/ullage/icons/left-@shade.svg); width: 12px; height: 12px; }
QTabBar QToolButton::right-arrow { image: url(:/ullage/icons/right-@shade.svg); width: 12px; height: 12px; }
)";

constexpr const char* bars = R"(
QMenuBar { background: @ground; color: @ink; border-bottom: 1px solid @line; padding: 2px 6px; }
QMenuBar::item { background: transparent; padding: 4px 10px; border-radius: 4px; }
QMenuBar::item:selected, QMenuBar::item:pressed { background: @selection; color: @ink; }
QMenu { background: @panel; color: @ink; border: 1px solid @line; padding: 4px; }
QMenu::item { padding: 5px 24px 5px 24px; border-radius: 4px; background: transparent; }
QMenu::item:selected { background: @selection; color: @ink; }
QMenu::item:disabled { color: @off; }
QMenu::separator { height: 1px; background: @line; margin: 4px 8px; }
QMenu::icon { padding-left: 4px; }
QScrollBar { background: transparent; border: none; margin: 0; }
QScrollBar:vertical { width: 10px; }
QScrollBar:horizontal { height: 10px; }
QScrollBar::handle { background: @handle; border-radius: 3px; margin: 2px; }
QScrollBar::handle:vertical { min-height: 28px; }
QScrollBar::handle:horizontal { min-width: 28px; }
QScrollBar::handle:hover { background: @soft; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; border: none; background: none; }
QScrollBar::add-page, QScrollBar::sub-page { background: none; }
QAbstractScrollArea::corner { background: transparent; border: none; }
)";

QString length_text(const QFont& font, double factor) {
    if (font.pointSizeF() > 0) return QString::number(font.pointSizeF() * factor, 'f', 2) + QStringLiteral("pt");
    return QString::number(qMax(1, qRound(font.pixelSize() * factor))) + QStringLiteral("px");
}

} // namespace

QString style_sheet(const Palette& p, const QFont& font) {
    QString text;
    for (const char* part : {containers, buttons, fields, lists, bars}) text += raw_text(part);
    for (const auto& [name, size] : {QPair("@small", TextSize::small), QPair("@caption", TextSize::caption), QPair("@figure", TextSize::figure),
                                     QPair("@title", TextSize::title)})
        text.replace(QLatin1String(name), length_text(font, text_factor(size)));
    // The longer of two names with a common beginning comes first, or the shorter would eat into it.
    const QPair<const char*, QColor> colours[] = {{"@accent_hover", blended(p.ink, p.accent, 0.12)},
                                                  {"@accent_pressed", blended(p.ink, p.accent, 0.25)},
                                                  {"@on_accent", p.on_accent},
                                                  {"@accent", p.accent},
                                                  {"@ground", p.ground},
                                                  {"@panel", p.panel},
                                                  {"@line", p.line},
                                                  {"@edge", p.edge},
                                                  {"@ink", p.ink},
                                                  {"@soft", p.soft},
                                                  {"@selection", p.selection},
                                                  {"@delivered", p.delivered},
                                                  {"@good", p.good},
                                                  {"@doubt_ink", p.doubt_ink},
                                                  {"@doubt", p.doubt},
                                                  {"@fault_ink", p.fault_ink},
                                                  {"@fault", p.fault},
                                                  {"@field", blended(p.ground, p.panel, 0.75)},
                                                  {"@off", blended(p.soft, p.panel, 0.65)},
                                                  {"@hover", blended(p.selection, p.ground, 0.5)},
                                                  {"@handle", blended(p.soft, p.panel, 0.35)}};
    for (const auto& [name, colour] : colours) text.replace(QLatin1String(name), colour.name());
    return text.replace(QLatin1String("@shade"), QLatin1String(p.dark ? "dark" : "light"));
}

} // namespace ullage
