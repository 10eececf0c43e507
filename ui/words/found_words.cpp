#include "ui/words/found_words.h"

#include "ui/words/numbers.h"

namespace ui {
namespace {

std::string size_of(const core::Label& label, const Language& language)
{
    if (label.net_quantity && !label.net_quantity->printed.empty())
        return label.net_quantity->printed;
    if (label.serving == core::Serving{})
        return "";
    return language.fill(TextId::find_serving, {{"size", serving_words(label.serving, language)}});
}

} // namespace

std::string found_detail(const core::Product& product, const Language& language)
{
    const auto size = size_of(product.label, language);
    const auto detail = product.brand + (product.brand.empty() || size.empty() ? size : " · " + size);
    if (!product.this_place_only)
        return detail;
    return language.text(TextId::find_this_place) + (detail.empty() ? "" : "\n") + detail;
}

std::string found_words(const SearchCount& count, const Language& language)
{
    const auto n = grouped(std::to_string(count.products));
    if (count.products == 0)
        return language.text(count.all ? TextId::find_none : TextId::find_searching);
    if (!count.all)
        return language.fill(TextId::find_count_more, {{"n", n}});
    if (count.products > count.most_shown)
        return language.fill(TextId::find_count_first, {{"shown", std::to_string(count.most_shown)}, {"n", n}});
    return language.fill(count.products == 1 ? TextId::pick_count_one : TextId::pick_count_many, {{"n", n}});
}

} // namespace ui
