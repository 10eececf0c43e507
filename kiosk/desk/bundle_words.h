// What came of installing a bundle and of going back, in words: for the leader desk and for `pairstand install`.
#pragma once

#include "catalog/bundle/install.h"
#include "ui/words/language.h"

#include <optional>
#include <string>
#include <vector>

namespace kiosk {

/// `"Winter" (number 7), made 2026-11-26 by Cedar Hollow`.
[[nodiscard]] std::string bundle_named(const catalog::Manifest& manifest, const ui::Language& language);

/// What is in place now, and what came along.
[[nodiscard]] std::vector<std::string> install_words(const catalog::Installing& done, const ui::Language& language);

/// What is in place again; nothing stands for the place's own catalog.
[[nodiscard]] std::string went_back_words(const std::optional<catalog::Manifest>& now, const ui::Language& language);

} // namespace kiosk
