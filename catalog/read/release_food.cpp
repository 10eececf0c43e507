#include "catalog/read/release_food.h"

#include "catalog/read/release_not_significant.h"
#include "catalog/read/release_serving.h"
#include "catalog/read/text.h"

#include <algorithm>

namespace catalog {
namespace {

constexpr std::int64_t all_labels_new = 20'210'101; // 21 CFR 101.9, compliance dates of 27 May 2016 as moved in 2018

std::uint32_t bit(ReleaseNotice notice)
{
    return 1U << static_cast<unsigned>(notice);
}

/// Makes one product.
class Reading {
public:
    Reading(const ReleaseRecord& record, const ReleaseTexts& texts, std::span<const ReleaseRow> rows)
        : record_(record), texts_(texts), rows_(rows)
    {
    }

    ReleaseProduct read()
    {
        auto name = text(ReleaseText::Name);
        if (name.empty())
            return refused(ReleaseRefusal::NoName);
        net_ = read_release_net(at(ReleaseText::NetQuantity));
        serving_ = read_release_serving(at(ReleaseText::ServingSize), at(ReleaseText::ServingUnit), net_);
        if (serving_.micro == 0)
            return refused(ReleaseRefusal::NoServingSize);
        auto lines = column();
        if (lines.lines.empty())
            return refused(ReleaseRefusal::NoNutrients);
        auto brand = text(ReleaseText::BrandName);
        if (brand.empty())
            brand = text(ReleaseText::BrandOwner);
        read_.product = core::Product{.gtin = record_.gtin,
                                      .name = std::move(name),
                                      .brand = std::move(brand),
                                      .aisle = {},
                                      .note = {},
                                      .label = label(std::move(lines)),
                                      .origin = origin(),
                                      .category = text(ReleaseText::Category)};
        return std::move(read_);
    }

private:
    [[nodiscard]] std::string_view at(ReleaseText which) const { return texts_[static_cast<std::size_t>(which)]; }

    std::string text(ReleaseText which)
    {
        auto tidied = tidy(at(which));
        if (tidied)
            return *std::move(tidied);
        read_.notices |= bit(ReleaseNotice::TextCut);
        return shown(at(which));
    }

    ReleaseProduct refused(ReleaseRefusal why)
    {
        read_.refusal = why;
        return std::move(read_);
    }

    core::Column column()
    {
        const ServingBehind behind{serving_.micro, panel_of(rows_, record_.published_on), record_.significant_digits};
        panel_ = behind.panel;
        core::Column column;
        std::array<std::uint8_t, core::nutrient_count>
            from{}; // which row of release_nutrients a line came from, plus 1
        for (const auto& row : rows_) {
            const auto& nutrient = release_nutrients[row.nutrient];
            auto& taken = from[static_cast<std::size_t>(nutrient.nutrient)];
            if (taken != 0)
                read_.notices |= taken == row.nutrient + 1 ? bit(ReleaseNotice::NutrientTwice) : 0U;
            if (taken != 0 && taken <= row.nutrient + 1)
                continue;
            taken = static_cast<std::uint8_t>(row.nutrient + 1);
            auto line = recover(nutrient, row.amount, row.derivation, behind);
            if (row.percent != no_percent && !line.percent)
                line.percent = core::PrintedPercent{row.percent, false};
            read_.notices |= row.derivation == Derivation::None ? bit(ReleaseNotice::NoDerivation) : 0U;
            read_.notices |= line.worked_back ? bit(ReleaseNotice::WorkedBack) : 0U;
            column.lines.insert_or_assign(nutrient.nutrient, line);
        }
        column.not_significant = read_not_significant(at(ReleaseText::NotSignificant));
        return column;
    }

    core::Label label(core::Column column)
    {
        core::Label label;
        label.panel = panel_;
        label.serving = {read_release_household(at(ReleaseText::Household)), serving_.metric};
        if (serving_.unit_from == ReleaseServing::Unit::Guessed)
            read_.notices |= bit(ReleaseNotice::UnitGuessed);
        if (serving_.unit_from == ReleaseServing::Unit::Unknown)
            read_.notices |= bit(ReleaseNotice::UnitUnknown);
        if (at(ReleaseText::Preparation) == "PREPARED") // the first column of a label is always as packaged
            label.second = core::SecondColumn{core::SecondColumn::Kind::AsPrepared, std::move(column)};
        else
            label.per_serving = std::move(column);
        if (auto ingredients = text(ReleaseText::Ingredients); !ingredients.empty())
            label.ingredients = std::move(ingredients);
        label.net_quantity = std::move(net_);
        return label;
    }

    [[nodiscard]] core::Origin origin() const
    {
        const auto day = core::Date::of_number(record_.published_on);
        static const auto unknown_day = core::Date::of_number(19'000'101);
        return {std::string(record_.source), record_.fdc_id, day ? *day : *unknown_day, core::Origin::Kind::Release};
    }

    const ReleaseRecord& record_;
    const ReleaseTexts& texts_;
    std::span<const ReleaseRow> rows_;
    std::optional<core::NetQuantity> net_;
    ReleaseServing serving_;
    core::Panel panel_ = core::Panel::Of2016;
    ReleaseProduct read_;
};

} // namespace

ReleaseProduct product_of(const ReleaseRecord& record, const ReleaseTexts& texts, std::span<const ReleaseRow> rows)
{
    return Reading(record, texts, rows).read();
}

core::Panel panel_of(std::span<const ReleaseRow> rows, std::int64_t published_on)
{
    bool vitamin_d = false;
    bool potassium = false;
    bool percents = false;
    bool amounts = false;
    for (const auto& row : rows) {
        const auto nutrient = release_nutrients[row.nutrient].nutrient;
        if (nutrient == core::Nutrient::AddedSugars)
            return core::Panel::Of2016;
        vitamin_d = vitamin_d || nutrient == core::Nutrient::VitaminD;
        potassium = potassium || nutrient == core::Nutrient::Potassium;
        if (core::info(nutrient).rounding != core::Rounding::Vitamin || row.amount.mantissa == 0)
            continue; // a zero was written as a percent and as an amount alike
        const bool as_percent =
            row.derivation == Derivation::PercentOnly || release_nutrients[row.nutrient].daily_value_of_percent > 0;
        percents = percents || as_percent;
        amounts = amounts || (!as_percent && nutrient != core::Nutrient::Potassium);
    }
    if (percents != amounts)
        return percents ? core::Panel::Older : core::Panel::Of2016;
    if (vitamin_d && potassium)
        return core::Panel::Of2016;
    return published_on < all_labels_new ? core::Panel::Older : core::Panel::Of2016;
}

} // namespace catalog
