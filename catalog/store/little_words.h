// Which of the typed words a name search looks for: the little ones that bind others ("sopa de tomate") tell nothing.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace catalog {

/// The words of a folded question, `most` at most: without the little ones, as long as others remain.
[[nodiscard]] std::vector<std::string> words_to_look_for(std::string_view question, std::size_t most);

} // namespace catalog
