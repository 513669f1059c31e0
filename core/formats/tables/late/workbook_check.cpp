// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/tables/late/workbook_check.h"

#include <fmt/format.h>
#include <libxml/xmlreader.h>
#include <zip.h>

#include <memory>
#include <optional>
#include <string_view>

namespace ullage {

namespace {

struct CloseZip {
    void operator()(zip_t* zip) const { zip_discard(zip); }
    void operator()(zip_file_t* file) const { (void)zip_fclose(file); }
};
struct FreeReader {
    void operator()(xmlTextReader* reader) const { xmlFreeTextReader(reader); }
};

int read_part(void* part, char* bytes, int count) {
    return static_cast<int>(zip_fread(static_cast<zip_file_t*>(part), bytes, static_cast<zip_uint64_t>(count)));
}

/// The elements `c` in a part, which are the cells where it is a sheet; absent where the part is not well-formed to its end.
std::optional<std::size_t> cells_in(zip_t* zip, zip_uint64_t index) {
    const std::unique_ptr<zip_file_t, CloseZip> part(zip_fopen_index(zip, index, 0));
    if (!part) return std::nullopt;
    // No parser output: what is wrong is said in our words.
    constexpr int options = XML_PARSE_NONET | XML_PARSE_HUGE | XML_PARSE_NOERROR | XML_PARSE_NOWARNING;
    const std::unique_ptr<xmlTextReader, FreeReader> reader(xmlReaderForIO(read_part, nullptr, part.get(), nullptr, nullptr, options));
    if (!reader) return std::nullopt;
    std::size_t cells = 0;
    int more = 0;
    while ((more = xmlTextReaderRead(reader.get())) == 1)
        if (xmlTextReaderNodeType(reader.get()) == XML_READER_TYPE_ELEMENT && xmlStrEqual(xmlTextReaderConstLocalName(reader.get()), BAD_CAST "c"))
            ++cells;
    return more == 0 ? std::optional(cells) : std::nullopt;
}

} // namespace

Result<void> check_workbook(const std::string& path, std::span<const std::size_t> cells) {
    const Error cut{Failure::disk_full, say(phrase("tables", "the workbook could not be written whole")), path,
                    say(phrase("tables", "make room on the disk or choose another place"))};
    const std::unique_ptr<zip_t, CloseZip> zip(zip_open(path.c_str(), ZIP_RDONLY | ZIP_CHECKCONS, nullptr));
    if (!zip) return cut;
    std::size_t sheets = 0;
    for (zip_uint64_t index = 0; index < static_cast<zip_uint64_t>(zip_get_num_entries(zip.get(), 0)); ++index) {
        const char* const name = zip_get_name(zip.get(), index, 0);
        const auto found = cells_in(zip.get(), index);
        if (!name || !found) return cut;
        for (std::size_t sheet = 0; sheet < cells.size(); ++sheet) {
            if (std::string_view(name) != fmt::format("xl/worksheets/sheet{}.xml", sheet + 1)) continue;
            if (*found != cells[sheet]) return cut;
            ++sheets;
        }
    }
    return sheets == cells.size() ? Result<void>() : cut;
}

} // namespace ullage
