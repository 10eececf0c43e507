#include "catalog/read/faults.h"

namespace catalog {
namespace {

constexpr std::size_t readable = 60; // bytes of a cell that a sentence can carry

/// Cuts between letters, never inside the bytes of one.
void cut(std::string& cell)
{
    if (cell.size() <= readable)
        return;
    std::size_t end = readable;
    while (end > 0 && (static_cast<unsigned char>(cell[end]) & 0xC0U) == 0x80U)
        --end;
    cell.resize(end);
    cell += "...";
}

} // namespace

void Faults::add(core::Error error)
{
    ++count_;
    if (kept_.size() >= most_kept)
        return;
    cut(error.place.found);
    cut(error.place.column);
    kept_.push_back(std::move(error));
}

void Faults::add(const Faults& later)
{
    for (const auto& error : later.kept_)
        add(error);
    count_ += later.count_ - later.kept_.size();
}

} // namespace catalog
