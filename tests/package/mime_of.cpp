// SPDX-License-Identifier: GPL-3.0-or-later
// Says which type a desktop takes a file for, by name and bytes. Usage: mime_of FILE
#include <QCoreApplication>
#include <QMimeDatabase>

#include <cstdio>

int main(int count, char** words) {
    const QCoreApplication application(count, words);
    if (count != 2) return 2;
    std::puts(qPrintable(QMimeDatabase().mimeTypeForFile(QString::fromLocal8Bit(words[1])).name()));
    return 0;
}
