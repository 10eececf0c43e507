// Which records of a release were read and left out, by number: three megabytes at the most, however many there are.
#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <vector>

namespace catalog {

/// A set of record numbers, a bit each. Numbers from 24 million on are not kept (they stand below three million in
/// 2026): such a record is in no set.
class RecordSet {
public:
    void add(std::uint32_t fdc_id);
    [[nodiscard]] bool has(std::uint32_t fdc_id) const
    {
        const std::size_t word = fdc_id / bits;
        return word < words_.size() && (words_[word] >> (fdc_id % bits) & 1U) != 0;
    }

    /// Writes it into a file, and reads it back. Throws what Spill throws.
    void write(const std::filesystem::path& path) const;
    [[nodiscard]] static RecordSet read(const std::filesystem::path& path);

private:
    static constexpr std::uint32_t bits = 64;
    std::vector<std::uint64_t> words_;
};

} // namespace catalog
