// Finding by name: the letters that are typed, and the search that answers them in portions.
#include "catalog/store/fold.h"
#include "kiosk/session/session.h"
#include "ui/words/found_words.h"

#include <algorithm>
#include <sstream>
#include <string>
#include <utility>
#include <vector>

namespace kiosk {

using ui::ScreenId;

namespace {

constexpr std::size_t longest_typed = 60; // bytes; more than anyone types, and words beyond are not looked for

/// More answers than anyone turns pages for; whoever wants another one types more letters.
constexpr std::size_t most_shown = 60;

bool is_blank(const std::string& words)
{
    return words.find_first_not_of(' ') == std::string::npos;
}

/// As on the keys that are touched: capitals. Knows the letters of Latin-1; the search tells no difference.
std::string capitals(std::string letters)
{
    bool latin = false; // the byte before begins a letter of Latin-1, U+00C0 to U+00FF
    for (char& byte : letters) {
        const auto value = static_cast<unsigned char>(byte);
        const bool small = latin ? value >= 0xA0 && value <= 0xBE && value != 0xB7 : byte >= 'a' && byte <= 'z';
        if (small)
            byte = static_cast<char>(value - 0x20);
        latin = value == 0xC3;
    }
    return letters;
}

/// Folded words as they were typed, with their accents.
std::vector<std::string> as_typed(std::vector<std::string> folded, const std::string& typed)
{
    std::istringstream pieces(typed);
    for (std::string piece; pieces >> piece;)
        std::ranges::replace(folded, catalog::fold(piece), piece);
    return folded;
}

bool is_inside_letter(char byte)
{
    return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U;
}

} // namespace

/// A new name begins with no letters; whoever comes back to the screen finds what was typed.
void Session::perform(const ui::FindByName&)
{
    if (state_.screen == ScreenId::FindByName)
        return;
    look_for("");
    go(ScreenId::FindByName);
    searching_ = true; // the catalog's words are read while the first letter is on its way
}

/// From the letters to the aisles and from there to the letters is no longer way back.
void Session::perform(const ui::ChooseAisle&)
{
    aisles_ = aisles_of(*store_);
    const bool was_there = !trail_.empty() && trail_.back().screen == ScreenId::PickAisle;
    go(ScreenId::PickAisle);
    if (was_there && trail_.back().screen == ScreenId::FindByName)
        trail_.resize(trail_.size() - 2);
}

void Session::perform(const ui::TypeLetters& asked)
{
    const bool needless = asked.letters == " " && (state_.typed.empty() || state_.typed.back() == ' ');
    if (!needless && state_.typed.size() + asked.letters.size() <= longest_typed)
        look_for(state_.typed + capitals(asked.letters));
}

void Session::perform(const ui::EraseLetter&)
{
    auto left = state_.typed;
    while (!left.empty() && is_inside_letter(left.back()))
        left.pop_back();
    if (!left.empty())
        left.pop_back();
    look_for(std::move(left));
}

void Session::perform(const ui::ClearLetters&)
{
    look_for("");
}

/// Looks for these words from now on, and no longer for earlier ones. The catalog is asked by `search_on` alone.
void Session::look_for(std::string words)
{
    state_.typed = std::move(words);
    if (state_.screen == ScreenId::FindByName)
        state_.page = 0;
    found_.clear();
    told_ = 0;
    searching_ = !is_blank(state_.typed);
    ask();
}

void Session::ask()
{
    if (!search_)
        return;
    search_->ask(state_.typed);
    search_->want(most_shown);
}

void Session::leave_catalog()
{
    search_.reset();
    searching_ = false;
}

bool Session::search_on(const std::function<bool()>& go_on)
{
    if (!searching())
        return false;
    bool more = true;
    try {
        if (!search_) {
            search_.emplace(store_->search());
            ask();
        }
        while (more) {
            more = !search_->step([] { return false; });
            for (; told_ < search_->found().size(); ++told_) // what tells alike ones apart is on their labels
                if (auto product = store_->find(search_->found()[told_].gtin))
                    found_.push_back(*std::move(product));
            if (!go_on())
                break;
        }
    } catch (...) {
        leave_catalog(); // what broke is told once, not with every frame
        refresh_found();
        throw;
    }
    searching_ = more;
    refresh_found();
    return more;
}

void Session::refresh_found()
{
    state_.found.clear();
    for (const auto& product : found_)
        state_.found.push_back({product.gtin, product.name, ui::found_detail(product, language())});
    state_.found_words.clear();
    if (is_blank(state_.typed))
        return;
    if (search_)
        state_.found_words = ui::found_words(
            {search_->count(), search_->counted(), most_shown, as_typed(search_->left_out(), state_.typed)},
            language());
    else if (searching_)
        state_.found_words = ui::found_words({0, false, most_shown}, language());
}

} // namespace kiosk
