#include "ui/words/numbers.h"

#include <algorithm>

namespace ui {

std::string grouped(std::string_view digits)
{
    std::string text(digits);
    const auto point = std::min(text.find('.'), text.size());
    for (std::size_t at = point; at > 3; at -= 3)
        text.insert(at - 3, ",");
    return text;
}

std::string amount_words(const core::Figure& figure, core::Nutrient nutrient, const Language& language)
{
    const auto& known = core::info(nutrient);
    std::string text = grouped(core::number_of(figure, known.unit));
    if (const auto unit = core::unit_name(known.unit); !unit.empty())
        text.append(" ").append(unit);
    return figure.less_than ? language.fill(TextId::less_than, {{"amount", text}}) : text;
}

std::string percent_words(int percent, bool less_than, const Language& language)
{
    const std::string text = grouped(std::to_string(percent)) + "%";
    return less_than ? language.fill(TextId::percent_less_than, {{"percent", text}}) : text;
}

namespace {

constexpr std::int64_t tenth = 100'000'000;

std::string tenths(std::int64_t nano)
{
    return grouped(core::decimal_text(nano, nano % (10 * tenth) == 0 ? 0 : 1));
}

} // namespace

std::string tenths_down(core::Percent percent)
{
    return tenths(percent.nano() / tenth * tenth);
}

std::string tenths_up(core::Percent percent)
{
    return tenths((percent.nano() + tenth - 1) / tenth * tenth);
}

std::string count_words(core::Count count)
{
    return core::servings_text({core::ServingsPerContainer::Kind::Number, count});
}

std::string serving_words(const core::Serving& serving, const Language& language)
{
    if (!serving.metric)
        return serving.household.empty() ? language.text(TextId::size_not_printed) : serving.household;
    const std::string metric = core::measure_text(*serving.metric);
    return serving.household.empty() ? metric : serving.household + " (" + metric + ")";
}

std::string reading_sentence(core::Reading reading, std::string_view percent, const Language& language)
{
    switch (reading) {
    case core::Reading::Low:
        return language.fill(TextId::reading_low, {{"percent", percent}});
    case core::Reading::High:
        return language.fill(TextId::reading_high, {{"percent", percent}});
    case core::Reading::Between:
        break;
    }
    return language.fill(TextId::reading_between, {{"percent", percent}});
}

const std::string& reading_word(core::Reading reading, const Language& language)
{
    switch (reading) {
    case core::Reading::Low:
        return language.text(TextId::word_low);
    case core::Reading::High:
        return language.text(TextId::word_high);
    case core::Reading::Between:
        break;
    }
    return language.text(TextId::word_between);
}

std::string in_sentence(std::string_view name)
{
    std::string words(name);
    constexpr char case_bit = 0x20; // between a capital and its small letter, in ASCII and in Latin-1
    const auto byte = [&](std::size_t at) { return at < words.size() ? static_cast<unsigned char>(words[at]) : 0U; };
    if (byte(0) >= 'A' && byte(0) <= 'Z')
        words[0] = static_cast<char>(words[0] | case_bit);
    else if (byte(0) == 0xC3 && byte(1) >= 0x80 && byte(1) <= 0x9E && byte(1) != 0x97) // not the sign of multiplication
        words[1] = static_cast<char>(words[1] | case_bit);
    return words;
}

} // namespace ui
