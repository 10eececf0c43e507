#include "catalog/load/release_amounts.h"

#include "catalog/read/release_table.h"

#include <algorithm>
#include <cstring>
#include <limits>

namespace catalog {
namespace {

constexpr std::size_t records_a_part = 98'304; // with fourteen amounts each: 17 MB
constexpr std::uint8_t most_amounts = 120;     // rows of one record; labels have at most 44 lines
constexpr std::size_t rows_between_words = 65'536;
constexpr std::size_t largest_direct = 24U << 20U; // record numbers; they stand below three million in 2026

enum class AmountColumn : std::size_t { FdcId, NutrientId, Amount, DerivationId, Percent };

std::string_view cell(const ReleaseTable& table, AmountColumn column)
{
    return table.at(static_cast<std::size_t>(column));
}

/// The place of every nutrient number in release_nutrients; labels know none above this.
constexpr std::size_t nutrient_ids = 3'000;
constexpr std::array<std::int8_t, nutrient_ids> nutrient_places = [] {
    std::array<std::int8_t, nutrient_ids> places{};
    for (auto& place : places)
        place = -1;
    for (std::size_t i = 0; i < release_nutrients.size(); ++i)
        places[static_cast<std::size_t>(release_nutrients[i].id)] = static_cast<std::int8_t>(i);
    return places;
}();

std::uint8_t percent_of(std::string_view text)
{
    if (text.empty())
        return 255;
    const auto percent = read_whole(text);
    return percent && *percent < 255 ? static_cast<std::uint8_t>(*percent) : 255;
}

} // namespace

PlaceOfRecord::PlaceOfRecord(const std::vector<RecordHead>& heads)
{
    std::uint32_t lowest = std::numeric_limits<std::uint32_t>::max();
    std::uint32_t highest = 0;
    for (const auto& head : heads) {
        lowest = std::min(lowest, head.fdc_id);
        highest = std::max(highest, head.fdc_id);
    }
    if (heads.empty() || highest - lowest < largest_direct) {
        first_ = heads.empty() ? 0 : lowest;
        direct_.assign(heads.empty() ? 0 : highest - lowest + 1, none);
        for (std::size_t i = 0; i < heads.size(); ++i)
            direct_[heads[i].fdc_id - first_] = static_cast<std::uint32_t>(i);
        return;
    }
    sorted_.reserve(heads.size());
    for (std::size_t i = 0; i < heads.size(); ++i)
        sorted_.emplace_back(heads[i].fdc_id, static_cast<std::uint32_t>(i));
    std::sort(sorted_.begin(), sorted_.end());
}

std::uint32_t PlaceOfRecord::operator[](std::uint32_t fdc_id) const
{
    if (sorted_.empty())
        return fdc_id >= first_ && fdc_id - first_ < direct_.size() ? direct_[fdc_id - first_] : none;
    const auto found = std::lower_bound(sorted_.begin(), sorted_.end(), std::pair{fdc_id, std::uint32_t{0}});
    return found != sorted_.end() && found->first == fdc_id ? found->second : none;
}

AmountParts::AmountParts(const std::vector<RecordHead>& heads, const std::filesystem::path& folder, bool again)
    : counts_(heads.size())
{
    starts_.push_back(0);
    for (std::size_t end = records_a_part; end < heads.size(); end += records_a_part) {
        while (end < heads.size() && heads[end].gtin == heads[end - 1].gtin)
            ++end;
        if (end < heads.size())
            starts_.push_back(end);
    }
    starts_.push_back(heads.size());
    for (std::size_t part = 0; part < parts(); ++part)
        spills_.emplace_back(folder / ("amounts-" + std::to_string(part)), again);
    if (again)
        for (std::size_t part = 0; part < parts(); ++part)
            for (const auto& amount : read(part))
                ++counts_[amount.place];
}

void AmountParts::add(std::uint32_t place, SpilledAmount amount)
{
    if (counts_[place] >= most_amounts)
        return;
    ++counts_[place];
    amount.place = place;
    const auto part = std::upper_bound(starts_.begin() + 1, starts_.end() - 1, place) - starts_.begin() - 1;
    spills_[static_cast<std::size_t>(part)].append({reinterpret_cast<const char*>(&amount), sizeof amount});
}

void AmountParts::flush()
{
    for (auto& spill : spills_)
        spill.flush();
}

std::vector<SpilledAmount> AmountParts::read(std::size_t part) const
{
    std::string bytes;
    spills_[part].read(0, spills_[part].size(), bytes);
    std::vector<SpilledAmount> amounts(bytes.size() / sizeof(SpilledAmount));
    if (!amounts.empty()) // an empty list has no place to copy to
        std::memcpy(amounts.data(), bytes.data(), amounts.size() * sizeof(SpilledAmount));
    bytes = {};
    const auto first = static_cast<std::uint32_t>(first_of(part));
    std::vector<std::uint32_t> next(last_of(part) - first_of(part) + 1); // sorted by counting: places are few and dense
    for (const auto& amount : amounts)
        ++next[amount.place - first + 1];
    for (std::size_t i = 1; i < next.size(); ++i)
        next[i] += next[i - 1];
    std::vector<SpilledAmount> by_place(amounts.size());
    for (const auto& amount : amounts)
        by_place[next[amount.place - first]++] = amount;
    return by_place;
}

core::Result<bool> read_amounts(ByteStream& bytes, const std::string& source, const PlaceOfRecord& place_of,
                                const RecordSet& left_out, AmountParts& parts, ReleaseReport& report,
                                const std::function<bool(std::uint64_t)>& go_on)
{
    auto table = ReleaseTable::open(bytes, source, amount_columns());
    if (!table)
        return tl::make_unexpected(table.error());
    auto read = table->each(rows_between_words, go_on, [&](std::size_t row) -> core::Result<void> {
        ++report.amounts;
        const auto nutrient_id = read_whole(cell(*table, AmountColumn::NutrientId));
        const auto nutrient = nutrient_id && *nutrient_id < nutrient_ids ? nutrient_places[*nutrient_id] : -1;
        if (nutrient < 0)
            return {}; // water, ash, ...: no line of a label
        const auto fdc_id = read_whole(cell(*table, AmountColumn::FdcId));
        const auto place = fdc_id ? place_of[*fdc_id] : PlaceOfRecord::none;
        if (place == PlaceOfRecord::none) {
            if (!fdc_id || !left_out.has(*fdc_id))
                report.note(Finding::LostAmounts,
                            [&] { return "fdc_id " + std::string(cell(*table, AmountColumn::FdcId)); });
            return {};
        }
        const auto amount = read_amount(cell(*table, AmountColumn::Amount));
        if (!amount) {
            report.note(Finding::BadAmounts, [&] {
                return source + ":" + std::to_string(row) + ": " +
                       std::string(cell(*table, AmountColumn::Amount).substr(0, 40));
            });
            return {};
        }
        const auto derivation = derivation_of(read_whole(cell(*table, AmountColumn::DerivationId)).value_or(0));
        parts.add(place,
                  {place, amount->mantissa, static_cast<std::uint8_t>(nutrient), static_cast<std::uint8_t>(derivation),
                   amount->decimals, percent_of(cell(*table, AmountColumn::Percent))});
        return {};
    });
    parts.flush();
    return read;
}

void add_amounts(const JsonFood& food, const PlaceOfRecord& place_of, AmountParts& parts, ReleaseReport& report)
{
    const auto sample = [&] { return "fdc_id " + std::to_string(food.fdc_id); };
    report.amounts += food.amounts.size() + food.bad_amounts;
    for (std::size_t i = 0; i < food.bad_amounts; ++i)
        report.note(Finding::BadAmounts, sample);
    const auto place = place_of[food.fdc_id];
    if (place == PlaceOfRecord::none)
        return;
    for (const auto& amount : food.amounts)
        parts.add(place,
                  {place, amount.amount.mantissa, amount.nutrient, static_cast<std::uint8_t>(amount.derivation),
                   amount.amount.decimals,
                   amount.percent == no_percent ? std::uint8_t{255} : static_cast<std::uint8_t>(amount.percent)});
}

} // namespace catalog
