#include "catalog/store/search_words.h"

#include "catalog/store/fold.h"

#include <algorithm>
#include <stdexcept>

namespace catalog {

void SearchWords::append(std::string_view row)
{
    std::string word;
    while (!row.empty()) {
        const std::size_t shared = static_cast<std::uint8_t>(row[0]);
        const std::size_t own = row.size() > 1 ? static_cast<std::uint8_t>(row[1]) : 0;
        if (shared > word.size() || own == 0 || row.size() < 2 + own || shared + own > longest_word)
            throw std::runtime_error("catalog: the words of the name search are torn");
        word.resize(shared);
        word += row.substr(2, own);
        row.remove_prefix(2 + own);
        letters_ += word;
        ends_.push_back(static_cast<std::uint32_t>(letters_.size()));
    }
}

std::size_t SearchWords::first_from(std::string_view word) const
{
    std::size_t low = 0;
    for (std::size_t count = size(); count > 0;) {
        const auto half = count / 2;
        if ((*this)[low + half] < word) {
            low += half + 1;
            count -= half + 1;
        } else {
            count = half;
        }
    }
    return low;
}

std::pair<std::size_t, std::size_t> SearchWords::beginning_with(std::string_view letters) const
{
    const auto first = first_from(letters);
    std::string behind(letters);
    behind += "\xFF\xFF"; // in no word: UTF-8 has no such byte
    return {first, first_from(behind)};
}

std::pair<std::size_t, std::size_t> SearchWords::same_as(std::string_view word) const
{
    const auto first = first_from(word);
    return {first, first < size() && (*this)[first] == word ? first + 1 : first};
}

std::size_t SearchWords::behind(std::size_t number, std::size_t bytes) const
{
    const auto shared = (*this)[number].substr(0, bytes);
    std::size_t step = 1; // doubled: most groups are short, some hold thousands
    for (; number + step < size() && (*this)[number + step].starts_with(shared); step *= 2)
        number += step;
    auto behind = std::min(number + step, size());
    while (number + 1 < behind) {
        const auto middle = number + (behind - number) / 2;
        ((*this)[middle].starts_with(shared) ? number : behind) = middle;
    }
    return behind;
}

} // namespace catalog
