// Words as an eye tells them apart: without capitals, accents and signs at their ends.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace test {

/// The words between blanks, with small letters and without accents and signs that are neither letter nor digit at
/// their ends. Words of signs alone are left out.
[[nodiscard]] std::vector<std::string> plain_words(std::string_view text);

/// How many letters must be changed, put in or taken out to make one of the other.
[[nodiscard]] std::size_t letters_apart(std::string_view left, std::string_view right);

} // namespace test
