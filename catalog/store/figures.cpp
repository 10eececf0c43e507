#include "catalog/store/figures.h"

#include "catalog/store/nutrient_numbers_table.h"

#include <array>
#include <cstdint>
#include <stdexcept>

namespace catalog {
namespace {

// The byte of marks of a line: five marks, and above them the decimals of the amount.
constexpr unsigned has_amount = 1U << 0U;
constexpr unsigned amount_less = 1U << 1U;
constexpr unsigned has_percent = 1U << 2U;
constexpr unsigned percent_less = 1U << 3U;
constexpr unsigned worked_back = 1U << 4U;
constexpr unsigned decimals_at = 5;
constexpr unsigned in_billionths = 7; // in place of the decimals, which then follow in a byte of their own

constexpr std::array<std::int64_t, in_billionths> tens = {1, 10, 100, 1'000, 10'000, 100'000, 1'000'000};

[[noreturn]] void broken()
{
    throw std::runtime_error("catalog: a row holds no figures that this program writes");
}

void add_varint(std::string& bytes, std::uint64_t number)
{
    for (; number > 0x7FU; number >>= 7U)
        bytes += static_cast<char>(0x80U | (number & 0x7FU));
    bytes += static_cast<char>(number);
}

/// Takes bytes from the front of a text.
class Bytes {
public:
    explicit Bytes(std::string_view rest) : rest_(rest) {}
    [[nodiscard]] bool empty() const { return rest_.empty(); }

    unsigned byte()
    {
        if (rest_.empty())
            broken();
        const auto first = static_cast<unsigned char>(rest_.front());
        rest_.remove_prefix(1);
        return first;
    }

    std::uint64_t varint()
    {
        std::uint64_t number = 0;
        for (unsigned shift = 0; shift < 64; shift += 7) {
            const unsigned next = byte();
            number |= std::uint64_t{next & 0x7FU} << shift;
            if (next < 0x80U)
                return number;
        }
        broken();
    }

private:
    std::string_view rest_;
};

core::Nutrient nutrient_of(unsigned number)
{
    if (number >= nutrient_numbers.size())
        broken();
    return nutrient_numbers[number];
}

/// How many billionths the last printed digit is worth; nothing where the amount is no whole number of them.
std::optional<std::int64_t> digit_of(const core::Figure& figure, core::Unit unit)
{
    if (figure.decimals < 0 || figure.decimals >= static_cast<int>(tens.size()))
        return std::nullopt;
    const auto power = tens[static_cast<std::size_t>(figure.decimals)];
    if (core::nano_of(unit) % power != 0)
        return std::nullopt;
    const std::int64_t digit = core::nano_of(unit) / power;
    if (figure.amount.nano() % digit != 0)
        return std::nullopt;
    return digit;
}

void add_line(std::string& bytes, core::Nutrient nutrient, const core::Line& line)
{
    bytes += static_cast<char>(number_of(nutrient));
    unsigned marks = line.worked_back ? worked_back : 0;
    std::optional<std::int64_t> digit;
    if (line.amount) {
        digit = digit_of(*line.amount, core::info(nutrient).unit);
        marks |= has_amount | (line.amount->less_than ? amount_less : 0U) |
                 ((digit ? static_cast<unsigned>(line.amount->decimals) : in_billionths) << decimals_at);
    }
    if (line.percent)
        marks |= has_percent | (line.percent->less_than ? percent_less : 0U);
    bytes += static_cast<char>(marks);
    if (line.amount && !digit)
        bytes += static_cast<char>(line.amount->decimals);
    if (line.amount)
        add_varint(bytes, static_cast<std::uint64_t>(line.amount->amount.nano() / digit.value_or(1)));
    if (line.percent)
        add_varint(bytes, static_cast<std::uint64_t>(line.percent->percent));
}

core::Figure figure_of(Bytes& bytes, unsigned marks, core::Unit unit)
{
    core::Figure figure;
    figure.less_than = (marks & amount_less) != 0;
    const unsigned decimals = marks >> decimals_at;
    std::int64_t digit = 1;
    if (decimals == in_billionths)
        figure.decimals = static_cast<int>(bytes.byte());
    else {
        figure.decimals = static_cast<int>(decimals);
        digit = core::nano_of(unit) / tens[decimals];
    }
    std::int64_t nano = 0;
    if (__builtin_mul_overflow(static_cast<std::int64_t>(bytes.varint()), digit, &nano) || digit == 0)
        broken();
    figure.amount = core::Content::from_nano(nano);
    return figure;
}

core::Line line_of(Bytes& bytes, core::Unit unit)
{
    const unsigned marks = bytes.byte();
    core::Line line;
    line.worked_back = (marks & worked_back) != 0;
    if ((marks & has_amount) != 0)
        line.amount = figure_of(bytes, marks, unit);
    if ((marks & has_percent) != 0)
        line.percent = core::PrintedPercent{static_cast<int>(bytes.varint()), (marks & percent_less) != 0};
    return line;
}

} // namespace

std::string figures_bytes(const core::Column& column)
{
    std::string bytes;
    bytes.reserve(column.lines.size() * 5);
    for (const auto& [nutrient, line] : column.lines)
        add_line(bytes, nutrient, line);
    return bytes;
}

void read_figures_bytes(std::string_view bytes, core::Column& column)
{
    Bytes rest(bytes);
    while (!rest.empty()) {
        const auto nutrient = nutrient_of(rest.byte());
        column.lines.insert_or_assign(column.lines.end(), nutrient, line_of(rest, core::info(nutrient).unit));
    }
}

std::string nutrients_bytes(const std::set<core::Nutrient>& nutrients)
{
    std::string bytes;
    for (const auto nutrient : nutrients)
        bytes += static_cast<char>(number_of(nutrient));
    return bytes;
}

std::set<core::Nutrient> nutrients_of_bytes(std::string_view bytes)
{
    std::set<core::Nutrient> nutrients;
    for (const char number : bytes)
        nutrients.insert(nutrient_of(static_cast<unsigned char>(number)));
    return nutrients;
}

} // namespace catalog
