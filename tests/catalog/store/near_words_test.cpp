#include "catalog/store/near_words.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <random>
#include <set>

using catalog::NearWords;
using catalog::slips_forgiven;

namespace {

/// The same by the definition, without any short cut (optimal string alignment).
unsigned slips(const std::string& a, const std::string& b)
{
    std::vector<std::vector<unsigned>> d(a.size() + 1, std::vector<unsigned>(b.size() + 1));
    for (unsigned i = 0; i <= a.size(); ++i)
        for (unsigned j = 0; j <= b.size(); ++j) {
            if (i == 0 || j == 0) {
                d[i][j] = i + j;
                continue;
            }
            d[i][j] = std::min({d[i - 1][j] + 1, d[i][j - 1] + 1, d[i - 1][j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1)});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                d[i][j] = std::min(d[i][j], d[i - 2][j - 2] + 1);
        }
    return d[a.size()][b.size()];
}

unsigned slips_of_beginning(const std::string& typed, const std::string& word)
{
    unsigned best = slips("", typed);
    for (std::size_t length = 1; length <= word.size(); ++length)
        best = std::min(best, slips(word.substr(0, length), typed));
    return best;
}

std::optional<unsigned> within(unsigned slips, unsigned most)
{
    return slips <= most ? std::optional(slips) : std::nullopt;
}

/// Every word that begins with the bytes after which nothing can be near any more is too far.
template<class TooFar>
void check_hopeless(const NearWords& near, const std::string& looked_at, const std::vector<std::string>& words,
                    TooFar too_far)
{
    const auto bytes = near.hopeless_after();
    if (bytes == 0)
        return;
    for (const auto& word : words)
        if (word.starts_with(looked_at.substr(0, bytes)))
            CHECK(too_far(word));
}

} // namespace

TEST_CASE("slips are forgiven in long words only")
{
    CHECK(slips_forgiven("oat") == 0);
    CHECK(slips_forgiven("oats") == 1);
    CHECK(slips_forgiven("cereals") == 1);
    CHECK(slips_forgiven("crackers") == 2);
    CHECK(slips_forgiven("борщ") == 1); // letters count, not bytes
}

TEST_CASE("a slip is a letter too many, too few, wrong, or two swapped")
{
    NearWords near("cereal", 1, false);
    CHECK(near.look("cereal") == 0U);
    CHECK(near.look("cereall") == 1U);
    CHECK(near.look("ceral") == 1U);
    CHECK(near.look("cerial") == 1U);
    CHECK(near.look("ceraels") == std::nullopt);
    CHECK(near.look("ceraael") == std::nullopt);
    CHECK(near.look("ecreal") == 1U);
    CHECK(near.look("serial") == std::nullopt);
    CHECK(near.look("") == std::nullopt);
}

TEST_CASE("near words agree with the definition, in order and in any order")
{
    std::mt19937 random(4711);
    const auto word = [&] {
        std::string letters;
        for (auto length = 1 + random() % 9; length > 0; --length)
            letters += "abc"[random() % 3];
        return letters;
    };
    for (int run = 0; run < 40; ++run) {
        std::vector<std::string> words;
        for (int i = 0; i < 150; ++i)
            words.push_back(word());
        if (run % 2 == 0)
            std::sort(words.begin(), words.end());
        const auto typed = word();
        const unsigned most = 1 + random() % 2;
        NearWords whole(typed, most, false);
        NearWords beginning(typed, most, true);
        for (const auto& other : words) {
            CAPTURE(typed);
            CAPTURE(other);
            CHECK(whole.look(other) == within(slips(other, typed), most));
            check_hopeless(whole, other, words, [&](const auto& near_it) { return slips(near_it, typed) > most; });
            CHECK(beginning.look(other) == within(slips_of_beginning(typed, other), most));
            if (slips_of_beginning(typed, other) > most)
                check_hopeless(beginning, other, words,
                               [&](const auto& near_it) { return slips_of_beginning(typed, near_it) > most; });
        }
    }
}
