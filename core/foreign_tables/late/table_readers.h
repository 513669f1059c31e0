// SPDX-License-Identifier: GPL-3.0-or-later
// What the readers of workbooks share.
#pragma once

#include "foreign_tables/inside/sheet_filler.h"

#include <libxml/xmlreader.h>
#include <zip.h>

#include <functional>
#include <memory>
#include <optional>

namespace ullage {

struct ZipCloser {
    void operator()(zip_t* zip) const { zip_discard(zip); }
};
struct XmlReaderCloser {
    void operator()(xmlTextReader* reader) const { xmlFreeTextReader(reader); }
};

/// The parts of a workbook in memory, unpacked as they are read and no further than most_unpacked_bytes together.
class WorkbookParts {
public:
    /// `bytes` must outlive it.
    [[nodiscard]] static Result<WorkbookParts> open(std::string_view bytes, const std::string& where);

    [[nodiscard]] bool has(const std::string& name) const;
    /// Calls `see` at each node of the XML of a part; it returns false to stop. Errors: no such part, damaged, a password, more than the limit.
    [[nodiscard]] Result<void> walk(const std::string& name, const std::function<bool(xmlTextReader*)>& see);
    [[nodiscard]] const std::string& where() const { return where_; }

private:
    std::unique_ptr<zip_t, ZipCloser> zip_;
    std::string where_;
    std::size_t left_ = most_unpacked_bytes;
};

/// An attribute by its name without prefix; absent where there is none.
[[nodiscard]] std::optional<std::string> xml_attribute(xmlTextReader* reader, std::string_view name);
[[nodiscard]] std::string_view xml_name(xmlTextReader* reader); ///< of the node, without prefix
[[nodiscard]] bool opens(xmlTextReader* reader, std::string_view name);
[[nodiscard]] bool closes(xmlTextReader* reader, std::string_view name); ///< its end; an element without content has none
[[nodiscard]] bool is_text(xmlTextReader* reader);

[[nodiscard]] Result<TableBook> read_xlsx(WorkbookParts parts);
[[nodiscard]] Result<TableBook> read_ods(WorkbookParts parts);
} // namespace ullage
