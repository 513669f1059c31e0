// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/source_form.h"

#include "base/number.h"
#include "dialogs/field_text.h"
#include "dialogs/live_face.h"
#include "style/words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage {

namespace {

constexpr int look_every_trial_ms = 200;
constexpr int field_lines = 4;

QString kind_title(SourceKind kind) {
    switch (kind) {
    case SourceKind::modbus_tcp: return SourceForm::tr("Modbus TCP");
    case SourceKind::modbus_rtu: return SourceForm::tr("Modbus RTU, serial line");
    case SourceKind::mqtt: return SourceForm::tr("MQTT 3.1.1, by a broker");
    case SourceKind::http: return SourceForm::tr("HTTP, JSON");
    case SourceKind::serial_lines: return SourceForm::tr("Lines of text, serial line");
    case SourceKind::readout: return SourceForm::tr("IEC 62056-21 read-out, serial line");
    case SourceKind::scpi_tcp: return SourceForm::tr("SCPI over TCP");
    case SourceKind::scpi_device: break;
    }
    return SourceForm::tr("SCPI, serial line");
}

struct Example {
    const char *address, *fields;
};

Example example_of(SourceKind kind) {
    switch (kind) {
    case SourceKind::modbus_tcp: return {"192.0.2.10, or 192.0.2.10:1502", "sunspec imported\nor: power holding 52 as f32 in W"};
    case SourceKind::modbus_rtu: return {"/dev/ttyUSB0", "power holding 52 as f32 in W\nregister holding 342 as f32 in kWh"};
    case SourceKind::mqtt: return {"broker.example.org", "power bench/plug#/power\nregister bench/plug/energy in kWh"};
    case SourceKind::http: return {"http://192.0.2.20/status", "power #/meters/0/power\nregister #/meters/0/energy in Wh"};
    case SourceKind::serial_lines: return {"/dev/ttyACM0", "detect\nor: power column 3 in W"};
    case SourceKind::readout: return {"/dev/ttyUSB1", "register 1.8.0\npower 16.7.0"};
    case SourceKind::scpi_tcp: return {"192.0.2.30", "power MEAS:POW?"};
    case SourceKind::scpi_device: break;
    }
    return {"/dev/ttyUSB2", "power MEAS:POW?"};
}

bool is_asked(SourceKind kind) { return kind != SourceKind::mqtt && kind != SourceKind::serial_lines; }
bool has_user(SourceKind kind) { return kind == SourceKind::mqtt || kind == SourceKind::http; }

} // namespace

SourceForm::SourceForm(const Meter& meter, const std::optional<LiveSource>& source, QWidget* parent)
    : FormDialog(tr("Read %1 live").arg(text_of(meter.name)), tr("Use this source"), parent) {
    setObjectName(QStringLiteral("sourceForm"));
    kind_ = addChoice(QStringLiteral("kind"), tr("&Kind"));
    kind_->addItem(tr("not read live"), -1);
    for (const SourceKind each : all_source_kinds) kind_->addItem(kind_title(each), static_cast<int>(each));
    buildAddress();
    buildTrial();
    addParagraph(
        QStringLiteral("sourceHelp"),
        tr("The program only reads, and contacts no other address. Meters in mains circuits are installed by licensed people; local codes come "
           "first. The logbook never holds a password. Help, Meters read live tells what may stand here."));
    given_ = source;
    showSource(source.value_or(LiveSource{}));
    connect(kind_, &QComboBox::currentIndexChanged, this, [this] {
        endTrial();
        face_->showNothing();
        fitKind();
        fit();
    });
    kind_->setCurrentIndex(kind_->findData(source ? static_cast<int>(source->kind) : static_cast<int>(SourceKind::modbus_tcp)));
    fitKind();
    look_timer_.setInterval(look_every_trial_ms);
    connect(&look_timer_, &QTimer::timeout, this, [this] {
        if (!trial_) return;
        face_->showSession(*trial_);
        if (trial_->state().latest) tried_ = trial_of_;
    });
}

SourceForm::~SourceForm() { endTrial(); }

void SourceForm::buildAddress() {
    address_ = addLine(QStringLiteral("address"), tr("&Address"));
    station_ = addLine(QStringLiteral("station"), tr("&Station"), tr("1"));
    line_ = addLine(QStringLiteral("line"), tr("&Line"), tr("9600 8N1"));
    fields_ = new QPlainTextEdit;
    fields_->setTabChangesFocus(true);
    fields_->setFixedHeight(fontMetrics().lineSpacing() * (field_lines + 1));
    addField(QStringLiteral("fields"), tr("What is &read"), fields_);
    fields_->setObjectName(QStringLiteral("fieldsEdit"));
    interval_ = addLine(QStringLiteral("interval"), tr("&Every"), tr("1 s"));
    user_ = addLine(QStringLiteral("user"), tr("U&ser"), tr("none"));
    password_ = addLine(QStringLiteral("password"), tr("&Password"), tr("for Try; not kept"));
    password_->setEchoMode(QLineEdit::Password);
    forget_ = new QPushButton(tr("For&get the kept password"));
    forget_->setAutoDefault(false);
    addField(QStringLiteral("forgetPassword"), QString(), forget_);
    forget_->setObjectName(QStringLiteral("forgetPasswordButton"));
    connect(forget_, &QPushButton::clicked, this, &SourceForm::forgetAsked);
    tls_ = new QCheckBox(tr("se&cured (TLS)"));
    addField(QStringLiteral("tls"), QString(), tls_);
    tls_->setObjectName(QStringLiteral("tlsCheck"));
}

void SourceForm::buildTrial() {
    try_ = new QPushButton(tr("&Try"));
    try_->setObjectName(QStringLiteral("tryButton"));
    try_->setAutoDefault(false);
    face_ = new LiveFace;
    addGroup(tr("What comes"));
    addWide(face_);
    addWide(try_);
    connect(try_, &QPushButton::clicked, this, &SourceForm::tryIt);
}

void SourceForm::showSource(const LiveSource& source) {
    address_->setText(raw_text(source.address));
    station_->setText(QString::number(source.station));
    line_->setText(raw_text(line_settings_text(source.line)));
    interval_->setText(field_text(source.interval_s, QStringLiteral("s")));
    user_->setText(raw_text(source.user));
    tls_->setChecked(source.tls);
    fields_->setPlainText(raw_text(fields_text(source)));
}

SourceKind SourceForm::kind() const { return static_cast<SourceKind>(std::max(kind_->currentData().toInt(), 0)); }

void SourceForm::fitKind() {
    const bool any = kind_->currentData().toInt() >= 0;
    const Example example = example_of(kind());
    address_->setPlaceholderText(raw_text(example.address));
    fields_->setPlaceholderText(raw_text(example.fields));
    for (QWidget* field : std::initializer_list<QWidget*>{address_, fields_}) setLineShown(field, any);
    setLineShown(station_, any && is_modbus(kind()));
    setLineShown(line_, any && has_line_settings(kind()));
    setLineShown(interval_, any && is_asked(kind()));
    setLineShown(user_, any && has_user(kind()));
    setLineShown(password_, any && has_user(kind()));
    setLineShown(forget_, any && has_user(kind()) && !kept_password_.isEmpty());
    setLineShown(tls_, any && kind() == SourceKind::mqtt);
    face_->setVisible(any);
    try_->setVisible(any);
}

std::optional<LiveSource> SourceForm::stated() {
    clearErrors();
    LiveSource stated;
    stated.kind = kind();
    stated.address = text(address_, tr("Enter where the meter is."));
    bool good = !stated.address.empty();
    const auto wrong = [&](QWidget* field, Error error) {
        error.where = {}; // the field shows it
        explain(field, text_of(error.sentence()));
        good = false;
    };
    if (is_modbus(stated.kind)) {
        const auto station = parse_number(utf8_of(station_->text()));
        if (station && station.value() == std::floor(station.value()) && station.value() >= 0 && station.value() <= 255)
            stated.station = static_cast<int>(station.value());
        else wrong(station_, {Failure::bad_input, say(phrase("dialogs", "a station is a number from 0 to 255")), {}, {}});
    }
    if (has_line_settings(stated.kind)) {
        const auto line = line_settings_from(utf8_of(line_->text().simplified()));
        if (line) stated.line = line.value();
        else wrong(line_, line.error());
    }
    if (is_asked(stated.kind)) {
        const auto interval = number_in({{"s", 1}, {"min", 60}}, {say(phrase("dialogs", "the interval"))})(utf8_of(interval_->text()));
        if (interval) stated.interval_s = interval.value();
        else wrong(interval_, interval.error());
    }
    if (has_user(stated.kind)) stated.user = utf8_of(user_->text().trimmed());
    stated.tls = stated.kind == SourceKind::mqtt && tls_->isChecked();
    if (const auto taken = take_fields(stated, utf8_of(fields_->toPlainText())); !taken) {
        explain(fields_, text_of(taken.error().sentence()));
        good = false;
    }
    if (good) {
        if (const auto checked = check(stated); !checked) {
            const std::string& where = checked.error().where;
            wrong(where == "address"    ? static_cast<QWidget*>(address_)
                  : where == "interval" ? static_cast<QWidget*>(interval_)
                                        : fields_,
                  checked.error());
        }
    }
    return good ? std::optional(std::move(stated)) : std::nullopt;
}

void SourceForm::read() {
    if (kind_->currentData().toInt() < 0) {
        source_.reset();
        return;
    }
    source_ = stated();
}

QStringList SourceForm::doubts() const {
    if (!source_ || tried_ == source_) return {};
    return {tr("nothing has come from this source yet: Try shows whether it can be read")};
}

void SourceForm::tryIt() {
    endTrial();
    const auto now = stated();
    if (!now) return;
    trial_of_ = *now;
    // A kept password goes nowhere but to the peer that it is of.
    const bool of_kept =
        given_ && now->kind == given_->kind && now->user == given_->user && now->address == given_->address && now->tls == given_->tls;
    const QString password = password_->text().isEmpty() && of_kept ? kept_password_ : password_->text();
    trial_ = std::make_unique<LiveSession>(SourceLink::make(*now, password), LiveClocks::of_machine());
    trial_->start();
    face_->showSession(*trial_);
    look_timer_.start();
    fit();
}

void SourceForm::setKeptPassword(const QString& password) {
    kept_password_ = password;
    password_->setPlaceholderText(password.isEmpty() ? tr("for Try; not kept") : tr("kept by the desktop"));
    fitKind();
    fit();
}

void SourceForm::passwordForgotten() { setKeptPassword({}); }

void SourceForm::endTrial() {
    look_timer_.stop();
    trial_.reset();
}

} // namespace ullage
