// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/method_form.h"

#include "base/number.h"
#include "dialogs/field_text.h"
#include "measure/method_settings.h"
#include "style/words.h"
#include "unit/repeats.h"

#include <QComboBox>
#include <QLineEdit>

namespace ullage {

namespace {

constexpr std::string_view rule_key = "simple_acceptance";

QString unit_words(const MethodSetting& setting) {
    return setting.unit.empty() ? QString() : QStringLiteral(" ") + text_of(std::string(setting.unit));
}

/// A number, with its unit or without, within what the setting allows.
Result<double> parse_setting(std::string_view text, const MethodSetting& setting) {
    const FieldLimits limits{say(setting.title), false};
    const Result<double> value = number_in({{std::string(setting.unit), 1}}, limits)(text);
    if (!value) return value;
    if (const Result<void> good = check_method_setting(std::string(setting.key), value.value()); !good) return good.error();
    return value;
}

} // namespace

MethodForm::MethodForm(const std::map<std::string, double>& stated, const MeasureOptions& in_force, QWidget* parent)
    : FormDialog(tr("Method"), tr("Use these"), parent), stated_(stated) {
    setObjectName(QStringLiteral("methodForm"));
    addParagraph(QStringLiteral("methodWords"), tr("What every analysis of this logbook takes for granted. Leave a field empty for the usual figure. "
                                                   "Reports print the figures that they went by."));
    for (const MethodSetting& setting : all_method_settings()) {
        fields_.push_back(nullptr);
        if (setting.key == rule_key) continue;
        const QString title = text_of(begin_sentence(say(setting.title)));
        fields_.back() = addLine(text_of(std::string(setting.key)), title,
                                 tr("usual: %1%2").arg(text_of(say_digits(exact_text(setting.usual()))), unit_words(setting)));
        if (const auto known = stated.find(std::string(setting.key)); known != stated.end())
            fields_.back()->setText(text_of(say_digits(exact_text(known->second))) + unit_words(setting));
    }
    rule_ = addChoice(QStringLiteral("rule"), tr("A claim is decided by the"));
    rule_->setMinimumContentsLength(15); // both choices whole, also beside a scroll bar
    rule_->addItem(tr("whole interval"));
    rule_->addItem(tr("value alone"));
    const auto rule = stated.find(std::string(rule_key));
    rule_->setCurrentIndex(rule != stated.end() && rule->second != 0 ? 1 : 0);
    addParagraph(QStringLiteral("repeatabilityWords"),
                 tr("Now in use: drains repeat within %1.").arg(text_of(repeatability_words(in_force)).toHtmlEscaped()));
    fields_.front()->setFocus();
}

void MethodForm::read() {
    stated_.clear();
    std::size_t i = 0;
    for (const MethodSetting& setting : all_method_settings())
        if (QLineEdit* field = fields_[i++])
            if (const auto value = number(field, [&setting](std::string_view text) { return parse_setting(text, setting); }))
                stated_[std::string(setting.key)] = *value;
    if (rule_->currentIndex() == 1) stated_[std::string(rule_key)] = 1;
}

} // namespace ullage
