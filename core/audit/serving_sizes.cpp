#include "core/audit/families.h"
#include "core/label/sizes.h"
#include "core/rules/categories.h"

namespace core::audited {
namespace {

using R = DoubtRule;

std::int64_t nano_of(const Measure& measure)
{
    return std::visit([](auto amount) { return amount.nano(); }, measure);
}

/// Whether servings times serving size come to the net quantity within two percent: then nothing more need be asked.
bool plainly_fit(const Label& label)
{
    const Wide net = Wide{nano_of(*label.net_quantity->metric)} * 1'000'000'000;
    const Wide all = Wide{nano_of(*label.serving.metric)} * label.servings.count.nano();
    return all * 50 >= net * 49 && all * 50 <= net * 51;
}

void doubt_net(const Facts& facts, std::vector<Doubt>& doubts)
{
    const Label& label = facts.product.label;
    if (!facts.has_serving || !label.net_quantity || !label.net_quantity->metric || label.servings.count <= Count{})
        return;
    if (!same_dimension(*label.net_quantity->metric, *label.serving.metric) || plainly_fit(label))
        return;
    if (sizes_of(label).contradict)
        doubts.push_back({.rule = R::ServingsAgainstNet,
                          .serving = label.serving.metric,
                          .reference = label.net_quantity->metric,
                          .servings = label.servings.count});
}

/// A label may give one piece as the serving from half the reference amount up to twice it, and beyond where it is
/// eaten at once (21 CFR 101.9(b)(2)(i)); three times either way is where a slip is likelier (common practice).
constexpr std::int64_t far_times = 3;

/// A package that is one serving may be as small as it likes (21 CFR 101.9(b)(6)).
bool is_one_serving(const Label& label)
{
    return label.servings.kind == ServingsPerContainer::Kind::Single || label.servings.count == Count::whole(1);
}

void doubt_reference(const Facts& facts, std::vector<Doubt>& doubts)
{
    const Product& product = facts.product;
    const ReferenceAmount* const food =
        product.reference_food ? product.reference_food : reference_of_category(product.category);
    if (!food)
        return;
    if (food->kind == FoodKind::Young && product.label.audience == Audience::Adult)
        doubts.push_back({.rule = R::AudienceOfFood});
    if (!facts.has_serving || food->nano == 0 || food->volume != facts.volume)
        return;
    const bool small = facts.serving.high * far_times < food->nano && !is_one_serving(product.label);
    const bool large = facts.serving.low > food->nano * far_times;
    if (small || large)
        doubts.push_back(
            {.rule = R::FarFromReference, .serving = product.label.serving.metric, .reference = amount_of(*food)});
}

} // namespace

void doubt_sizes(const Facts& facts, std::vector<Doubt>& doubts)
{
    doubt_net(facts, doubts);
    doubt_reference(facts, doubts);
}

} // namespace core::audited
