// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "support/command_output.h"

#include <map>
#include <string>
#include <vector>

namespace ullage::test {

struct XlsxCell {
    bool is_text = false;
    std::string value; ///< decoded text, or the number as the file has it
};

/// A member of the workbook's archive, as text.
inline std::string xlsx_member(const std::string& path, const std::string& member) {
    return run_command("unzip -p '" + path + "' '" + member + "'").text;
}

inline std::string between(const std::string& text, const std::string& open, const std::string& close, std::size_t& from) {
    const auto begin = text.find(open, from);
    if (begin == std::string::npos) {
        from = std::string::npos;
        return {};
    }
    const auto end = text.find(close, begin + open.size());
    from = end == std::string::npos ? end : end + close.size();
    return text.substr(begin + open.size(), end - begin - open.size());
}

inline std::string xml_decoded(std::string text) {
    const std::vector<std::pair<std::string, std::string>> entities{{"&lt;", "<"}, {"&gt;", ">"}, {"&quot;", "\""}, {"&amp;", "&"}};
    for (const auto& [entity, letter] : entities)
        for (auto at = text.find(entity); at != std::string::npos; at = text.find(entity, at + letter.size()))
            text.replace(at, entity.size(), letter);
    return text;
}

/// All cells with content of a sheet (numbered from 1), by address such as "B2". Knows what a plain workbook needs:
/// shared strings, strings in their cells and numbers; anything else, such as a formula, is in the raw XML only.
inline std::map<std::string, XlsxCell> xlsx_cells(const std::string& path, int sheet) {
    std::vector<std::string> strings;
    const std::string shared = xlsx_member(path, "xl/sharedStrings.xml");
    for (std::size_t at = 0;;) {
        std::string item = between(shared, "<si>", "</si>", at);
        if (at == std::string::npos) break;
        std::size_t inner = item.find("<t");
        strings.push_back(xml_decoded(between(item, ">", "</t>", inner)));
    }
    std::map<std::string, XlsxCell> cells;
    const std::string xml = xlsx_member(path, "xl/worksheets/sheet" + std::to_string(sheet) + ".xml");
    for (std::size_t at = 0;;) {
        const std::string cell = between(xml, "<c r=\"", "</c>", at);
        if (at == std::string::npos) break;
        std::size_t value_at = 0;
        if (cell.substr(0, cell.find('>')).find("t=\"inlineStr\"") != std::string::npos) {
            value_at = cell.find("<t");
            cells[cell.substr(0, cell.find('"'))] = {true, xml_decoded(between(cell, ">", "</t>", value_at))};
            continue;
        }
        const std::string value = between(cell, "<v>", "</v>", value_at);
        const bool is_text = cell.substr(0, cell.find('>')).find("t=\"s\"") != std::string::npos;
        cells[cell.substr(0, cell.find('"'))] = {is_text, is_text ? strings.at(std::stoul(value)) : value};
    }
    return cells;
}

/// The sheet that has all fields in full: after the one for readers, where there is one.
inline int xlsx_data_sheet(const std::string& path) {
    return xlsx_member(path, "xl/workbook.xml").find("name=\"Data\"") == std::string::npos ? 1 : 2;
}

/// Its cells, and its XML.
inline std::map<std::string, XlsxCell> xlsx_data(const std::string& path) { return xlsx_cells(path, xlsx_data_sheet(path)); }
inline std::string xlsx_data_xml(const std::string& path) {
    return xlsx_member(path, "xl/worksheets/sheet" + std::to_string(xlsx_data_sheet(path)) + ".xml");
}
/// The sheet after it, which holds the method.
inline int xlsx_method_sheet(const std::string& path) { return xlsx_data_sheet(path) + 1; }

} // namespace ullage::test
