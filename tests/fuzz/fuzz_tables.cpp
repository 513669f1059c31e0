// SPDX-License-Identifier: GPL-3.0-or-later
#include "foreign_tables/table_runs.h"
#include "fuzz/fuzz_target.h"
#include "fuzz/mutator.h"
#include "model/limits.h"
#include "store/logbook.h"
#include "support/fake_clock.h"
#include "support/source_dir.h"

#include <fmt/format.h>
#include <zip.h>

#include <algorithm>
#include <string>

namespace ullage::test {
namespace {

namespace fs = std::filesystem;

constexpr UtcMs fuzzed_now_ms = 1'767'225'600'000; ///< 2026-01-01
constexpr long imports_in_a_logbook = 100;

std::vector<std::string> foreign_texts() {
    std::vector<std::string> texts;
    for (const char* ending : {".csv", ".html"})
        for (std::string& text : texts_of(source_dir() / "tests/corpus/tables", ending)) texts.push_back(std::move(text));
    return texts;
}

std::vector<std::string> foreign_workbooks() {
    std::vector<std::string> books;
    for (const char* ending : {".xlsx", ".ods"})
        for (std::string& book : texts_of(source_dir() / "tests/corpus/tables", ending)) books.push_back(std::move(book));
    return books;
}

using Parts = std::vector<std::pair<std::string, std::string>>;

Parts parts_of(const std::string& book) {
    Parts parts;
    zip_error_t error;
    zip_error_init(&error);
    zip_source_t* const source = zip_source_buffer_create(book.data(), book.size(), 0, &error);
    zip_t* const zip = zip_open_from_source(source, ZIP_RDONLY, &error);
    if (!zip) {
        zip_source_free(source);
        return parts;
    }
    for (zip_int64_t i = 0; i < zip_get_num_entries(zip, 0); ++i) {
        zip_file_t* const file = zip_fopen_index(zip, static_cast<zip_uint64_t>(i), 0);
        std::string text;
        char piece[4096];
        for (zip_int64_t got = 0; file && (got = zip_fread(file, piece, sizeof piece)) > 0;) text.append(piece, static_cast<std::size_t>(got));
        if (file) (void)zip_fclose(file);
        parts.emplace_back(zip_get_name(zip, static_cast<zip_uint64_t>(i), 0), std::move(text));
    }
    zip_discard(zip);
    return parts;
}

std::string workbook_of_parts(const Parts& parts) {
    zip_error_t error;
    zip_error_init(&error);
    zip_source_t* const target = zip_source_buffer_create(nullptr, 0, 0, &error);
    zip_t* const zip = zip_open_from_source(target, ZIP_CREATE | ZIP_TRUNCATE, &error);
    zip_source_keep(target);
    for (const auto& [name, text] : parts) {
        const zip_int64_t index = zip_file_add(zip, name.c_str(), zip_source_buffer(zip, text.data(), text.size(), 0), ZIP_FL_OVERWRITE);
        (void)zip_set_file_compression(zip, static_cast<zip_uint64_t>(index), ZIP_CM_STORE, 0);
    }
    std::string bytes;
    if (zip_close(zip) == 0 && zip_source_open(target) == 0) {
        char piece[4096];
        for (zip_int64_t got = 0; (got = zip_source_read(target, piece, sizeof piece)) > 0;) bytes.append(piece, static_cast<std::size_t>(got));
        zip_source_close(target);
    }
    zip_source_free(target);
    return bytes;
}

class TableFuzz final : public FuzzTarget {
public:
    TableFuzz(std::uint64_t seed, const fs::path& into)
        : texts_(foreign_texts(), seed), books_(foreign_workbooks(), seed), path_(into / "fuzz_table") {
        for (const std::string& book : foreign_workbooks())
            if (Parts parts = parts_of(book); parts.size() > 2) unpacked_.push_back(std::move(parts));
        std::vector<std::string> xml;
        for (const Parts& parts : unpacked_)
            for (const auto& [name, text] : parts)
                if (name.ends_with(".xml")) xml.push_back(text);
        xml_ = std::make_unique<Mutator>(std::move(xml), seed);
    }

    bool one() override {
        const std::string bytes = next();
        write_bytes_to(path_, bytes);
        ++inputs_;
        const Result<TableBook> book = read_table_book(bytes, "table");
        if (!book) {
            const std::string words = book.error().sentence();
            return (!words.empty() && words.find('\n') == std::string::npos) || broken("an error of a table is no line");
        }
        ++read_;
        for (const TableSheet& sheet : book.value().sheets)
            if (!holds(sheet)) return false;
        return true;
    }

    [[nodiscard]] std::string tally() const override {
        return fmt::format("{} tables, {} of them read, {} runs imported", inputs_, read_, imported_);
    }

private:
    std::string next() {
        switch (texts_.pick(4)) {
        case 0: return books_.next_bytes();
        case 1: {
            // One part of a sound workbook is spoiled, so that the zip around it is whole.
            Parts parts = unpacked_[xml_->pick(unpacked_.size())];
            parts[xml_->pick(parts.size())].second = xml_->next();
            return workbook_of_parts(parts);
        }
        default: return texts_.next();
        }
    }

    bool holds(const TableSheet& sheet) {
        TableAnswers answers;
        if (texts_.pick(2) == 0) {
            // Answers of any kind must not break it either.
            answers.columns = {{texts_.pick(8), table_roles()[texts_.pick(table_roles().size())].role, texts_.pick(2) == 0 ? "kWh" : ""}};
            answers.date_order = texts_.pick(2) == 0 ? DateOrder::month_first : DateOrder::day_first;
            answers.register_unit = "Wh";
            answers.elapsed_unit = "min";
            answers.starts = {"2025-05-14 18:00", "", "nonsense"};
            answers.gaps_part_runs = true;
            answers.year = 2025;
            answers.decimal = ',';
        }
        const TableReading reading = understand_table(sheet, answers, "Europe/Berlin", fuzzed_now_ms);
        const auto rows = static_cast<long>(sheet.rows.size());
        for (const RowNotTaken& row : reading.not_taken)
            if (row.row < 1 || row.row > rows || row.reason.empty()) return broken("a row that is not taken is none of the table, or has no reason");
        if (reading.runs.empty() && reading.questions.empty() && !reading.refusal) return broken("a table without runs says nothing");
        std::vector<RunRecord> records;
        for (const ForeignRun& run : reading.runs) {
            if (!std::ranges::is_sorted(run.readings, {}, &ReadingValues::time_ms)) return broken("readings out of order");
            if (run.first_row < 1 || run.last_row > rows) return broken("a run lies beyond the table");
            for (const ReadingValues& values : run.readings)
                if (!finite(values.gauge_percent) || !finite(values.register_wh) || !finite(values.meter_w) || !finite(values.display_w))
                    return broken("a value is not finite");
            TableFacts facts;
            facts.unit.name = "Unit";
            records.push_back(record_of_table(run, facts));
        }
        if (!reading.questions.empty() || reading.refusal || records.empty()) return true;
        if (imports_++ % imports_in_a_logbook == 0) {
            auto made = Logbook::in_memory(clock_);
            if (!made) return broken("no logbook in memory");
            logbook_.emplace(std::move(made).value());
        }
        const auto added = logbook_->import_together(records);
        if (!added) return broken("a table is understood that cannot be kept: " + added.error().sentence());
        imported_ += static_cast<long>(added.value().size());
        return true;
    }

    Mutator texts_, books_;
    std::unique_ptr<Mutator> xml_;
    std::vector<Parts> unpacked_;
    fs::path path_;
    FakeClock clock_;
    std::optional<Logbook> logbook_;
    long inputs_ = 0, read_ = 0, imports_ = 0, imported_ = 0;
};

} // namespace

std::unique_ptr<FuzzTarget> fuzz_tables(std::uint64_t seed, const fs::path& into) { return std::make_unique<TableFuzz>(seed, into); }

} // namespace ullage::test
