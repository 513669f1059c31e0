// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/load_list_form.h"

#include "style/words.h"

#include <QLineEdit>

namespace ullage {

LoadListForm::LoadListForm(const LoadList& list, QWidget* parent)
    : FormDialog(list.uuid.empty() ? tr("Add load list") : tr("Load list %1").arg(text_of(list.name)),
                 list.uuid.empty() ? tr("Add load list") : tr("Save load list"), parent),
      list_(list) {
    setObjectName(QStringLiteral("loadListForm"));
    name_ = addLine(QStringLiteral("name"), tr("&Name"), tr("what it is for, such as: show night"));
    remark_ = addLine(QStringLiteral("remark"), tr("Remar&k"));
    name_->setText(raw_text(list.name));
    remark_->setText(raw_text(list.remark));
    name_->setFocus();
}

void LoadListForm::read() {
    list_.name = text(name_, tr("The load list needs a name, by which the comparison calls it."));
    list_.remark = text(remark_);
}

} // namespace ullage
