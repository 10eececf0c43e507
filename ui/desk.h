// What a page of the leader desk shows, in words: the session fills it, one function draws all of them.
#pragma once

#include "ui/desk_actions.h"
#include "ui/words/text.h"

#include <optional>
#include <string>
#include <vector>

namespace ui {

/// One line of what is told; a sample stands under its line.
struct DeskLine {
    enum class Kind { Sentence, Heading, Count, Sample };
    Kind kind;
    std::string words;
    bool operator==(const DeskLine&) const = default;
};

/// A row to touch: a file, a rule, a product.
struct DeskChoice {
    std::string name;
    std::string detail;
    DeskAction asked;
    bool operator==(const DeskChoice&) const = default;
};

/// Something to do with the whole page.
struct DeskButton {
    TextId words;
    DeskAction asked;
    bool operator==(const DeskButton&) const = default;
};

/// One page, in the order in which it is read.
struct DeskPage {
    std::string title;
    std::vector<std::string> lead;
    std::vector<std::string> fingerprint; ///< groups of digits, to be compared one by one
    bool camera = false;                  ///< the camera's picture stands there, as State has it
    std::optional<int> percent;           ///< how far the work is, as a drawn length
    std::vector<DeskButton> buttons;
    std::vector<DeskChoice> choices;
    bool one_column = false; ///< the choices have sentences, which want the whole width
    std::vector<DeskLine> lines;
    bool operator==(const DeskPage&) const = default;
};

} // namespace ui
