#include "catalog/load/release_heads.h"

#include "catalog/read/release_code.h"
#include "catalog/read/release_table.h"
#include "catalog/read/sheet_columns.h"
#include "catalog/store/fold.h"
#include "catalog/store/row.h"

#include <algorithm>

namespace catalog {
namespace {

constexpr std::size_t rows_between_words = 16'384;
constexpr std::size_t most_name_bytes = 160U << 20U; // names of four million foods
constexpr std::size_t longest_name = 300;
constexpr char between_texts = '\0';

enum class FoodColumn : std::size_t { FdcId, DataType, Description, PublicationDate };
enum class BrandedColumn : std::size_t {
    FdcId,
    GtinUpc,
    BrandOwner,
    BrandName,
    Ingredients,
    NotSignificant,
    ServingSize,
    ServingUnit,
    Household,
    Category,
    PackageWeight,
    Preparation,
    ModifiedDate,
    Market,
};

template<class Column>
std::string_view cell(const ReleaseTable& table, Column column)
{
    return table.at(static_cast<std::size_t>(column));
}

/// "fdc_id 7, 036000291452: OATS"; a record without a code has none there.
std::string sample_of(std::uint32_t fdc_id, std::string_view code, std::string_view name)
{
    return "fdc_id " + std::to_string(fdc_id) + (code.empty() ? "" : ", ") + std::string(code.substr(0, 20)) + ": " +
           std::string(name.substr(0, 60));
}

Finding finding_of(ReleaseCode::Kind kind)
{
    switch (kind) {
    case ReleaseCode::Kind::Case:
        return Finding::Case;
    case ReleaseCode::Kind::NotAProduct:
        return Finding::NotAProduct;
    case ReleaseCode::Kind::WrongDigits:
        return Finding::WrongDigits;
    case ReleaseCode::Kind::Missing:
        return Finding::NoCode;
    case ReleaseCode::Kind::Unreadable:
    case ReleaseCode::Kind::Product:
        break;
    }
    return Finding::UnreadableCode;
}

ReleaseTexts texts_of(const ReleaseTable& table, std::string_view name)
{
    using C = BrandedColumn;
    return {name,
            cell(table, C::BrandOwner),
            cell(table, C::BrandName),
            cell(table, C::Ingredients),
            cell(table, C::NotSignificant),
            cell(table, C::ServingSize),
            cell(table, C::ServingUnit),
            cell(table, C::Household),
            cell(table, C::Category),
            cell(table, C::PackageWeight),
            cell(table, C::Preparation)};
}

} // namespace

std::string joined_texts(const ReleaseTexts& texts)
{
    std::string joined;
    for (const auto text : texts) {
        const auto start = joined.size();
        joined += text;
        if (text.find(between_texts) != std::string_view::npos)
            std::replace(joined.begin() + static_cast<std::ptrdiff_t>(start), joined.end(), between_texts, ' ');
        joined += between_texts;
    }
    return joined;
}

ReleaseTexts split_texts(std::string_view joined)
{
    ReleaseTexts texts;
    for (auto& text : texts) {
        const auto end = std::min(joined.find(between_texts), joined.size());
        text = joined.substr(0, end);
        joined.remove_prefix(std::min(end + 1, joined.size()));
    }
    return texts;
}

RecordHeads::RecordHeads(Spill& texts, const ReleaseChoice& choice, ReleaseReport& report)
    : texts_(&texts), choice_(choice), report_(&report)
{
    for (const auto& word : choice.words)
        words_.push_back(fold(word));
}

core::Result<bool> RecordHeads::read_foods(ByteStream& bytes, const std::string& source,
                                           const std::function<bool(std::uint64_t)>& go_on)
{
    auto table = ReleaseTable::open(bytes, source, food_columns());
    if (!table)
        return tl::make_unexpected(table.error());
    auto read = table->each(rows_between_words, go_on, [&](std::size_t row) -> core::Result<void> {
        const auto kind = cell(*table, FoodColumn::DataType);
        const auto fdc_id = read_whole(cell(*table, FoodColumn::FdcId));
        if (!fdc_id || (!kind.empty() && kind != "branded_food"))
            return {};
        foods_.push_back({*fdc_id, read_day(cell(*table, FoodColumn::PublicationDate)), names_.size()});
        names_ += cell(*table, FoodColumn::Description).substr(0, longest_name);
        names_ += '\n';
        if (names_.size() > most_name_bytes)
            return core::refuse(core::Error::Kind::TooLarge, "more foods than a load has memory for",
                                core::Place{source, row, {}, {}, "at most four million foods"});
        return {};
    });
    const auto by_number = [](const Food& a, const Food& b) { return a.fdc_id < b.fdc_id; };
    if (!std::is_sorted(foods_.begin(), foods_.end(), by_number))
        std::stable_sort(foods_.begin(), foods_.end(), by_number);
    return read;
}

const RecordHeads::Food* RecordHeads::food_of(std::uint32_t fdc_id) const
{
    const auto found = std::lower_bound(foods_.begin(), foods_.end(), fdc_id,
                                        [](const Food& food, std::uint32_t number) { return food.fdc_id < number; });
    return found != foods_.end() && found->fdc_id == fdc_id ? &*found : nullptr;
}

std::string_view RecordHeads::name_of(const Food& food) const
{
    const std::string_view from = std::string_view(names_).substr(food.name_at);
    return from.substr(0, from.find('\n'));
}

core::Result<bool> RecordHeads::read_branded(ByteStream& bytes, const std::string& source,
                                             const std::function<bool(std::uint64_t)>& go_on)
{
    auto table = ReleaseTable::open(bytes, source, branded_columns());
    if (!table)
        return tl::make_unexpected(table.error());
    auto read = table->each(rows_between_words, go_on, [&](std::size_t row) -> core::Result<void> {
        const auto fdc_id = read_whole(cell(*table, BrandedColumn::FdcId));
        if (!fdc_id || !table->complete()) {
            report_->note(Finding::BrokenRow, [&] { return source + ":" + std::to_string(row); });
            if (fdc_id)
                left_out_.add(*fdc_id);
            return {};
        }
        const auto* food = food_of(*fdc_id);
        const auto modified_on = read_day(cell(*table, BrandedColumn::ModifiedDate));
        take(cell(*table, BrandedColumn::GtinUpc), texts_of(*table, food ? name_of(*food) : std::string_view{}),
             cell(*table, BrandedColumn::Market), *fdc_id, food ? food->published_on : modified_on, modified_on);
        return {};
    });
    foods_ = {};
    names_ = {};
    return read;
}

bool RecordHeads::has_words(std::string_view name)
{
    if (words_.empty())
        return true;
    fold_into(name, folded_);
    return std::all_of(words_.begin(), words_.end(), [&](const std::string& word) {
        return !word.empty() && folded_.find(word) != std::string::npos; // a word of signs alone stands in no name
    });
}

bool RecordHeads::is_chosen(const core::Gtin& gtin, const ReleaseTexts& texts, std::string_view market)
{
    const auto category = texts[static_cast<std::size_t>(ReleaseText::Category)];
    if (!choice_.categories.empty())
        categories_.add(category);
    if (!choice_.market.empty())
        markets_.add(market);
    if (!choice_.numbers.empty() && choice_.numbers.count(gtin) == 0)
        return false;
    if (!choice_.market.empty() && in_small_letters(market) != in_small_letters(choice_.market))
        return false;
    if (!choice_.categories.empty() &&
        std::none_of(choice_.categories.begin(), choice_.categories.end(),
                     [&](const std::string& wanted) { return in_small_letters(wanted) == in_small_letters(category); }))
        return false;
    return has_words(texts[static_cast<std::size_t>(ReleaseText::Name)]);
}

void RecordHeads::leave_out(Finding finding, std::uint32_t fdc_id, std::string_view written_code, std::string_view name)
{
    left_out_.add(fdc_id);
    report_->note(finding, [&] { return sample_of(fdc_id, written_code, name); });
}

void RecordHeads::take(std::string_view written_code, const ReleaseTexts& texts, std::string_view market,
                       std::uint32_t fdc_id, std::uint32_t published_on, std::uint32_t modified_on)
{
    ++report_->records;
    const auto code = read_release_code(written_code);
    const auto name = texts[static_cast<std::size_t>(ReleaseText::Name)];
    if (code.kind != ReleaseCode::Kind::Product)
        return leave_out(finding_of(code.kind), fdc_id, written_code, name);
    if (!choice_.all() && !is_chosen(*code.gtin, texts, market))
        return leave_out(Finding::NotChosen, fdc_id, written_code, name);
    if (code.completed)
        report_->note(Finding::CodeCompleted, [&] { return sample_of(fdc_id, written_code, name); });
    const auto joined = joined_texts(texts);
    heads_.push_back({static_cast<std::uint64_t>(key_of(*code.gtin)), texts_->append(joined),
                      static_cast<std::uint32_t>(joined.size()), fdc_id, published_on, modified_on});
}

void RecordHeads::note_what_is_not_there()
{
    const auto note = [&](NotThere::What what, const std::string& asked, const NamesThere& names) {
        if (names.may_have(asked))
            return;
        auto like = names.like(asked);
        const auto more = names.count() - like.size();
        report_->not_there.push_back({what, asked, std::move(like), more});
    };
    for (const auto& category : choice_.categories)
        note(NotThere::What::Category, category, categories_);
    if (!choice_.market.empty())
        note(NotThere::What::Market, choice_.market, markets_);
}

std::vector<RecordHead> RecordHeads::sorted()
{
    texts_->flush();
    std::sort(heads_.begin(), heads_.end(), taken_before);
    return std::move(heads_);
}

} // namespace catalog
