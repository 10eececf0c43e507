#include "ui/parts/frame.h"
#include "ui/parts/letters.h"
#include "ui/parts/list.h"
#include "ui/parts/sentences.h"
#include "ui/screens/all.h"
#include "ui/widgets/button.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <cmath>
#include <string_view>

namespace ui {
namespace {

/// Where things stand: the letters keep their place while answers come and go beside or below them.
struct Places {
    Area title; ///< empty where there is no room for it
    Area field;
    Area keys;
    Area answers;
    LettersPlan plan;
    Style typed = Style::Name; ///< of what is typed
};

float title_height(const Ui& ui, float width)
{
    return text_height(ui, ui.language.text(TextId::find_title), Style::Strong, width) + ui.look.sizes.unit;
}

float field_height(const Ui& ui, Style style = Style::Name)
{
    return std::max(ui.look.sizes.target, line_height(ui, style) + ui.look.sizes.unit);
}

/// Letters on the left, answers on the right.
Places lying(const Ui& ui, Area body)
{
    constexpr float highest_key = 1.25F; // of the least: larger ones only take longer ways
    const float gap = ui.look.sizes.gap;
    Places places;
    const float above = field_height(ui) + gap / 2;
    places.plan = plan_letters(ui, body.width() * 0.6F, body.height() - above);
    Area left = body.cut_left(std::max(places.plan.width, std::floor(body.width() * 0.47F)));
    body.cut_left(gap);
    places.answers = body;
    if (const float title = title_height(ui, left.width()); above + title + places.plan.height <= left.height())
        places.title = left.cut_top(title);
    places.field = left.cut_top(field_height(ui));
    left.cut_top(gap / 2);
    places.keys = left.cut_top(std::floor(places.plan.height * highest_key));
    return places;
}

/// Letters above, in as few rows as can be, and the answers below.
Places upright(const Ui& ui, Area body)
{
    const float gap = ui.look.sizes.gap;
    Places places;
    places.plan = plan_letters(ui, body.width(), 0);
    const auto fewest_rows = places.plan.height;
    places.plan = plan_letters(ui, body.width(), fewest_rows); // not more columns than they need
    const float least_answers = 0.45F * body.height();
    if (const float title = title_height(ui, body.width());
        title + field_height(ui) + places.plan.height + 1.5F * gap + least_answers <= body.height())
        places.title = body.cut_top(title);
    places.field = body.cut_top(field_height(ui));
    body.cut_top(gap / 2);
    places.keys = body.cut_top(places.plan.height);
    body.cut_top(gap);
    places.answers = body;
    return places;
}

/// Whether keys or answers would have less room than they need, if both stood on one page.
bool no_room_for_both(const Ui& ui, const Places& places)
{
    const float of_choice = line_height(ui, Style::Text) + line_height(ui, Style::QuietNote) + 2 * ui.look.sizes.unit;
    const float of_words = line_height(ui, Style::Note) + ui.look.sizes.gap;
    return places.keys.height() < places.plan.height || places.answers.height() < of_choice + of_words;
}

/// Under letters so large keys have the first page to themselves, and what is found has the next ones.
Places keys_alone(const Ui& ui, Area body)
{
    Places places;
    places.answers = body;
    places.typed = Style::Note;
    const float above = field_height(ui, places.typed);
    places.plan = plan_letters(ui, body.width(), body.height() - above - ui.look.sizes.unit, true);
    places.field = body.cut_top(above);
    body.cut_top(ui.look.sizes.unit);
    places.keys = body.cut_top(places.plan.height);
    return places;
}

/// The end of the words that fits: whoever types looks at the last letters.
std::string_view last_that_fits(const Ui& ui, std::string_view words, Style style, float width)
{
    while (!words.empty() && text_width(ui, words, style) > width) {
        words.remove_prefix(1);
        while (!words.empty() && (static_cast<unsigned char>(words.front()) & 0xC0U) == 0x80U)
            words.remove_prefix(1); // the later bytes of one letter
    }
    return words;
}

/// What is typed, with an upright line where the next letter comes.
void field(const Ui& ui, const State& state, Style style, const Area& area)
{
    const float unit = ui.look.sizes.unit;
    const float caret = ui.look.sizes.line * 2;
    canvas().AddLine({area.low.x, area.high.y}, area.high, ui.look.theme.ink, caret);
    Area inner = area.inset(unit, 0);
    const float line = line_height(ui, style);
    inner.cut_top(std::floor((area.height() - line) / 2));
    const auto shown = last_that_fits(ui, state.typed, style, inner.width() - unit);
    if (!shown.empty())
        text(ui, shown, style, inner);
    // A blank at the end has a width, which the text's own area does not show.
    const float at = inner.low.x + (shown.empty() ? 0 : text_width(ui, shown, style)) + caret;
    canvas().AddLine({at, inner.low.y + unit}, {at, inner.low.y + line - unit}, ui.look.theme.ink, caret);
}

void take_key(const std::optional<LetterKey>& key, Actions& asked)
{
    if (!key)
        return;
    switch (key->kind) {
    case LetterKey::Kind::Letter:
        asked.push_back(TypeLetters{key->letter});
        break;
    case LetterKey::Kind::Space:
        asked.push_back(TypeLetters{" "});
        break;
    case LetterKey::Kind::Erase:
        asked.push_back(EraseLetter{});
        break;
    case LetterKey::Kind::Clear:
        asked.push_back(ClearLetters{});
        break;
    }
}

Block aisles_button(const Ui& ui, float width, Actions& asked)
{
    const auto& words = ui.language.text(TextId::find_by_aisle);
    const float wide = std::min(width, button_width(ui, words, Style::Text));
    return {button_height(ui, words, Style::Text, wide),
            [&ui, &asked, wide](Area area) {
                if (button(ui, TextId::find_by_aisle, area.cut_left(wide), {Style::Text, false, false, Align::Centre}))
                    asked.push_back(ChooseAisle{});
            },
            false, ui.look.sizes.gap};
}

std::vector<Choice> choices_of(const Ui& ui, const State& state, const Area& place, Actions& asked)
{
    std::vector<Choice> choices;
    for (const auto& found : state.found)
        choices.push_back(choice_within(
            ui, {found.name, found.detail, [&found, &asked] { asked.push_back(TakeProduct{found.gtin}); }},
            place.width(), place.height()));
    return choices;
}

/// What was found, as blocks for pages. `choices` must outlive them.
std::vector<Block> answers_of(const Ui& ui, const State& state, const std::vector<Choice>& choices, float width,
                              Actions& asked)
{
    const bool nothing_yet = state.found_words.empty();
    std::vector<Block> blocks;
    add_words(ui, nothing_yet ? ui.language.text(TextId::find_lead) : state.found_words, Style::Note, Role::Text, width,
              0, blocks);
    if (nothing_yet && state.by_aisle)
        blocks.push_back(aisles_button(ui, width, asked));
    for (auto& row : list_blocks(ui, choices, width, 1))
        blocks.push_back(std::move(row));
    return blocks;
}

} // namespace

void find_by_name_screen(const Ui& ui, const State& state, Actions& asked)
{
    const Frame frame = frame_of(ui, state);
    auto places = ui.look.sizes.upright() ? upright(ui, frame.body) : lying(ui, frame.body);
    const bool apart = no_room_for_both(ui, places);
    if (apart)
        places = keys_alone(ui, frame.body);
    const bool keys = !apart || state.page == 0;
    if (keys) {
        if (places.title.height() > 0)
            text(ui, ui.language.text(TextId::find_title), Style::Strong, places.title, Align::Left, Role::Heading);
        field(ui, state, places.typed, places.field);
        take_key(letters(ui, places.plan, places.keys), asked);
    }
    const auto choices = choices_of(ui, state, places.answers, asked);
    const auto blocks = answers_of(ui, state, choices, places.answers.width(), asked);
    Paging paging;
    if (!apart)
        paging = draw_page(blocks, places.answers, state.page);
    else {
        const float height = places.answers.height();
        const Pages pages = deal_pages(blocks, height, height, state.page - 1);
        paging = {pages.paging.pages + 1, keys ? 0 : pages.paging.page + 1};
        if (!keys)
            draw_page(blocks, pages, places.answers);
    }
    close_frame(ui, state, frame, paging, asked);
}

} // namespace ui
