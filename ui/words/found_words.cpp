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

/// A word in quotes; of one that could be wider than the screen the beginning.
std::string quoted(std::string word)
{
    constexpr std::size_t longest = 14; // bytes: most words of a language are no longer, and 10 wide letters fit
    if (word.size() > longest) {
        std::size_t end = longest - 4;
        while (end > 0 && (static_cast<unsigned char>(word[end]) & 0xC0U) == 0x80U)
            --end; // inside a letter
        word = word.substr(0, end) + "...";
    }
    return "“" + word + "”";
}

std::string left_out_words(const std::vector<std::string>& left_out, const Language& language)
{
    if (left_out.empty())
        return "";
    std::string words;
    for (const auto& word : left_out)
        words += (words.empty() ? "" : ", ") + quoted(word);
    const auto id = left_out.size() == 1 ? TextId::find_left_out_one : TextId::find_left_out_many;
    return language.fill(id, {{"words", words}}) + "\n";
}

std::string count_words(const SearchCount& count, const Language& language)
{
    const auto n = grouped(std::to_string(count.products));
    if (!count.all)
        return language.fill(TextId::find_count_more, {{"n", n}});
    if (count.products > count.most_shown)
        return language.fill(TextId::find_count_first, {{"shown", std::to_string(count.most_shown)}, {"n", n}});
    return language.fill(count.products == 1 ? TextId::pick_count_one : TextId::pick_count_many, {{"n", n}});
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
    if (count.products == 0)
        return language.text(count.all ? TextId::find_none : TextId::find_searching);
    return left_out_words(count.left_out, language) + count_words(count, language);
}

} // namespace ui
