#include "catalog/read/release_serving.h"

#include "catalog/read/text.h"

#include <algorithm>
#include <cctype>
#include <charconv>
#include <cmath>
#include <vector>

namespace catalog {
namespace {

/// A word of a release and what a package prints for it.
struct UnitWord {
    std::string_view written; ///< in capitals
    std::string_view printed;
};
constexpr UnitWord unit_words[] = {{"ONZ", "oz"}, {"OZA", "fl oz"}, {"GRM", "g"},  {"GM", "g"},   {"MLT", "mL"},
                                   {"KGM", "kg"}, {"LTR", "L"},     {"LBR", "lb"}, {"LBS", "lb"}, {"PTL", "pt"},
                                   {"QTL", "qt"}, {"GLL", "gal"},   {"ML", "mL"},  {"H87", "ct"}, {"1N", "ct"}};

/// What a cell says where nobody wrote a measure.
constexpr std::string_view no_measures[] = {"AMOUNT PER SERVING", "PER SERVING", "PER CONTAINER", "NULL", "SERVING",
                                            "SERVING SIZE"};

std::string upper(std::string_view text)
{
    std::string capitals(text);
    for (char& letter : capitals)
        letter = static_cast<char>(std::toupper(static_cast<unsigned char>(letter)));
    return capitals;
}

bool is_blank(char c)
{
    return c == ' ' || c == '\t';
}

std::string_view trimmed(std::string_view text)
{
    while (!text.empty() && is_blank(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && is_blank(text.back()))
        text.remove_suffix(1);
    return text;
}

std::string_view printed_word(std::string_view word)
{
    if (word.size() > 3 || word.empty() || static_cast<unsigned char>(word.back()) < '7')
        return word;
    const auto capitals = upper(word);
    for (const auto& unit : unit_words)
        if (unit.written == capitals)
            return unit.printed;
    return word;
}

/// The text with its units as packages print them, single blanks between words.
std::string with_printed_units(std::string_view text)
{
    std::string printed;
    while (!(text = trimmed(text)).empty()) {
        const auto end = std::min(text.find(' '), text.size());
        if (!printed.empty())
            printed += ' ';
        printed += printed_word(text.substr(0, end));
        text.remove_prefix(end);
    }
    return printed;
}

/// Millionths behind a decimal number; 0 for none, or one beyond all packages. A 32-bit float has seven digits: what
/// stands behind them is no part of the figure.
std::int64_t micro_of(std::string_view text)
{
    double value = 0; // the release's own form: a float printed in full
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || end != text.data() + text.size() || !(value > 0) || value > 1e6)
        return 0;
    const double places = std::pow(10.0, 5 - static_cast<int>(std::floor(std::log10(value)))); // six digits
    return std::llround(std::round(value * places) / places * 1e6);
}

core::Measure measure_of(std::int64_t micro, bool milliliters)
{
    if (milliliters)
        return core::Volume::micro(micro);
    return core::Mass::micro(micro);
}

/// Whether a net quantity is one of volume; nothing where it is a count. Source: units of 16 CFR 500.8.
std::optional<bool> is_volume(std::string_view printed)
{
    const auto capitals = " " + upper(printed) + " ";
    const auto says = [&](std::initializer_list<std::string_view> words) {
        return std::any_of(words.begin(), words.end(), [&](std::string_view word) {
            return capitals.find(" " + std::string(word) + " ") != std::string::npos ||
                   capitals.find(" " + std::string(word) + ")") != std::string::npos;
        });
    };
    if (says({"ML", "L", "FL OZ", "GAL", "QT", "QTS", "PT", "GALLON", "QUART", "PINT"}))
        return true;
    if (says({"G", "KG", "OZ", "LB", "LBS"}))
        return false;
    return std::nullopt;
}

} // namespace

ReleaseServing read_release_serving(std::string_view size, std::string_view unit,
                                    const std::optional<core::NetQuantity>& net)
{
    ReleaseServing serving;
    serving.micro = micro_of(trimmed(size));
    if (serving.micro == 0)
        return serving;
    const auto written = upper(trimmed(unit));
    if (written == "G" || written == "GRM" || written == "ML" || written == "MLT") {
        serving.metric = measure_of(serving.micro, written.front() == 'M');
        return serving;
    }
    // MG, IU and GM were seen beside plain grams and millilitres: of the two the package tells.
    if (const auto volume = net ? is_volume(net->printed) : std::nullopt) {
        serving.unit_from = ReleaseServing::Unit::Guessed;
        serving.metric = measure_of(serving.micro, *volume);
    } else if (written == "GM") {
        serving.unit_from = ReleaseServing::Unit::Guessed;
        serving.metric = measure_of(serving.micro, false);
    } else
        serving.unit_from = ReleaseServing::Unit::Unknown;
    return serving;
}

std::string read_release_household(std::string_view text)
{
    text = trimmed(text.substr(0, text.find('|'))); // "1 PIZZA | null"
    if (text.empty())
        return {};
    const auto capitals = upper(text);
    if (std::any_of(std::begin(no_measures), std::end(no_measures),
                    [&](std::string_view none) { return none == capitals; }))
        return {};
    return shown(with_printed_units(text));
}

std::optional<core::NetQuantity> read_release_net(std::string_view text)
{
    text = trimmed(text);
    if (text.empty())
        return std::nullopt;
    std::vector<std::string> sizes;
    while (!text.empty() && sizes.size() < 4) {
        const auto end = std::min(text.find('/'), text.size());
        if (auto size = with_printed_units(text.substr(0, end)); !size.empty())
            sizes.push_back(std::move(size));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    if (sizes.empty())
        return std::nullopt;
    std::string printed = sizes.front();
    if (sizes.size() > 1)
        printed += " (" + sizes.back() + ")"; // "16 oz/1 lb/454 g": the metric one stands last
    return core::parse_net_quantity(shown(printed));
}

} // namespace catalog
