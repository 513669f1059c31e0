// SPDX-License-Identifier: GPL-3.0-or-later
#include "foreign_tables/late/table_readers.h"

namespace ullage {

namespace {

struct PartCloser {
    void operator()(zip_file_t* file) const { (void)zip_fclose(file); }
};

/// What libxml2 takes its bytes from.
struct PartSource {
    zip_file_t* file;
    std::size_t& left;
    bool over = false, failed = false;
};

int take_of_part(void* context, char* bytes, int count) {
    auto& source = *static_cast<PartSource*>(context);
    const zip_int64_t got = zip_fread(source.file, bytes, static_cast<zip_uint64_t>(count));
    if (got < 0) {
        source.failed = true;
        return -1;
    }
    if (static_cast<std::size_t>(got) > source.left) {
        source.over = true;
        return -1;
    }
    source.left -= static_cast<std::size_t>(got);
    return static_cast<int>(got);
}

/// What is wrong is said in our words.
void say_nothing(void*, xmlErrorPtr) {}

Error damaged_workbook(const std::string& where, const Message& part) {
    return {Failure::bad_input, say(phrase("foreign_tables", "the workbook is damaged (its part %1)"), part), where,
            say(phrase("foreign_tables", "open it in the program that made it and save it anew"))};
}

} // namespace

Result<WorkbookParts> WorkbookParts::open(std::string_view bytes, const std::string& where) {
    zip_error_t error;
    zip_error_init(&error);
    zip_source_t* const source = zip_source_buffer_create(bytes.data(), bytes.size(), 0, &error);
    zip_t* const zip = source ? zip_open_from_source(source, ZIP_RDONLY, &error) : nullptr;
    if (!zip && source) zip_source_free(source);
    zip_error_fini(&error);
    if (!zip) return damaged_workbook(where, say(phrase("foreign_tables", "list of contents")));
    WorkbookParts parts;
    parts.zip_.reset(zip);
    parts.where_ = where;
    return parts;
}

bool WorkbookParts::has(const std::string& name) const { return zip_name_locate(zip_.get(), name.c_str(), 0) >= 0; }

Result<void> WorkbookParts::walk(const std::string& name, const std::function<bool(xmlTextReader*)>& see) {
    const Error damaged = damaged_workbook(where_, name);
    zip_stat_t about;
    if (zip_stat(zip_.get(), name.c_str(), 0, &about) != 0) return damaged;
    if ((about.valid & ZIP_STAT_ENCRYPTION_METHOD) != 0 && about.encryption_method != ZIP_EM_NONE)
        return Error{Failure::bad_input, say(phrase("foreign_tables", "the workbook has a password")), where_,
                     say(phrase("foreign_tables", "save it without one, or copy its cells and paste them"))};
    const std::unique_ptr<zip_file_t, PartCloser> file(zip_fopen(zip_.get(), name.c_str(), 0));
    if (!file) return damaged;
    PartSource source{file.get(), left_};
    // No network, no entities of its own; without XML_PARSE_HUGE what unpacks inside the XML is bounded too.
    constexpr int options = XML_PARSE_NONET | XML_PARSE_NOERROR | XML_PARSE_NOWARNING;
    const std::unique_ptr<xmlTextReader, XmlReaderCloser> reader(xmlReaderForIO(take_of_part, nullptr, &source, nullptr, nullptr, options));
    if (!reader) return damaged;
    xmlTextReaderSetStructuredErrorHandler(reader.get(), say_nothing, nullptr);
    int more = 0;
    while ((more = xmlTextReaderRead(reader.get())) == 1)
        if (!see(reader.get())) return {};
    if (source.over)
        return Error{Failure::bad_input,
                     say(phrase("foreign_tables", "the workbook unpacks to more than %1 MB"), say_number(most_unpacked_bytes / 1'000'000)), where_,
                     say(phrase("foreign_tables", "keep the sheet with the readings alone, or copy its cells and paste them"))};
    return more == 0 && !source.failed ? Result<void>() : damaged;
}

std::optional<std::string> xml_attribute(xmlTextReader* reader, std::string_view name) {
    std::optional<std::string> found;
    for (int more = xmlTextReaderMoveToFirstAttribute(reader); more == 1; more = xmlTextReaderMoveToNextAttribute(reader)) {
        if (xml_name(reader) != name) continue;
        if (const xmlChar* const value = xmlTextReaderConstValue(reader)) found = reinterpret_cast<const char*>(value);
        break;
    }
    xmlTextReaderMoveToElement(reader);
    return found;
}

std::string_view xml_name(xmlTextReader* reader) {
    const xmlChar* const name = xmlTextReaderConstLocalName(reader);
    return name ? std::string_view(reinterpret_cast<const char*>(name)) : std::string_view();
}

bool opens(xmlTextReader* reader, std::string_view name) {
    return xmlTextReaderNodeType(reader) == XML_READER_TYPE_ELEMENT && xml_name(reader) == name;
}

bool closes(xmlTextReader* reader, std::string_view name) {
    return xmlTextReaderNodeType(reader) == XML_READER_TYPE_END_ELEMENT && xml_name(reader) == name;
}

bool is_text(xmlTextReader* reader) {
    const int type = xmlTextReaderNodeType(reader);
    return type == XML_READER_TYPE_TEXT || type == XML_READER_TYPE_CDATA || type == XML_READER_TYPE_SIGNIFICANT_WHITESPACE;
}

namespace {

Result<TableBook> read_packed(std::string_view bytes, const std::string& where) {
    Result<WorkbookParts> parts = WorkbookParts::open(bytes, where);
    if (!parts) return parts.error();
    if (parts.value().has("content.xml")) return read_ods(std::move(parts).value());
    if (parts.value().has("xl/workbook.xml")) return read_xlsx(std::move(parts).value());
    return Error{Failure::bad_input, say(phrase("foreign_tables", "this zip file is no workbook")), where,
                 say(phrase("foreign_tables", "choose an XLSX or ODS workbook, or a text with columns"))};
}

const LateEntry packed_entry(packed_book, &read_packed);

} // namespace

} // namespace ullage
