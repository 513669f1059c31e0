// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <QTranslator>

#include <set>
#include <string>

namespace ullage::test {

/// Notes what is asked for of the program's own texts and not found.
class MissingTexts : public QTranslator {
public:
    explicit MissingTexts(const QString& code) { EXPECT_TRUE(known_.load(QStringLiteral(":/ullage/languages/ullage_%1.qm").arg(code))); }
    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* context, const char* source, const char* disambiguation, int count) const override {
        const QByteArray where(context);
        const bool ours = where.startsWith("ullage") || where == "report" || where == "awake";
        if (ours && known_.translate(context, source, disambiguation, count).isNull()) texts.insert(std::string(context) + ": " + source);
        return {};
    }

    mutable std::set<std::string> texts;

private:
    QTranslator known_;
};

} // namespace ullage::test
