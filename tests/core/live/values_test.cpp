// SPDX-License-Identifier: GPL-3.0-or-later
// What registers, payloads, read-outs and answers say.
#include "live/live_lines.h"
#include "live/modbus_values.h"
#include "live/payload_number.h"
#include "live/readout.h"
#include "live/scpi_answer.h"
#include "live/sunspec_meter.h"

#include <gtest/gtest.h>

#include <bit>
#include <cmath>
#include <map>
#include <string>
#include <utility>
#include <vector>

namespace ullage {
namespace {

using Type = RegisterNumber::Type;
using Words = std::vector<std::uint16_t>;

LiveField field(SourceKind kind, const std::string& line) {
    auto read = field_from(kind, line);
    EXPECT_TRUE(read) << line;
    return read ? read.value() : LiveField{};
}

TEST(ModbusValues, every_type_and_word_order_of_a_table_made_by_hand_is_read) {
    struct Row {
        Type type;
        bool words_swapped, bytes_swapped;
        Words registers;
        double value;
    };
    // 123456 = 0x0001E240; 1.5 = 0x3FC00000 and 0x3FF8000000000000 (IEEE 754); -2 in two's complement.
    const Row rows[] = {{Type::u16, false, false, {0xfffe}, 65'534},
                        {Type::s16, false, false, {0xfffe}, -2},
                        {Type::u16, false, true, {0x3412}, 0x1234},
                        {Type::u32, false, false, {0x0001, 0xe240}, 123'456},
                        {Type::u32, true, false, {0xe240, 0x0001}, 123'456},
                        {Type::u32, false, true, {0x0100, 0x40e2}, 123'456},
                        {Type::u32, true, true, {0x40e2, 0x0100}, 123'456},
                        {Type::s32, false, false, {0xffff, 0xfffe}, -2},
                        {Type::u64, false, false, {0, 0, 0x0001, 0xe240}, 123'456},
                        {Type::s64, true, false, {0xfffe, 0xffff, 0xffff, 0xffff}, -2},
                        {Type::f32, false, false, {0x3fc0, 0x0000}, 1.5},
                        {Type::f32, true, false, {0x0000, 0x3fc0}, 1.5},
                        {Type::f64, false, false, {0x3ff8, 0, 0, 0}, 1.5}};
    for (const Row& row : rows)
        EXPECT_EQ(number_of(row.registers, {row.type, row.words_swapped, row.bytes_swapped}), row.value) << static_cast<int>(row.type);
    EXPECT_EQ(number_of(Words{0x7fc0, 0}, {Type::f32}), std::nullopt) << "not a number";
    EXPECT_EQ(number_of(Words{0x7f80, 0}, {Type::f32}), std::nullopt) << "infinity";
    EXPECT_EQ(number_of(Words{1}, {Type::u32}), std::nullopt) << "too few registers";
}

TEST(ModbusValues, fields_that_lie_together_are_asked_for_at_once_and_no_question_asks_for_more_than_125_registers) {
    const std::vector<LiveField> fields{
        field(SourceKind::modbus_tcp, "power holding 12 as f32"), field(SourceKind::modbus_tcp, "voltage holding 0 as f32"),
        field(SourceKind::modbus_tcp, "register holding 342 as f32 in kWh"), field(SourceKind::modbus_tcp, "current input 6 as u16 times 0.01")};
    const auto blocks = blocks_of(fields);
    EXPECT_EQ(blocks,
              (std::vector<RegisterBlock>{
                  {RegisterTable::holding, 0, 2}, {RegisterTable::holding, 12, 2}, {RegisterTable::holding, 342, 2}, {RegisterTable::input, 6, 1}}));
    std::vector<LiveField> row;
    for (int i = 0; i < 100; ++i) row.push_back(field(SourceKind::modbus_tcp, "power holding " + std::to_string(2 * i) + " as f32"));
    int sum = 0;
    for (const RegisterBlock& block : blocks_of(row)) {
        EXPECT_LE(block.count, 125);
        sum += block.count;
    }
    EXPECT_EQ(sum, 200);
    EXPECT_NEAR(*field_in(blocks[3], Words{1234}, fields[3]), 12.34, 1e-12);
    EXPECT_EQ(field_in(blocks[2], Words{0x3fc0, 0}, fields[2]), 1500) << "kWh become Wh";
    EXPECT_EQ(field_in(blocks[1], Words{0x3fc0, 0}, fields[2]), std::nullopt);
}

// SunSpec Alliance, model definitions: the points of model_203.json and model_213.json in their order with their sizes in registers.
using Points = std::vector<std::pair<std::string, int>>;
const Points integer_points{{"ID", 1},       {"L", 1},           {"A", 1},           {"AphA", 1},        {"AphB", 1},        {"AphC", 1},
                            {"A_SF", 1},     {"PhV", 1},         {"PhVphA", 1},      {"PhVphB", 1},      {"PhVphC", 1},      {"PPV", 1},
                            {"PhVphAB", 1},  {"PhVphBC", 1},     {"PhVphCA", 1},     {"V_SF", 1},        {"Hz", 1},          {"Hz_SF", 1},
                            {"W", 1},        {"WphA", 1},        {"WphB", 1},        {"WphC", 1},        {"W_SF", 1},        {"VA", 1},
                            {"VAphA", 1},    {"VAphB", 1},       {"VAphC", 1},       {"VA_SF", 1},       {"VAR", 1},         {"VARphA", 1},
                            {"VARphB", 1},   {"VARphC", 1},      {"VAR_SF", 1},      {"PF", 1},          {"PFphA", 1},       {"PFphB", 1},
                            {"PFphC", 1},    {"PF_SF", 1},       {"TotWhExp", 2},    {"TotWhExpPhA", 2}, {"TotWhExpPhB", 2}, {"TotWhExpPhC", 2},
                            {"TotWhImp", 2}, {"TotWhImpPhA", 2}, {"TotWhImpPhB", 2}, {"TotWhImpPhC", 2}, {"TotWh_SF", 1},    {"rest", 52}};
const Points float_points{{"ID", 1},       {"L", 1},      {"A", 2},      {"AphA", 2},     {"AphB", 2},        {"AphC", 2},        {"PhV", 2},
                          {"PhVphA", 2},   {"PhVphB", 2}, {"PhVphC", 2}, {"PPV", 2},      {"PPVphAB", 2},     {"PPVphBC", 2},     {"PPVphCA", 2},
                          {"Hz", 2},       {"W", 2},      {"WphA", 2},   {"WphB", 2},     {"WphC", 2},        {"VA", 2},          {"VAphA", 2},
                          {"VAphB", 2},    {"VAphC", 2},  {"VAR", 2},    {"VARphA", 2},   {"VARphB", 2},      {"VARphC", 2},      {"PF", 2},
                          {"PFphA", 2},    {"PFphB", 2},  {"PFphC", 2},  {"TotWhExp", 2}, {"TotWhExpPhA", 2}, {"TotWhExpPhB", 2}, {"TotWhExpPhC", 2},
                          {"TotWhImp", 2}, {"rest", 56}};

int offset_of(const Points& points, const std::string& name) {
    int offset = 0;
    for (const auto& [point, size] : points) {
        if (point == name) return offset;
        offset += size;
    }
    ADD_FAILURE() << name;
    return 0;
}

/// A device: the marker at `base`, a common model, and then the meter.
std::map<int, std::uint16_t> device(int base, int model, const Points& points) {
    std::map<int, std::uint16_t> registers{{base, 0x5375}, {base + 1, 0x6e53}, {base + 2, 1}, {base + 3, 66}};
    for (int i = 0; i < 66; ++i) registers[base + 4 + i] = 0;
    const int at = base + 70;
    int size = 0;
    for (const auto& point : points) size += point.second;
    for (int i = 0; i < size; ++i) registers[at + i] = 0;
    registers[at] = static_cast<std::uint16_t>(model);
    registers[at + 1] = static_cast<std::uint16_t>(size - 2);
    registers[at + size] = 0xffff;
    registers[at + size + 1] = 0;
    return registers;
}

Words answer(const std::map<int, std::uint16_t>& device, const RegisterBlock& block) {
    Words words;
    for (int i = 0; i < block.count; ++i) {
        const auto found = device.find(block.address + i);
        if (found == device.end()) return {}; // illegal data address
        words.push_back(found->second);
    }
    return words;
}

/// Asks the device until the meter is found or not.
void find(SunspecMeter& meter, const std::map<int, std::uint16_t>& device) {
    for (int asked = 0; asked < 300 && !meter.found(); ++asked) {
        const auto block = meter.next();
        if (!block) return;
        meter.take(answer(device, *block));
    }
}

TEST(SunspecMeter, a_three_phase_meter_of_whole_numbers_is_found_by_the_marker_and_read_as_the_published_model_says) {
    for (const int base : {40'000, 50'000, 0}) {
        auto registers = device(base, 203, integer_points);
        const auto set = [&](const std::string& name, std::uint16_t value) { registers[base + 70 + offset_of(integer_points, name)] = value; };
        set("A", 187);
        set("A_SF", 0xfffe); // -2
        set("PhV", 2301);
        set("V_SF", 0xffff); // -1
        set("W", 4302);
        set("W_SF", 0xffff);
        registers[base + 70 + offset_of(integer_points, "TotWhExp") + 1] = 77;
        registers[base + 70 + offset_of(integer_points, "TotWhImp")] = 1;
        registers[base + 70 + offset_of(integer_points, "TotWhImp") + 1] = 0xe240;
        set("TotWh_SF", 0xffff);
        SunspecMeter meter(EnergyDirection::imported);
        find(meter, registers);
        ASSERT_EQ(meter.found(), 203) << base;
        const TraceSample sample = meter.sample(answer(registers, meter.block()));
        EXPECT_EQ(sample.current_a, 1.87);
        EXPECT_EQ(sample.voltage_v, 230.1);
        EXPECT_EQ(sample.power_w, 430.2);
        EXPECT_EQ(sample.register_wh, 12'345.6);
        set("W", 0x8000);
        EXPECT_EQ(meter.sample(answer(registers, meter.block())).power_w, std::nullopt) << "not implemented";
    }
}

TEST(SunspecMeter, a_meter_of_floating_point_counts_what_flows_out_where_that_is_asked_for) {
    auto registers = device(40'000, 213, float_points);
    const auto set = [&](const std::string& name, float value) {
        const auto bits = std::bit_cast<std::uint32_t>(value);
        registers[40'070 + offset_of(float_points, name)] = static_cast<std::uint16_t>(bits >> 16U);
        registers[40'070 + offset_of(float_points, name) + 1] = static_cast<std::uint16_t>(bits);
    };
    set("A", 1.5F);
    set("PhV", 229.5F);
    set("W", -344.25F);
    set("TotWhExp", 2048.5F);
    set("TotWhImp", 3.0F);
    SunspecMeter meter(EnergyDirection::exported);
    find(meter, registers);
    ASSERT_EQ(meter.found(), 213);
    const TraceSample sample = meter.sample(answer(registers, meter.block()));
    EXPECT_EQ(sample, (TraceSample{0, 2048.5, 344.25, 229.5, 1.5}));
    set("W", std::nanf(""));
    EXPECT_EQ(meter.sample(answer(registers, meter.block())).power_w, std::nullopt);
}

TEST(SunspecMeter, a_device_without_marker_without_meter_or_with_an_endless_map_ends_the_search) {
    for (auto registers : {std::map<int, std::uint16_t>{}, device(40'000, 103, integer_points)}) {
        SunspecMeter meter(EnergyDirection::imported);
        find(meter, registers);
        EXPECT_FALSE(meter.found());
        EXPECT_FALSE(meter.next());
    }
    std::map<int, std::uint16_t> endless{{0, 0x5375}, {1, 0x6e53}};
    for (int i = 2; i < 65'536; ++i) endless[i] = 0;
    SunspecMeter meter(EnergyDirection::imported);
    find(meter, endless);
    EXPECT_FALSE(meter.found());
    EXPECT_FALSE(meter.next());
}

std::optional<double> number(std::string_view payload, const std::string& line) {
    const LiveField wanted = field(SourceKind::mqtt, line);
    const LiveField* const one = &wanted;
    return numbers_in(payload, std::span(&one, 1)).at(0);
}

TEST(PayloadNumber, a_plain_number_or_one_at_a_json_pointer_is_taken_in_the_unit_stated_or_given) {
    EXPECT_EQ(number("431.5", "power bench/p"), 431.5);
    EXPECT_EQ(number(" 431,5 W\n", "power bench/p"), 431.5);
    EXPECT_EQ(number("0.4315 kW", "power bench/p"), 431.5);
    EXPECT_EQ(number("0.4315", "power bench/p in kW"), 431.5);
    EXPECT_EQ(number(R"({"a":{"b":[1,{"c":0.5}]}})", "register bench/e#/a/b/1/c in kWh"), 500);
    EXPECT_EQ(number(R"({"power":"12.5"})", "power bench/e#/power"), 12.5);
    EXPECT_EQ(number(R"({"t":43})", "power bench/e#/t times 0.1"), 4.3);
    // RFC 6901, section 5: these pointers into this document.
    const std::string rfc = R"({"foo":["bar","baz"],"":0,"a/b":1,"c%d":2,"e^f":3,"g|h":4,"i\\j":5,"k\"l":6," ":7,"m~n":8})";
    EXPECT_EQ(number(rfc, "power t#/"), 0);
    EXPECT_EQ(number(rfc, "power t#/a~1b"), 1);
    EXPECT_EQ(number(rfc, "power t#/c%d"), 2);
    EXPECT_EQ(number(rfc, "power t#/e^f"), 3);
    EXPECT_EQ(number(rfc, "power t#/g|h"), 4);
    EXPECT_EQ(number(rfc, "power t#/i\\j"), 5);
    EXPECT_EQ(number(rfc, "power t#/k\"l"), 6);
    EXPECT_EQ(number(rfc, "power t#/m~0n"), 8);
}

TEST(PayloadNumber, nonsense_gives_no_number) {
    for (const char* payload : {"", "nan", "inf", "off", "12 apples", "12 V", "1e999", "{}", "[1", "\xff\xfe"})
        EXPECT_EQ(number(payload, "power bench/p"), std::nullopt) << payload;
    for (const char* payload : {"", "{", "null", "[]", R"({"p":null})", R"({"p":true})", R"({"p":[1]})", R"({"p":1e999})"})
        EXPECT_EQ(number(payload, "power bench/p#/p"), std::nullopt) << payload;
    EXPECT_EQ(number(std::string(2'000'000, '1'), "power bench/p"), std::nullopt);
    const std::string deep = std::string(400'000, '[') + "1" + std::string(400'000, ']');
    EXPECT_EQ(number(deep, "power bench/p#/0"), std::nullopt);
    EXPECT_EQ(number(R"([1,2])", "power bench/p#/-"), std::nullopt);
    EXPECT_EQ(number(R"([1,2])", "power bench/p#/01"), std::nullopt);
}

/// IEC 62056-21, 6.1 and annex: STX data lines ! CR LF ETX BCC. The block is invented; its check character was worked out from the rule alone.
std::string data_block(const std::string& lines) {
    const std::string covered = lines + "!\r\n\x03";
    unsigned char check = 0;
    for (const char c : covered) check = static_cast<unsigned char>(check ^ static_cast<unsigned char>(c));
    return "\x02" + covered + static_cast<char>(check);
}

TEST(Readout, the_registers_of_a_data_block_are_found_by_their_codes) {
    ReadoutBlock block;
    const std::string bytes =
        data_block("F.F(00000000)\r\n0.0.0(12345678)\r\n1-0:1.8.0*255(000812.4301*kWh)\r\n1.8.1(000001.0*kWh)\r\n16.7.0(00.4302*kW)\r\n"
                   "32.7.0(230.1*V)31.7.0(1.87*A)\r\n");
    // In pieces, as a line gives them.
    for (std::size_t at = 0; at + 3 < bytes.size(); at += 3) EXPECT_EQ(block.take(std::string_view(bytes).substr(at, 3)), ReadoutBlock::State::open);
    ASSERT_EQ(block.take(std::string_view(bytes).substr((bytes.size() - 1) / 3 * 3)), ReadoutBlock::State::whole);
    EXPECT_NEAR(*block.value(field(SourceKind::readout, "register 1.8.0")), 812'430.1, 1e-6);
    EXPECT_NEAR(*block.value(field(SourceKind::readout, "register 1-0:1.8.0*255")), 812'430.1, 1e-6);
    EXPECT_EQ(block.value(field(SourceKind::readout, "register 2-0:1.8.0")), std::nullopt);
    EXPECT_NEAR(*block.value(field(SourceKind::readout, "power 16.7.0")), 430.2, 1e-9);
    EXPECT_EQ(block.value(field(SourceKind::readout, "current 31.7.0")), 1.87);
    EXPECT_EQ(block.value(field(SourceKind::readout, "register 2.8.0")), std::nullopt);
    EXPECT_EQ(block.value(field(SourceKind::readout, "power 32.7.0")), std::nullopt) << "volts are no power";
}

TEST(Readout, a_block_with_a_wrong_check_character_says_nothing_and_parity_bits_are_taken_off) {
    std::string bytes = data_block("1.8.0(000812.4*kWh)\r\n");
    std::string even = bytes;
    for (char& c : even)
        if (std::popcount(static_cast<unsigned char>(c)) % 2 == 1) c = static_cast<char>(static_cast<unsigned char>(c) | 0x80U);
    ReadoutBlock with_parity;
    EXPECT_EQ(with_parity.take(even), ReadoutBlock::State::whole);
    bytes[4] = '9';
    ReadoutBlock spoiled;
    EXPECT_EQ(spoiled.take(bytes), ReadoutBlock::State::bad_check);
    ReadoutBlock endless;
    EXPECT_EQ(endless.take("\x02" + std::string(200'000, 'x')), ReadoutBlock::State::too_long);
}

TEST(Readout, an_identification_tells_mode_and_speed_and_the_answer_to_it_asks_for_data_alone) {
    // IEC 62056-21, 6.3.2 and 6.3.3: Z = 0 to 6 mode C, A to F mode B, else mode A.
    const auto c = identification_in("/XYZ5meter 1\r\n");
    ASSERT_TRUE(c);
    EXPECT_EQ(c->mode, 'C');
    EXPECT_EQ(c->baud, 9600);
    EXPECT_EQ(acknowledgement(*c), "\x06"
                                   "050\r\n");
    EXPECT_EQ(identification_in("/XYZA1\r\n")->mode, 'B');
    EXPECT_EQ(identification_in("/XYZA1\r\n")->baud, 600);
    EXPECT_EQ(identification_in("/XYZ 1\r\n")->mode, 'A');
    EXPECT_FALSE(identification_in("/?!\r\n")) << "its own request, from a head that echoes";
    EXPECT_FALSE(identification_in("1.8.0(1)"));
}

TEST(ScpiAnswer, numbers_of_ieee_488_2_are_read_and_those_that_mean_none_are_not) {
    const LiveField power = field(SourceKind::scpi_tcp, "power MEAS:POW?");
    EXPECT_EQ(number_in_answer("431\n", power), 431);
    EXPECT_EQ(number_in_answer("+4.3150E+02", power), 431.5);
    EXPECT_EQ(number_in_answer("230.1,1.87,430.2\r\n", field(SourceKind::scpi_tcp, "power FETC? item 3")), 430.2);
    EXPECT_EQ(number_in_answer("230.1,1.87", field(SourceKind::scpi_tcp, "power FETC? item 3")), std::nullopt);
    for (const char* none : {"9.91E37", "9.9E+37", "-9.9E37", "NAN", "", "ERR"}) EXPECT_EQ(number_in_answer(none, power), std::nullopt) << none;
}

TEST(ScpiAnswer, a_query_is_one_that_only_reads) {
    for (const char* line : {"power OUTP ON", "power *RST", "power VOLT 5", "power MEAS:POW?;OUTP ON", "power *TST?", "power *CAL?", "power "})
        EXPECT_FALSE(field_from(SourceKind::scpi_tcp, line)) << line;
    EXPECT_TRUE(field_from(SourceKind::scpi_tcp, "power MEAS:POW:AC? (@1)"));
}

TEST(LiveLines, a_line_is_cut_from_any_pieces_and_an_endless_one_takes_no_memory) {
    LineCutter cutter;
    std::vector<std::string> lines;
    const auto take = [&lines](std::string_view line) { lines.emplace_back(line); };
    for (const char* piece : {"a", "b\r", "\nc\n\n", "d\re"}) cutter.take(piece, take);
    EXPECT_EQ(lines, (std::vector<std::string>{"ab", "c", "d"}));
    for (int i = 0; i < 1000; ++i) cutter.take(std::string(10'000, 'x'), take);
    cutter.take("\ngood\n", take);
    EXPECT_EQ(lines.back(), "good");
    EXPECT_EQ(lines.size(), 4U);
    EXPECT_EQ(cutter.too_long(), 1);
}

TEST(LiveLines, the_detector_of_logs_finds_what_the_columns_hold) {
    LiveLines lines({});
    TraceSample last;
    for (int i = 0; i < 8; ++i) last = lines.read("230.1 V;1.87 A;" + std::to_string(430 + i) + ".5 W;12" + std::to_string(i) + ".25 Wh");
    EXPECT_EQ(last, (TraceSample{0, 127.25, 437.5, 230.1, 1.87})) << lines.words();
    EXPECT_NE(lines.words().text().find("power column 3 in W"), std::string::npos) << lines.words();
    EXPECT_EQ(lines.read("booting"), TraceSample{});
}

TEST(LiveLines, columns_that_are_named_are_read_from_the_first_line_on) {
    LiveLines lines({field(SourceKind::serial_lines, "power column 2"), field(SourceKind::serial_lines, "register column 4 in kWh")});
    EXPECT_EQ(lines.read("A 430.5 x 1.25"), (TraceSample{0, 1250, 430.5, {}, {}}));
    EXPECT_EQ(lines.read("A;430,5;x;1,25"), (TraceSample{0, 1250, 430.5, {}, {}}));
    EXPECT_EQ(lines.read("A"), TraceSample{});
}

} // namespace
} // namespace ullage
