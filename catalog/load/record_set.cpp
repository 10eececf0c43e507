#include "catalog/load/record_set.h"

#include "catalog/load/spill.h"

#include <cstring>
#include <string>

namespace catalog {
namespace {

constexpr std::uint32_t most_numbers = 24U << 20U;

} // namespace

void RecordSet::add(std::uint32_t fdc_id)
{
    if (fdc_id >= most_numbers)
        return;
    const std::size_t word = fdc_id / bits;
    if (word >= words_.size())
        words_.resize(word + 1);
    words_[word] |= std::uint64_t{1} << (fdc_id % bits);
}

void RecordSet::write(const std::filesystem::path& path) const
{
    Spill spill(path);
    spill.append({reinterpret_cast<const char*>(words_.data()), words_.size() * sizeof words_[0]});
    spill.flush();
}

RecordSet RecordSet::read(const std::filesystem::path& path)
{
    const Spill spill(path, true);
    std::string bytes;
    spill.read(0, spill.size(), bytes);
    RecordSet set;
    set.words_.resize(bytes.size() / sizeof set.words_[0]);
    if (!set.words_.empty())
        std::memcpy(set.words_.data(), bytes.data(), set.words_.size() * sizeof set.words_[0]);
    return set;
}

} // namespace catalog
