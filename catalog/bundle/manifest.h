// What a bundle says about itself: the signed text in front of its parts, as JSON. docs/bundle.md describes it.
#pragma once

#include "catalog/bundle/digest.h"
#include "core/error.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace catalog {

/// One file in a bundle.
struct Part {
    std::string name; ///< "catalog.db", "tour.csv", or "texts/" and a plain name; never a way to another folder
    std::uint64_t bytes = 0;
    Digest digest{}; ///< BLAKE2b of its bytes
    bool operator==(const Part&) const = default;
};

inline constexpr const char* catalog_part = "catalog.db";
inline constexpr const char* tour_part = "tour.csv";
inline constexpr const char* texts_folder = "texts/";

/// What a bundle says about itself.
struct Manifest {
    std::string name;           ///< "Cedar Hollow, winter"; 1 to 80 letters
    std::string maker;          ///< who sealed it; 1 to 80 letters
    std::string made;           ///< when, as words to show; nothing is ever decided by it; 1 to 40 letters
    std::uint64_t counter = 0;  ///< age: a larger one is newer; at least 1
    std::uint64_t products = 0; ///< how many labels the catalog has
    std::vector<Part> parts;    ///< in the order in which they lie in the file; exactly one catalog
    bool operator==(const Manifest&) const = default;
};

/// A manifest is never longer than this, in bytes.
inline constexpr std::size_t longest_manifest = 64U << 10U;

/// The largest counter: whole numbers above it are not the same in every reader of JSON (RFC 8259, section 6).
inline constexpr std::uint64_t largest_counter = (1ULL << 53U) - 1;

/// Whether a file of this name may stand in texts/: 1 to 64 of the letters A to Z, digits, dot, hyphen and underscore,
/// the first no dot.
[[nodiscard]] bool is_text_name(std::string_view name);

/// Whether a name or a maker may be written so: tidy text (catalog/read/text.h) of 1 to `longest` letters.
[[nodiscard]] bool is_plain_words(std::string_view words, std::size_t longest = 80);

/// The manifest as text.
[[nodiscard]] std::string manifest_text(const Manifest& manifest);

/// Reads the text back. Errors: DamagedBundle for everything that manifest_text would not write, unknown fields apart;
/// NewerBundle for a later form.
[[nodiscard]] core::Result<Manifest> read_manifest(std::string_view text);

} // namespace catalog
