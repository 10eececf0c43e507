#include "catalog/load/release_products.h"

#include "catalog/store/row.h"

#include <algorithm>

namespace catalog {
namespace {

constexpr std::size_t records_between_words = 4'096;

Finding finding_of(ReleaseRefusal refusal)
{
    switch (refusal) {
    case ReleaseRefusal::NoServingSize:
        return Finding::NoServingSize;
    case ReleaseRefusal::NoName:
        return Finding::NoName;
    case ReleaseRefusal::NoNutrients:
        break;
    }
    return Finding::NoNutrients;
}

struct NoticeFinding {
    ReleaseNotice notice;
    Finding finding;
};
constexpr NoticeFinding notice_findings[] = {
    {ReleaseNotice::NoDerivation, Finding::NoDerivation},   {ReleaseNotice::WorkedBack, Finding::WorkedBack},
    {ReleaseNotice::UnitGuessed, Finding::UnitGuessed},     {ReleaseNotice::UnitUnknown, Finding::UnitUnknown},
    {ReleaseNotice::NutrientTwice, Finding::NutrientTwice}, {ReleaseNotice::TextCut, Finding::TextCut}};

/// Makes the products of one part after the other.
class Making {
public:
    Making(const ReadRelease& release, const Spill& texts, const AmountParts& amounts, ReleaseReport& report,
           const std::function<void(core::Product)>& take)
        : release_(release), texts_(texts), amounts_(amounts), report_(report), take_(take)
    {
    }

    bool part(std::size_t part, const std::function<bool(std::uint64_t)>& go_on)
    {
        const auto rows = amounts_.read(part);
        std::size_t at = 0;
        std::size_t asked = 0;
        const auto end = amounts_.last_of(part);
        for (std::size_t place = amounts_.first_of(part); place < end;) {
            const std::size_t first = place;
            const std::size_t first_row = at;
            for (; place < end && release_.heads[place].gtin == release_.heads[first].gtin; ++place)
                at += amounts_.count_of(place);
            product(first, place, std::span(rows).subspan(first_row, at - first_row));
            if (place - asked >= records_between_words) {
                asked = place;
                if (!go_on(place))
                    return false;
            }
        }
        return true;
    }

private:
    /// The records [first, last) of one product, the one to take first.
    void product(std::size_t first, std::size_t last, std::span<const SpilledAmount> rows)
    {
        std::size_t chosen = first;
        std::size_t skipped = 0;
        while (chosen < last && amounts_.count_of(chosen) == 0)
            ++chosen;
        for (std::size_t place = first; place < std::min(chosen, last); ++place)
            skipped += amounts_.count_of(place);
        if (chosen == last)
            chosen = first; // none has amounts: the newest one says so
        const auto& head = release_.heads[chosen];
        texts_.read(head.texts_at, head.texts_size, bytes_);
        const auto texts = split_texts(bytes_);
        const auto sample = [&] { return sample_of(head, texts); };
        for (std::size_t place = first; place < last; ++place)
            if (place != chosen)
                report_.note(Finding::OlderRecord, [&] { return sample_of(release_.heads[place], texts); });
        if (chosen != first)
            report_.note(Finding::OlderTaken, sample);
        amounts_of(rows.subspan(skipped, amounts_.count_of(chosen)));
        auto made = product_of({gtin_of(static_cast<std::int64_t>(head.gtin)), head.fdc_id, day_of(head),
                                release_.significant_digits, release_.name},
                               texts, read_rows_);
        for (const auto& known : notice_findings)
            if (made.noticed(known.notice))
                report_.note(known.finding, sample);
        if (!made.product)
            return report_.note(finding_of(*made.refusal), sample);
        take_(*std::move(made.product));
    }

    void amounts_of(std::span<const SpilledAmount> rows)
    {
        read_rows_.clear();
        for (const auto& row : rows)
            read_rows_.push_back({row.nutrient,
                                  static_cast<Derivation>(row.derivation),
                                  {row.mantissa, row.decimals},
                                  row.percent == 255 ? no_percent : std::uint16_t{row.percent}});
    }

    /// A record without a day stands in its release all the same: it is no newer than that.
    [[nodiscard]] std::uint32_t day_of(const RecordHead& head) const
    {
        return head.published_on != 0 ? head.published_on : release_.newest_day;
    }

    static std::string sample_of(const RecordHead& head, const ReleaseTexts& texts)
    {
        return "fdc_id " + std::to_string(head.fdc_id) + ", " + gtin_of(static_cast<std::int64_t>(head.gtin)).digits() +
               ": " + std::string(texts[static_cast<std::size_t>(ReleaseText::Name)].substr(0, 60));
    }

    const ReadRelease& release_;
    const Spill& texts_;
    const AmountParts& amounts_;
    ReleaseReport& report_;
    const std::function<void(core::Product)>& take_;
    std::string bytes_;
    std::vector<ReleaseRow> read_rows_;
};

} // namespace

std::uint32_t newest_day(const std::vector<RecordHead>& heads)
{
    std::uint32_t newest = 0;
    for (const auto& head : heads)
        newest = std::max(newest, head.published_on);
    return newest;
}

std::string release_name(std::uint32_t newest)
{
    std::string name = "FoodData Central, Branded Foods";
    if (const auto day = core::Date::of_number(newest))
        name += ", " + day->text();
    return name;
}

bool make_products(const ReadRelease& release, const Spill& texts, const AmountParts& amounts, ReleaseReport& report,
                   const std::function<void(core::Product)>& take, const std::function<bool(std::uint64_t)>& go_on)
{
    Making making(release, texts, amounts, report, take);
    for (std::size_t part = 0; part < amounts.parts(); ++part)
        if (!making.part(part, go_on))
            return false;
    return true;
}

} // namespace catalog
