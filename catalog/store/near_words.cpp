#include "catalog/store/near_words.h"

#include <algorithm>

namespace catalog {

unsigned slips_forgiven(std::string_view word)
{
    const auto letters =
        std::count_if(word.begin(), word.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80; });
    return letters >= 8 ? 2 : letters >= 4 ? 1 : 0;
}

NearWords::NearWords(std::string_view typed, unsigned most, bool beginning)
    : typed_(typed), most_(most), beginning_(beginning), rows_(typed.size() + 1), least_(1, 0), best_(1)
{
    for (unsigned i = 0; i <= typed_.size(); ++i)
        rows_[i] = i;
    best_[0] = rows_.back();
}

/// Fills the row after `depth` letters of the word; returns its least number.
unsigned NearWords::fill(std::size_t depth, std::string_view word)
{
    if (rows_.size() < (depth + 1) * (typed_.size() + 1)) {
        rows_.resize((depth + 1) * (typed_.size() + 1));
        least_.resize(depth + 1);
        best_.resize(depth + 1);
    }
    unsigned* now = row(depth);
    const unsigned* above = row(depth - 1);
    now[0] = static_cast<unsigned>(depth);
    unsigned least = now[0];
    for (std::size_t i = 1; i <= typed_.size(); ++i) {
        const unsigned other = word[depth - 1] == typed_[i - 1] ? 0 : 1;
        now[i] = std::min({above[i] + 1, now[i - 1] + 1, above[i - 1] + other});
        if (depth > 1 && i > 1 && word[depth - 1] == typed_[i - 2] && word[depth - 2] == typed_[i - 1])
            now[i] = std::min(now[i], row(depth - 2)[i - 2] + 1);
        least = std::min(least, now[i]);
    }
    least_[depth] = least;
    best_[depth] = std::min(best_[depth - 1], now[typed_.size()]);
    return least;
}

std::optional<unsigned> NearWords::within(unsigned slips) const
{
    return slips <= most_ ? std::optional(slips) : std::nullopt;
}

std::optional<unsigned> NearWords::look(std::string_view word)
{
    const auto longest = std::min(word.size(), before_.size());
    std::size_t shared = 0;
    while (shared < longest && word[shared] == before_[shared])
        ++shared;
    before_.assign(word);
    if (hopeless_ == 0 || shared < hopeless_) {
        hopeless_ = 0;
        for (filled_ = std::min(shared, filled_); filled_ < word.size() && hopeless_ == 0;) {
            const unsigned least = fill(++filled_, word);
            if (least > most_ && least_[filled_ - 1] >= most_) // a swap can still reach over one row
                hopeless_ = filled_;
        }
    }
    if (beginning_)
        return within(best_[filled_]);
    return hopeless_ != 0 ? std::nullopt : within(row(word.size())[typed_.size()]);
}

} // namespace catalog
