// How long two full labels take to compare exactly, on ranges, against the same rows in floating point and bare
// numbers.
#include "core/compare/comparison.h"
#include "core/figure/daily_values.h"
#include "tests/bench/timing.h"

#include <array>
#include <cstdio>
#include <stdexcept>
#include <vector>

namespace {

constexpr int comparisons = 2000;
constexpr core::Basis bases[] = {core::Basis::Serving, core::Basis::Package, core::Basis::SameAmount};

/// A label that prints every nutrient there is, with figures that the rule prints.
core::Label full_label(std::int64_t grams)
{
    core::Label label;
    label.serving.metric = core::Measure(core::Mass::whole(30 + grams));
    label.servings = {core::ServingsPerContainer::Kind::Number, core::Count::whole(8)};
    for (const auto& known : core::nutrients()) {
        const auto unit = core::nano_of(known.unit);
        label.per_serving.lines[known.nutrient].amount =
            core::Figure{core::Content::from_nano(20 * (1 + grams) * unit), false, 0};
    }
    return label;
}

/// A row of the naive way: bare numbers. It tells less, and tells it wrongly where figures are rounded; it is here only
/// for its time.
struct NaiveRow {
    core::Nutrient nutrient;
    core::Aim aim;
    double left;
    double right;
    double left_percent;
    double right_percent;
    int sign;
};

double in_grams(std::int64_t nano)
{
    return static_cast<double>(nano) / 1e9;
}

double naive_amount(const core::Label& label, core::Nutrient nutrient, core::Basis basis)
{
    const double printed = in_grams(label.per_serving.find(nutrient)->amount->amount.nano());
    switch (basis) {
    case core::Basis::Package:
        return printed * in_grams(label.servings.count.nano());
    case core::Basis::SameAmount:
        return printed / in_grams(std::get<core::Mass>(*label.serving.metric).nano()) * 100;
    case core::Basis::Serving:
    case core::Basis::SameMeasure:
    case core::Basis::MyAmount:
    case core::Basis::Prepared:
        break;
    }
    return printed;
}

double naive_percent(const core::Label& label, core::Nutrient nutrient, double amount)
{
    const auto daily = core::daily_value(nutrient, label.panel, label.audience);
    return daily ? amount / in_grams(daily->nano()) * 100 : 0;
}

/// The same rows out of the same labels, with percents, in double.
std::vector<NaiveRow> naive_compare(const core::Label& left, const core::Label& right, core::Basis basis)
{
    std::vector<NaiveRow> rows;
    for (const auto& known : core::nutrients()) {
        const double a = naive_amount(left, known.nutrient, basis);
        const double b = naive_amount(right, known.nutrient, basis);
        rows.push_back({known.nutrient, core::aim_of(known.nutrient), a, b, naive_percent(left, known.nutrient, a),
                        naive_percent(right, known.nutrient, b),
                        a < b   ? -1
                        : a > b ? 1
                                : 0});
    }
    return rows;
}

} // namespace

int main()
{
    const auto left = full_label(0);
    const auto right = full_label(1);
    const std::size_t rows = core::compare(left, right, core::Basis::Serving).rows.size();
    if (rows != naive_compare(left, right, core::Basis::Serving).size())
        throw std::logic_error("the two do not compare the same rows");
    std::printf("%zu rows, %d comparisons on each basis\n", rows, comparisons);
    constexpr std::array names{"one serving", "whole package", "100 g"};
    for (std::size_t i = 0; i < names.size(); ++i) {
        const double naive_ms = bench::median_ms(9, [&] {
            for (int n = 0; n < comparisons; ++n)
                bench::keep(naive_compare(left, right, bases[i]));
        });
        const double exact_ms = bench::median_ms(9, [&] {
            for (int n = 0; n < comparisons; ++n)
                bench::keep(core::compare(left, right, bases[i]));
        });
        std::printf("%s\n", names[i]);
        bench::row("bare numbers in double", naive_ms, naive_ms);
        bench::row("core::compare, ranges, percents, why", exact_ms, naive_ms);
        std::printf("  one comparison %.1f us\n", exact_ms * 1000 / comparisons);
    }
}
