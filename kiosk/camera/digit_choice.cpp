#include "kiosk/camera/digit_choice.h"

#include "core/code/gtin.h"
#include "core/code/upc_e.h"

#include <algorithm>
#include <array>
#include <string>
#include <utility>

namespace kiosk {
namespace {

/// Which of the six left digits are of set B, first digit in the highest of six bits, by the first digit of an EAN-13
/// and by the check digit of a UPC-E whose number system is 1 (for 0 the other way round).
constexpr std::array<unsigned, 10> patterns_13{0x00, 0x0B, 0x0D, 0x0E, 0x13, 0x19, 0x1C, 0x15, 0x16, 0x1A};
constexpr std::array<unsigned, 10> patterns_upc_e{0x07, 0x0B, 0x0D, 0x0E, 0x13, 0x19, 0x1C, 0x15, 0x16, 0x1A};

/// A code in the making: digits so far and what speaks for them.
struct Way {
    double weight = -1e30;
    std::string digits{};
};

/// The best ways to one remainder of the weighted sum, best first.
template<std::size_t many>
using Best = std::array<Way, many>;

template<std::size_t many>
void put(Best<many>& best, Way way)
{
    for (Way& other : best)
        if (way.weight > other.weight)
            std::swap(way, other);
}

/// Keeps the best of all codes, best first.
template<std::size_t many>
class Ranks {
public:
    void offer(Reading reading, double weight)
    {
        Weighed code{std::move(reading), weight};
        for (Weighed& other : codes_)
            if (code.weight > other.weight)
                std::swap(code, other);
    }
    [[nodiscard]] std::array<Weighed, many>& codes() { return codes_; }

private:
    std::array<Weighed, many> codes_;
};

/// What the likeliest digits would weigh if nothing bound them together.
double freely(const Evidence& evidence, const Layout& layout)
{
    double sum = 0;
    for (std::size_t i = 0; i < evidence.size(); ++i) {
        const bool two_sets = i < layout.left && layout.symbology != core::Symbology::Ean8;
        sum += static_cast<double>(*std::max_element(evidence[i].begin(), evidence[i].begin() + (two_sets ? 20 : 10)));
    }
    return sum;
}

/// The places of a row whose digits are chosen: what speaks for them, whether they are of set B, and by how much they
/// weigh in the sum that the check digit completes.
struct Places {
    const Evidence& evidence;
    std::size_t count;
    unsigned sets; ///< set B, first place in the highest of six bits
    std::array<int, 12> weighs{};
};

constexpr unsigned of_set_b(unsigned sets, std::size_t place)
{
    return place < 6 ? (sets >> (5 - place)) & 1 : 0;
}

/// The best rows whose weighted sum, together with `before`, is a multiple of ten.
template<std::size_t many>
Best<many> best_rows(const Places& places, int before)
{
    std::array<Best<many>, 10> ways;
    ways[static_cast<std::size_t>(before % 10)][0] = {0, ""};
    for (std::size_t i = 0; i < places.count; ++i) {
        const auto* evidence = places.evidence[i].data() + (of_set_b(places.sets, i) != 0 ? 10 : 0);
        std::array<Best<many>, 10> next;
        for (int rest = 0; rest < 10; ++rest)
            for (const Way& way : ways[static_cast<std::size_t>(rest)])
                for (int digit = 0; way.weight > -1e29 && digit < 10; ++digit) {
                    auto& best = next[static_cast<std::size_t>((rest + digit * places.weighs[i]) % 10)];
                    const double weight = way.weight + static_cast<double>(evidence[digit]);
                    if (weight > best.back().weight)
                        put(best, {weight, way.digits + static_cast<char>('0' + digit)});
                }
        ways = std::move(next);
    }
    return ways[0];
}

template<std::size_t many>
Ranks<many> rank_13(const Evidence& evidence)
{
    Ranks<many> ranks;
    for (int first = 0; first < 10; ++first) {
        const Places places{
            evidence, 12, patterns_13[static_cast<std::size_t>(first)], {3, 1, 3, 1, 3, 1, 3, 1, 3, 1, 3, 1}};
        for (const Way& way : best_rows<many>(places, first))
            if (first == 0)
                ranks.offer({way.digits, core::Symbology::UpcA}, way.weight);
            else
                ranks.offer({static_cast<char>('0' + first) + way.digits, core::Symbology::Ean13}, way.weight);
    }
    return ranks;
}

template<std::size_t many>
Ranks<many> rank_8(const Evidence& evidence)
{
    Ranks<many> ranks;
    for (const Way& way : best_rows<many>({evidence, 8, 0, {3, 1, 3, 1, 3, 1, 3, 1}}, 0))
        ranks.offer({way.digits, core::Symbology::Ean8}, way.weight);
    return ranks;
}

/// What each digit of a UPC-E weighs in the number that it stands for: its last digit says where the zeros were left
/// out.
std::array<int, 12> weights_upc_e(int last)
{
    if (last <= 2)
        return {1, 3, 3, 1, 3, 1}; // number system, 1 2 L 0 0 0 0 3 4 5
    if (last == 3)
        return {1, 3, 1, 1, 3, 0}; // 1 2 3 0 0 0 0 0 4 5
    if (last == 4)
        return {1, 3, 1, 3, 3, 0}; // 1 2 3 4 0 0 0 0 0 5
    return {1, 3, 1, 3, 1, 3};     // 1 2 3 4 5 0 0 0 0 L
}

/// A UPC-E has its check digit in the number sets alone.
template<std::size_t many>
void offer_upc_e(const Evidence& evidence, int system, int check, int last, Ranks<many>& ranks)
{
    const unsigned sets = patterns_upc_e[static_cast<std::size_t>(check)] ^ (system == 0 ? 0x3FU : 0U);
    const auto weighs = weights_upc_e(last);
    const double for_last =
        static_cast<double>(evidence[5][static_cast<std::size_t>(last) + (of_set_b(sets, 5) != 0 ? 10 : 0)]);
    for (const Way& way : best_rows<many>({evidence, 5, sets, weighs}, 3 * system + weighs[5] * last + check)) {
        std::string digits = std::to_string(system) + way.digits + std::to_string(last) + std::to_string(check);
        if (way.digits.size() == 5 && core::expand_upc_e(digits))
            ranks.offer({std::move(digits), core::Symbology::UpcE}, way.weight + for_last);
    }
}

template<std::size_t many>
Ranks<many> rank_upc_e(const Evidence& evidence)
{
    Ranks<many> ranks;
    for (const int system : {0, 1})
        for (int check = 0; check < 10; ++check)
            for (int last = 0; last < 10; ++last)
                offer_upc_e(evidence, system, check, last, ranks);
    return ranks;
}

template<std::size_t many>
Ranks<many> rank(const Evidence& evidence, const Layout& layout)
{
    if (layout.symbology == core::Symbology::Ean13)
        return rank_13<many>(evidence);
    return layout.symbology == core::Symbology::Ean8 ? rank_8<many>(evidence) : rank_upc_e<many>(evidence);
}

} // namespace

Choice choose(const Evidence& evidence, const Layout& layout)
{
    if (evidence.size() != layout.digits())
        return {};
    auto ranks = rank<2>(evidence, layout);
    auto& [best, next] = ranks.codes();
    return {std::move(best.reading), std::move(next.reading), best.weight - next.weight,
            freely(evidence, layout) - best.weight};
}

std::vector<Weighed> likeliest(const Evidence& evidence, const Layout& layout)
{
    if (evidence.size() != layout.digits())
        return {};
    constexpr std::size_t many = 20;
    const auto ranks = rank<many>(evidence, layout).codes();
    return {ranks.begin(), ranks.end()};
}

} // namespace kiosk
