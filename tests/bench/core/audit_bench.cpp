// How long the audit of one sound label takes: it runs on every product of a load.
#include "core/audit/audit.h"
#include "core/figure/percent.h"
#include "tests/bench/timing.h"

#include <vector>

namespace {

using N = core::Nutrient;

core::Column column(int more)
{
    struct Row {
        N nutrient;
        std::int64_t milligrams;
    };
    // Fourteen lines, as most products of a release have.
    constexpr Row rows[] = {{N::Calories, 230'000},
                            {N::TotalFat, 8'000},
                            {N::SaturatedFat, 1'000},
                            {N::TransFat, 0},
                            {N::Cholesterol, 0},
                            {N::Sodium, 160},
                            {N::AddedSugars, 9'000},
                            {N::TotalCarbohydrate, 37'000},
                            {N::DietaryFiber, 4'000},
                            {N::TotalSugars, 12'000},
                            {N::Protein, 3'000},
                            {N::Calcium, 260},
                            {N::Iron, 8},
                            {N::Potassium, 235}};
    core::Column made;
    for (const auto& row : rows)
        made.lines[row.nutrient].amount = core::Figure{core::Content::milli(row.milligrams)};
    made.lines[N::Sodium].amount = core::Figure{core::Content::milli(160 + 10 * more)};
    return made;
}

} // namespace

int main()
{
    constexpr int products = 20'000;
    constexpr int few = 50;
    constexpr int repeats = 25;
    std::vector<core::Product> all;
    for (int i = 0; i < products; ++i) {
        core::Product product{core::Gtin::parse("036000291452").value(),
                              "Oat rounds",
                              "Cedar Hollow",
                              "",
                              "",
                              {},
                              core::Origin{"", 0, core::Date::of_number(20260101).value()}};
        product.label.serving.metric = core::Mass::whole(55);
        product.label.per_serving = column(i % 9);
        product.category = "Cookies & Biscuits";
        all.push_back(std::move(product));
    }
    const auto percents = [&all] {
        for (auto& product : all)
            for (auto& [nutrient, line] : product.label.per_serving.lines)
                if (const auto percent = core::percent_daily_value(nutrient, line.amount->amount, core::Panel::Of2016,
                                                                   core::Audience::Adult))
                    line.percent = core::PrintedPercent{*percent};
    };
    std::size_t doubts = 0;
    const auto cold = [&] { // more than the caches hold: each label comes from memory
        for (const auto& product : all)
            doubts += core::audit(product).size();
    };
    const auto warm = [&] { // as in a load, where the label was just made
        for (int i = 0; i < products; ++i)
            doubts += core::audit(all[static_cast<std::size_t>(i % few)]).size();
    };
    const auto tell = [](const char* what, double ms) {
        std::printf("  %-36s %6.3f us\n", what, ms * 1000 / products);
    };
    const double amounts_warm = bench::median_ms(repeats, warm);
    const double amounts_cold = bench::median_ms(repeats, cold);
    percents();
    const double both_warm = bench::median_ms(repeats, warm);
    const double both_cold = bench::median_ms(repeats, cold);
    bench::keep(doubts);
    std::printf("Audit of one sound label with 14 lines (%zu doubts):\n", doubts);
    tell("amounts, label just made", amounts_warm);
    tell("amounts, label out of the caches", amounts_cold);
    tell("amounts and percents, just made", both_warm);
    tell("amounts and percents, out of caches", both_cold);
    return 0;
}
