// Zip files for tests, packed by the library as other programs pack them.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace test {

/// A file to pack: its name, and what is in it.
struct Packed {
    std::string_view name;
    std::string_view content;
};

/// The bytes of a zip file with these members, in this order; with `password` each is locked (AES-256).
/// Throws std::runtime_error.
[[nodiscard]] std::string zip_of(const std::vector<Packed>& files, const char* password = nullptr);

} // namespace test
