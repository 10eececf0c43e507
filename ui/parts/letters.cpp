#include "ui/parts/letters.h"

#include "ui/widgets/button.h"

#include <algorithm>
#include <cmath>
#include <string_view>
#include <vector>

namespace ui {
namespace {

using Kind = LetterKey::Kind;

constexpr std::size_t fewest_columns = 7; // so that an alphabet is a field of letters, not a column
constexpr TextId others[] = {TextId::find_space, TextId::keypad_erase, TextId::keypad_clear};
constexpr Kind other_kinds[] = {Kind::Space, Kind::Erase, Kind::Clear};

float gap_of(const Ui& ui)
{
    return ui.look.sizes.unit;
}

/// The letters of the language, one by one.
std::vector<std::string_view> alphabet(const Language& language)
{
    const std::string_view all = language.text(TextId::find_letters);
    std::vector<std::string_view> letters;
    for (std::size_t at = 0; at < all.size();) {
        std::size_t next = at + 1;
        while (next < all.size() && (static_cast<unsigned char>(all[next]) & 0xC0U) == 0x80U)
            ++next; // the later bytes of one letter
        letters.push_back(all.substr(at, next - at));
        at = next;
    }
    return letters;
}

float least_width(const Ui& ui, Style style)
{
    float widest = 0;
    for (const auto letter : alphabet(ui.language))
        widest = std::max(widest, text_width(ui, letter, style));
    return std::max(ui.look.sizes.target, widest + 2 * ui.look.sizes.unit);
}

float least_height(const Ui& ui, Style style)
{
    return std::max(ui.look.sizes.target, line_height(ui, style) + ui.look.sizes.unit);
}

float of_many(const Ui& ui, std::size_t keys, float one)
{
    return static_cast<float>(keys) * (one + gap_of(ui)) - gap_of(ui);
}

/// The words on keys are never larger than the letters on them.
Style style_of_others(Style style)
{
    return style == Style::Bar ? Style::Bar : Style::Note;
}

float least_width_of_others(const Ui& ui, Style style)
{
    float widest = 0;
    for (const auto id : others)
        widest = std::max(widest, button_width(ui, ui.language.text(id), style_of_others(style)));
    return of_many(ui, std::size(others), widest);
}

float share(const Ui& ui, float all, std::size_t keys)
{
    return std::floor((all + gap_of(ui)) / static_cast<float>(keys) - gap_of(ui));
}

/// Whether the other keys fit behind the last letters, `width` wide.
bool can_share(const Ui& ui, Style style, std::size_t letters, std::size_t columns, float width)
{
    const std::size_t last = letters % columns == 0 ? columns : letters % columns;
    const float taken = static_cast<float>(last) * (share(ui, width, columns) + gap_of(ui));
    return taken + least_width_of_others(ui, style) <= width;
}

LettersPlan plan_in(const Ui& ui, Style style, float widest, float highest, bool may_share)
{
    const auto letters = alphabet(ui.language).size();
    LettersPlan plan;
    for (auto columns = std::min(fewest_columns, letters); columns <= letters; ++columns) {
        const float width = std::max(of_many(ui, columns, least_width(ui, style)), least_width_of_others(ui, style));
        if (width > widest && columns > fewest_columns)
            break;
        const bool shared = may_share && can_share(ui, style, letters, columns, std::max(width, widest));
        const auto rows = (letters + columns - 1) / columns + (shared ? 0 : 1);
        plan = {columns, rows, width, of_many(ui, rows, least_height(ui, style)), style, shared};
        if (plan.height <= highest)
            break;
    }
    return plan;
}

} // namespace

LettersPlan plan_letters(const Ui& ui, float widest, float highest, bool may_share)
{
    LettersPlan plan;
    for (const Style style : {Style::Name, Style::Note, Style::Bar}) {
        plan = plan_in(ui, style, widest, highest, may_share);
        if (plan.width <= widest && plan.height <= highest)
            break;
    }
    return plan;
}

std::optional<LetterKey> letters(const Ui& ui, const LettersPlan& plan, Area area)
{
    const auto all = alphabet(ui.language);
    const float high = share(ui, area.height(), plan.rows);
    const float wide = share(ui, area.width(), plan.columns);
    std::optional<LetterKey> touched;
    Area line;
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (i % plan.columns == 0) {
            line = area.cut_top(high);
            area.cut_top(gap_of(ui));
        }
        if (button(ui, all[i], std::nullopt, line.cut_left(wide), {plan.style, false, false, Align::Centre, true}))
            touched = LetterKey{Kind::Letter, std::string(all[i])};
        line.cut_left(gap_of(ui));
    }
    if (!plan.shared)
        line = area.cut_top(high);
    const float third = share(ui, line.width(), std::size(others));
    for (std::size_t i = 0; i < std::size(others); ++i) {
        if (button(ui, others[i], line.cut_left(third), {style_of_others(plan.style), false, false, Align::Centre}))
            touched = LetterKey{other_kinds[i], {}};
        line.cut_left(gap_of(ui));
    }
    return touched;
}

} // namespace ui
