// All words of the name search in memory, in order: which stand in a catalog, and with which a beginning goes on.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace catalog {

/// The words of a catalog; a word's number is its place in their order.
class SearchWords {
public:
    /// Takes a row of the table search_word. Throws std::runtime_error when it is torn.
    void append(std::string_view row);

    [[nodiscard]] std::size_t size() const { return ends_.size(); }
    [[nodiscard]] std::string_view operator[](std::size_t number) const
    {
        const std::size_t start = number == 0 ? 0 : ends_[number - 1];
        return std::string_view(letters_).substr(start, ends_[number] - start);
    }

    /// The words that begin so: the first one's number, and the number behind the last.
    [[nodiscard]] std::pair<std::size_t, std::size_t> beginning_with(std::string_view letters) const;

    /// The same for the word itself: one or none.
    [[nodiscard]] std::pair<std::size_t, std::size_t> same_as(std::string_view word) const;

    /// The number behind the last of the words, from `number` on, that share that word's first bytes.
    [[nodiscard]] std::size_t behind(std::size_t number, std::size_t bytes) const;

private:
    [[nodiscard]] std::size_t first_from(std::string_view word) const;

    std::string letters_;
    std::vector<std::uint32_t> ends_;
};

} // namespace catalog
