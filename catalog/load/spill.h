// What a load sets aside on the disk between two passes, so that its memory does not grow with the release.
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace catalog {

/// A file that is written from its start to its end, and then read anywhere. Throws std::system_error when the disk
/// refuses. For one thread at a time.
class Spill {
public:
    /// Makes the file, or empties it; with `again` opens what an earlier load wrote.
    explicit Spill(std::filesystem::path path, bool again = false);
    Spill(Spill&& other) noexcept;
    Spill& operator=(Spill&&) = delete;
    ~Spill();

    /// Writes bytes at the end; gives where they start.
    std::uint64_t append(std::string_view bytes);

    /// Nothing is left in memory behind this.
    void flush();

    /// Reads `size` bytes. Throws std::runtime_error when they are not there.
    void read(std::uint64_t at, std::size_t size, std::string& into) const;

    /// How many bytes there are.
    [[nodiscard]] std::uint64_t size() const { return written_ + waiting_.size(); }

private:
    std::filesystem::path path_;
    int handle_;
    std::uint64_t written_ = 0;
    std::string waiting_;
};

} // namespace catalog
