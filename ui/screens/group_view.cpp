#include "ui/parts/frame.h"
#include "ui/parts/offers.h"
#include "ui/parts/say_side.h"
#include "ui/parts/sentences.h"
#include "ui/screens/all.h"
#include "ui/widgets/line_5_20.h"
#include "ui/widgets/pattern.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <cmath>
#include <memory>

namespace ui {
namespace {

float mark_room(const Ui& ui)
{
    return line_height(ui, Style::Strong) * 0.8F;
}

std::string figure_words(const FigureWords& words)
{
    return words.percent.empty() ? words.amount : words.amount + "  " + words.percent;
}

/// What both sides hold, beside each other where the letters allow it, else one below the other.
struct Figures {
    std::string left;
    std::string right;
    bool beside = false;
    float height = 0;
};

Figures figures_of(const Ui& ui, const RowWords& row, float width)
{
    Figures figures{figure_words(row.left), figure_words(row.right)};
    const float half = width / 2 - mark_room(ui) - ui.look.sizes.gap;
    figures.beside =
        std::max(text_width(ui, figures.left, Style::Strong), text_width(ui, figures.right, Style::Strong)) <= half;
    const float room = figures.beside ? half : width - mark_room(ui);
    const float left = text_height(ui, figures.left, Style::Strong, room);
    const float right = text_height(ui, figures.right, Style::Strong, room);
    figures.height = figures.beside ? std::max(left, right) : left + right;
    return figures;
}

void side(const Ui& ui, Side which, const std::string& words, Area area)
{
    const float height = line_height(ui, Style::Strong);
    const float radius = 0.22F * height;
    mark(ui, which, {area.low.x + 1.5F * radius, area.low.y + height / 2}, radius);
    area.cut_left(mark_room(ui));
    const std::size_t noted = ui.notes.size();
    text_in(ui, words, Style::Strong, area, Align::Left, Role::Figure, colours_of(ui, which).hue);
    say_side(ui, which, noted);
}

Block figures_block(const Ui& ui, const RowWords& row, float width)
{
    const Figures figures = figures_of(ui, row, width);
    return {figures.height,
            [&ui, figures](Area area) {
                Area left = area;
                Area right = area;
                if (figures.beside) {
                    left.high.x = right.low.x = std::floor((area.low.x + area.high.x) / 2);
                } else {
                    left = right.cut_top(text_height(ui, figures.left, Style::Strong, area.width() - mark_room(ui)));
                }
                side(ui, Side::Left, figures.left, left);
                side(ui, Side::Right, figures.right, right);
            },
            false, ui.look.sizes.unit};
}

Block line_block(const Ui& ui, const RowWords& row)
{
    const float scale = line_height(ui, Style::QuietNote);
    return {line_5_20_height(ui) + scale,
            [&ui, &row, scale](Area area) {
                line_5_20_scale(ui, area.cut_top(scale));
                line_5_20(ui, area, row.left.percent_value, row.right.percent_value);
            },
            false, ui.look.sizes.unit};
}

/// One nutrient.
std::vector<Block> blocks_of(const Ui& ui, const RowWords& row, float width)
{
    std::vector<Block> blocks;
    add_words(ui, row.name, Style::Strong, Role::Heading, width, 0, blocks);
    blocks.push_back(figures_block(ui, row, width));
    if (row.left.percent_value || row.right.percent_value)
        blocks.push_back(line_block(ui, row));
    add_words(ui, row.finding, Style::Text, Role::Text, width, ui.look.sizes.unit, blocks);
    for (const auto& remark : row.remarks)
        add_words(ui, remark, Style::Text, Role::Text, width, ui.look.sizes.unit, blocks);
    // What goes on over the next page is told by its name there too.
    std::vector<Block> name;
    add_words(ui, row.name, Style::Bar, Role::Heading, width, 0, name);
    if (name.size() == 1)
        for (std::size_t i = 1; i < blocks.size(); ++i)
            blocks[i].again = std::make_shared<const Block>(name.front());
    return blocks;
}

/// What the two are, and which amount of them: the page before all nutrients.
std::vector<Block> title_blocks(const Ui& ui, const State& state, float width, Actions& asked)
{
    const float unit = ui.look.sizes.unit;
    std::vector<Block> blocks;
    for (const Side which : {Side::Left, Side::Right}) {
        const auto& words = state.pair->sides[index_of(which)];
        const float room = width - mark_room(ui);
        blocks.push_back({text_height(ui, words.name, Style::Strong, room),
                          [&ui, &words, which](const Area& area) { side(ui, which, words.name, area); }, false, unit});
        add_words(ui, words.servings, Style::Text, Role::Text, width, 0, blocks);
    }
    add_words(ui, basis_heading(*state.pair, state.basis), Style::Text, Role::Text, width, 2 * unit, blocks);
    for (const auto& sentence : state.pair->first)
        add_words(ui, sentence, Style::Text, Role::Text, width, unit, blocks);
    add_offers(ui, {words_offer(ui)}, width, blocks, asked);
    return blocks;
}

} // namespace

void group_view_screen(const Ui& ui, const State& state, Actions& asked)
{
    if (!state.pair)
        return;
    const Frame frame = frame_of(ui, state);
    const float width = frame.body.width();
    const float height = frame.body.height();
    std::vector<std::vector<Block>> sheets;
    sheets.push_back(title_blocks(ui, state, width, asked));
    for (const auto& row : state.pair->rows)
        sheets.push_back(blocks_of(ui, row, width));
    // Every nutrient begins a page; one that is too long for a page goes on over the next.
    Paging all{0, 0};
    for (const auto& blocks : sheets)
        all.pages += deal_pages(blocks, height, height, 0).paging.pages;
    all.page = std::clamp(state.page, 0, all.pages - 1);
    int before = 0;
    for (const auto& blocks : sheets) {
        const Pages pages = deal_pages(blocks, height, height, all.page - before);
        if (all.page < before + pages.paging.pages) {
            draw_page(blocks, pages, frame.body);
            break;
        }
        before += pages.paging.pages;
    }
    close_frame(ui, state, frame, all, asked);
}

} // namespace ui
