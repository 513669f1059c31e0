// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/report_form.h"
#include "formats/report/report_unit.h"
#include "model/publisher.h"

#include <QStringList>

#include <string>
#include <utility>
#include <vector>

class QCheckBox;
class QListWidget;
class QPlainTextEdit;

namespace ullage {

/// A photo that may go into a report.
struct OfferedPhoto {
    PhotoId uuid;
    std::string caption;
};

/// What goes into the report of a unit, who publishes it, and in which form.
class UnitReportForm final : public ReportForm {
    Q_OBJECT
public:
    UnitReportForm(const QString& unit_name, Paper paper, const Publisher& publisher, const std::vector<OfferedPhoto>& photos,
                   QWidget* parent = nullptr);

    // As submitted.
    [[nodiscard]] const UnitReportChoice& choice() const { return choice_; }
    [[nodiscard]] const Publisher& publisher() const { return publisher_; }
    [[nodiscard]] const std::vector<PhotoId>& photos() const { return photos_; } ///< those chosen, in the order offered

protected:
    void read() override;

private:
    void addParts(bool with_photos);
    void addPhotos(const std::vector<OfferedPhoto>& photos);
    void addPublisher();

    UnitReportChoice choice_;
    Publisher publisher_;
    std::vector<PhotoId> photos_;
    QComboBox* length_;
    std::vector<std::pair<UnitReportPart, QCheckBox*>> parts_;
    QListWidget* photo_list_ = nullptr; ///< null without photos
    QLineEdit *name_, *title_, *licence_;
    QPlainTextEdit* introduction_;
};

} // namespace ullage
