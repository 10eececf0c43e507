#include "catalog/store/kind_words.h"

#include "catalog/store/fold.h"

namespace catalog {

bool has_words(std::string_view folded, std::string_view words)
{
    bool all = true;
    each_word(words, [&](std::string_view asked) {
        bool has = false;
        each_word(folded, [&](std::string_view word) { has = has || word == asked; });
        all = all && has;
    });
    return all;
}

} // namespace catalog
