// Every page of the leader desk: what is the case, what can be done, what can be chosen, and then the details.
#include "ui/parts/camera_corner.h"
#include "ui/parts/frame.h"
#include "ui/parts/list.h"
#include "ui/parts/sentences.h"
#include "ui/screens/all.h"
#include "ui/widgets/button.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <utility>

namespace ui {
namespace {

/// As many groups side by side as fit, 3 or 2 or 1: people read them aloud row by row.
std::size_t groups_across(const Ui& ui, const DeskPage& page, float width)
{
    float widest = 0;
    for (const auto& group : page.fingerprint)
        widest = std::max(widest, text_width(ui, group, Style::Figure));
    const float one = widest + 8 * ui.look.sizes.unit;
    return static_cast<std::size_t>(std::clamp(std::floor(width / one), 1.0F, 3.0F));
}

void add_fingerprint(const Ui& ui, const DeskPage& page, float width, std::vector<Block>& blocks)
{
    if (page.fingerprint.empty())
        return;
    const auto& sizes = ui.look.sizes;
    const std::size_t across = groups_across(ui, page, width);
    const float one = std::floor(std::min(width, 90 * sizes.unit) / static_cast<float>(across));
    const float height = line_height(ui, Style::Figure) + 2 * sizes.unit;
    for (std::size_t first = 0; first < page.fingerprint.size(); first += across)
        blocks.push_back({height,
                          [&ui, &page, first, across, one](Area area) {
                              const auto& look = ui.look;
                              for (std::size_t i = first; i < std::min(first + across, page.fingerprint.size()); ++i) {
                                  const Area cell = area.cut_left(one);
                                  canvas().AddRect(cell.low, cell.high, look.theme.hairline, 0, 0, look.sizes.line);
                                  text(ui, page.fingerprint[i], Style::Figure, cell.inset(0, look.sizes.unit),
                                       Align::Centre, Role::Figure);
                              }
                          },
                          true, first == 0 ? sizes.gap : 0});
}

/// How far the work is: a length of ink. The words beside it say the same.
void add_length(const Ui& ui, const DeskPage& page, float width, std::vector<Block>& blocks)
{
    if (!page.percent)
        return;
    blocks.push_back(
        {3 * ui.look.sizes.unit,
         [&ui, &page, width](const Area& area) {
             const auto& look = ui.look;
             const auto percent = static_cast<float>(std::clamp(*page.percent, 0, 100));
             const float done = std::floor(width * percent / 100);
             canvas().AddRectFilled(area.low, {area.low.x + done, area.high.y}, look.theme.ink);
             canvas().AddRect(area.low, {area.low.x + width, area.high.y}, look.theme.hairline, 0, 0, look.sizes.line);
         },
         true, ui.look.sizes.gap});
}

/// The buttons in rows, each as wide as its words.
void add_buttons(const Ui& ui, const DeskPage& page, float width, Actions& asked, std::vector<Block>& blocks)
{
    const float gap = 1.5F * ui.look.sizes.unit;
    std::size_t first = 0;
    while (first < page.buttons.size()) {
        std::vector<float> widths;
        float used = 0;
        float height = 0;
        for (std::size_t i = first; i < page.buttons.size(); ++i) {
            const auto& words = ui.language.text(page.buttons[i].words);
            const float wide = std::min(width, button_width(ui, words, Style::Text));
            if (!widths.empty() && used + wide > width)
                break;
            widths.push_back(wide);
            used += wide + gap;
            height = std::max(height, button_height(ui, words, Style::Text, wide));
        }
        blocks.push_back(
            {height,
             [&ui, &page, &asked, first, widths, gap](Area area) {
                 for (std::size_t i = 0; i < widths.size(); ++i) {
                     const auto& wanted = page.buttons[first + i];
                     if (button(ui, wanted.words, area.cut_left(widths[i]), {Style::Text, false, false, Align::Centre}))
                         asked.push_back(AskDesk{wanted.asked});
                     area.cut_left(gap);
                 }
             },
             false, first == 0 ? ui.look.sizes.gap : gap});
        first += widths.size();
    }
}

void add_lines(const Ui& ui, const DeskPage& page, float width, std::vector<Block>& blocks)
{
    const auto& sizes = ui.look.sizes;
    for (const auto& line : page.lines)
        switch (line.kind) {
        case DeskLine::Kind::Heading:
            add_words(ui, line.words, Style::Strong, Role::Heading, width, sizes.gap, blocks);
            break;
        case DeskLine::Kind::Sentence:
            add_words(ui, line.words, Style::Text, Role::Text, width, 1.5F * sizes.unit, blocks);
            break;
        case DeskLine::Kind::Count:
            add_words(ui, line.words, Style::Note, Role::Text, width, 1.5F * sizes.unit, blocks);
            break;
        case DeskLine::Kind::Sample:
            add_words(ui, line.words, Style::QuietNote, Role::Text, width, 0.5F * sizes.unit, blocks);
            break;
        }
}

/// The camera's picture takes the room that the others leave: what can be done with it stands below it, on the same
/// page if possible.
void add_picture(const Ui& ui, const State& state, const Area& body, float height_below, std::vector<Block>& blocks)
{
    const float least = std::max(0.1F * body.height(), 0.05F * body.width());
    const float rest = body.height() - height_of(blocks) - height_below - 2 * ui.look.sizes.gap;
    const float height = rest >= 2 * least ? rest : body.height(); // a page of its own is all for the picture
    if (auto picture = camera_large(ui, state, body.width(), height, least))
        blocks.push_back(std::move(*picture));
}

} // namespace

void desk_screen(const Ui& ui, const State& state, Actions& asked)
{
    static const DeskPage empty; // constant: a page that nobody filled
    const DeskPage& page = state.desk ? *state.desk : empty;
    const auto& sizes = ui.look.sizes;
    const Frame frame = frame_of(ui, state);
    const float width = frame.body.width();
    std::vector<Block> blocks;
    add_words(ui, page.title, Style::Headline, Role::Heading, width, 0, blocks);
    for (const auto& words : page.lead)
        add_words(ui, words, Style::Text, Role::Text, width, sizes.unit, blocks);
    add_fingerprint(ui, page, width, blocks);
    add_length(ui, page, width, blocks);
    std::vector<Block> below;
    add_buttons(ui, page, width, asked, below);
    std::vector<Choice> choices;
    for (const auto& choice : page.choices)
        choices.push_back({choice.name, choice.detail, [&choice, &asked] { asked.push_back(AskDesk{choice.asked}); }});
    auto rows = list_blocks(ui, choices, width, page.one_column ? 1 : 3);
    if (!rows.empty())
        rows.front().gap = sizes.gap;
    std::ranges::move(rows, std::back_inserter(below));
    add_lines(ui, page, width, below);
    if (page.camera)
        add_picture(ui, state, frame.body, height_of(below), blocks);
    std::ranges::move(below, std::back_inserter(blocks));
    const Paging paging = draw_page(blocks, frame.body, state.page);
    close_frame(ui, state, frame, paging, asked);
}

} // namespace ui
