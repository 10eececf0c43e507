// Distinct words and their numbers, in the order in which they came: a small, quick hash table.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace catalog {

/// Words to numbers and back. Holds about 20 bytes a word beside its letters.
class WordNumbers {
public:
    WordNumbers() : slots_(1024, none) {}

    /// The number of a word; a new word gets the next one.
    [[nodiscard]] std::uint32_t number_of(std::string_view word)
    {
        std::size_t slot = place_of(word);
        if (slots_[slot] != none)
            return slots_[slot];
        if (2 * (size() + 1) > slots_.size()) {
            grow();
            slot = place_of(word);
        }
        const auto number = static_cast<std::uint32_t>(size());
        slots_[slot] = number;
        letters_ += word;
        ends_.push_back(static_cast<std::uint32_t>(letters_.size()));
        return number;
    }

    [[nodiscard]] std::string_view word(std::uint32_t number) const
    {
        const std::uint32_t start = number == 0 ? 0 : ends_[number - 1];
        return std::string_view(letters_).substr(start, ends_[number] - start);
    }

    [[nodiscard]] std::size_t size() const { return ends_.size(); }

private:
    static constexpr std::uint32_t none = UINT32_MAX;

    /// FNV-1a: short words, no need for more.
    static std::size_t hash(std::string_view word)
    {
        std::uint64_t hash = 14695981039346656037U;
        for (const char letter : word)
            hash = (hash ^ static_cast<std::uint8_t>(letter)) * 1099511628211U;
        return static_cast<std::size_t>(hash ^ (hash >> 29U));
    }

    [[nodiscard]] std::size_t place_of(std::string_view asked) const
    {
        std::size_t slot = hash(asked) & (slots_.size() - 1);
        while (slots_[slot] != none && word(slots_[slot]) != asked)
            slot = (slot + 1) & (slots_.size() - 1);
        return slot;
    }

    void grow()
    {
        slots_.assign(2 * slots_.size(), none);
        for (std::uint32_t number = 0; number < size(); ++number)
            slots_[place_of(word(number))] = number;
    }

    std::string letters_;
    std::vector<std::uint32_t> ends_;
    std::vector<std::uint32_t> slots_;
};

} // namespace catalog
