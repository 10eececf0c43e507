// A folder of its own for one test, gone with everything in it at the test's end.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

namespace test {

/// Makes the folder, and removes it again.
class TempFolder {
public:
    TempFolder();
    TempFolder(const TempFolder&) = delete;
    TempFolder& operator=(const TempFolder&) = delete;
    ~TempFolder();

    /// Where a file of this name lies in it.
    [[nodiscard]] std::string file(std::string_view name) const;

    /// Writes these bytes into a file of this name; gives its path.
    std::string write(std::string_view name, std::string_view bytes) const;

private:
    std::filesystem::path path_;
};

/// All bytes of a file. Throws std::runtime_error when it cannot be read.
[[nodiscard]] std::string bytes_of(const std::filesystem::path& file);

} // namespace test
