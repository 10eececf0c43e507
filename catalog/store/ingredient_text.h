// A list of ingredients in fewer bytes: half of a nation's catalog is such lists, and they repeat one another.
// Format: Zstandard (RFC 8878), with a dictionary of the words that such lists are made of.
#pragma once

#include <memory>
#include <string>
#include <string_view>

namespace catalog {

/// Packs and unpacks lists of ingredients. For one thread at a time.
class IngredientText {
public:
    IngredientText();
    IngredientText(IngredientText&&) noexcept;
    IngredientText& operator=(IngredientText&&) noexcept;
    ~IngredientText();

    /// The text packed; empty where that would save nothing.
    [[nodiscard]] std::string packed(std::string_view text);

    /// The text behind packed bytes. Throws std::runtime_error for bytes that `packed` never makes.
    [[nodiscard]] std::string unpacked(std::string_view bytes);

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

/// The dictionary of number 1. Never change it: catalogs hold what was packed with it. A better one gets a new number.
[[nodiscard]] std::string_view ingredient_dictionary();

} // namespace catalog
