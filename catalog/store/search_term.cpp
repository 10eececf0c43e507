#include "catalog/store/search_term.h"

#include "catalog/store/fold.h"
#include "catalog/store/kind_words.h"

#include <algorithm>

namespace catalog {

SearchTerm::SearchTerm(std::string_view word, bool is_last, std::size_t products)
    : word_(word), is_last_(is_last), slips_(slips_forgiven(word)),
      near_(word, slips_, is_last), products_{ProductBits(products), ProductBits(products), ProductBits(products),
                                              ProductBits(products)}
{
    look_at_spanish(false);
}

Fit SearchTerm::word_fit(std::string_view word, bool with_slips)
{
    if (word == word_)
        return Fit::Exact;
    if (is_last_ && word.starts_with(word_))
        return Fit::Beginning;
    return with_slips && slips_ > 0 && near_.look(word) ? Fit::Slips : Fit::None;
}

Fit SearchTerm::fit(std::string_view folded, bool with_slips)
{
    auto best = Fit::None;
    each_word(folded, [&](std::string_view word) { best = std::min(best, word_fit(word, with_slips)); });
    return best;
}

void SearchTerm::look_at_spanish(bool with_slips)
{
    meant_with_slips_ = with_slips;
    meant_.clear();
    for (const auto& [spanish, english] : kind_words())
        if (const auto fit = word_fit(spanish, with_slips); fit != Fit::None)
            meant_.push_back({english, fit});
}

Fit SearchTerm::kind_fit(std::string_view folded_kind, bool with_slips)
{
    if (with_slips && !meant_with_slips_)
        look_at_spanish(true);
    auto best = fit(folded_kind, with_slips);
    for (const auto& meant : meant_)
        if (meant.fit < best && (with_slips || meant.fit != Fit::Slips) && has_words(folded_kind, meant.english))
            best = meant.fit;
    return best < Fit::Kind ? Fit::Kind : best;
}

} // namespace catalog
