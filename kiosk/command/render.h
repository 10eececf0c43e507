// pairstand render: one screen, or every screen, drawn into PNG files.
#pragma once

#include "core/compare/basis.h"
#include "core/figure/money.h"
#include "core/rules/rule_sets.h"

#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

namespace kiosk {

/// What the command line says.
struct RenderArguments {
    std::string screen; ///< its name, or "all"
    std::string out;    ///< a file, or for "all" a folder
    std::string left;
    std::string right;
    core::Basis basis = core::Basis::Serving;
    core::MyAmount amount; ///< for Basis::MyAmount
    std::string nutrient;  ///< for the screen why: its key; empty: the first row
    std::string words;     ///< for the screen find_by_name: what is typed
    int page = 1;
    int width = 1280;
    int height = 800;
    int text_percent = 100;
    int glass_mm = 0; ///< how wide the glass of the picture is; 0: nobody has measured it
    std::string language = "en";
    std::string theme = "paper";
    std::string catalog;                                  ///< empty: see catalog_place
    std::optional<core::Money> left_price = std::nullopt; ///< typed from the shelf
    std::optional<core::Money> right_price = std::nullopt;
    std::string settings;                                           ///< empty: see settings_place
    std::optional<std::vector<core::RuleSet>> rules = std::nullopt; ///< nothing: those of the settings
    std::string files = {};                                         ///< for the leader desk: the folder of its files
    std::string file = {};                                          ///< and the name of the one to open
};

/// Draws and writes. "all" writes SCREEN.LANGUAGE.WIDTHxHEIGHT.PERCENT.png for every screen, language, size and text
/// size into the folder, and leaves out screens that this catalog has no products for. Returns the exit status: 0, or 2
/// with one sentence on `err`.
[[nodiscard]] int render(const RenderArguments& arguments, std::ostream& out, std::ostream& err);

} // namespace kiosk
