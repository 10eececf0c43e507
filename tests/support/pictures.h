// Reads pictures back with an eye that is not ours (tesseract) and holds what it saw against what the screen says.
#pragma once

#include "kiosk/command/rasteriser.h"
#include "ui/notes.h"

#include <string>
#include <string_view>
#include <vector>

namespace test {

/// A word that was said at a place and not seen there.
struct Missing {
    std::string word;
    std::string said; ///< the whole note
    std::string seen; ///< all that was read at its place
};

/// What came of reading one picture.
struct ReadBack {
    std::size_t words = 0;   ///< said, of at least two letters
    std::size_t figures = 0; ///< said: words with a digit in them
    std::vector<Missing> missing_words;
    std::vector<Missing> missing_figures;
};

/// Reads the picture at the place of every note that has words, and only there: its pixels are cut out, put on white
/// paper in black ink, one below the other, and read in one go. `language` is tesseract's ("eng", "spa").
/// A word counts as seen when one read at its place differs by no more than one letter, or two of eight and more;
/// accents and capitals do not count. Figures must be the same sign for sign. Throws when tesseract does not run.
[[nodiscard]] ReadBack read_back(const kiosk::Picture& picture, const ui::Notes& notes, std::string_view language);

} // namespace test
