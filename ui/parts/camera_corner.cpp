#include "ui/parts/camera_corner.h"

#include "ui/widgets/grey_picture.h"
#include "ui/widgets/text.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace ui {
namespace {

constexpr TextId hints[] = {TextId::camera_aim,        TextId::camera_closer, TextId::camera_back,
                            TextId::camera_hold_still, TextId::camera_turn,   TextId::camera_whole};

/// The room for any of the hints.
float hint_height(const Ui& ui, float width)
{
    float height = 0;
    for (const TextId id : hints)
        height = std::max(height, text_height(ui, ui.language.text(id), Style::Bar, width));
    return height;
}

float picture_height(const State& state, float width)
{
    // Pictures of another shape are no higher than wide ones: they get narrower.
    constexpr float highest = 0.5625F;
    return std::floor(std::min(width * highest, width * static_cast<float>(state.camera->whole.height) /
                                                    static_cast<float>(std::max(1, state.camera->whole.width))));
}

float inner_width(const Ui& ui, float width)
{
    return std::floor(std::clamp(0.2F * width, 28 * ui.look.sizes.unit, 45 * ui.look.sizes.unit));
}

/// Four corners of a frame, dark on light, so that they stand out from any picture.
void guide(const Ui& ui, const Area& picture)
{
    const Area frame = picture.inset(0.14F * picture.width(), 0.2F * picture.height());
    const float arm = 0.22F * frame.height();
    const float thick = 2 * ui.look.sizes.line;
    for (const bool below : {true, false}) {
        const ImU32 colour = below ? IM_COL32(255, 255, 255, 255) : IM_COL32(0, 0, 0, 255);
        const float pen = below ? 3 * thick : thick;
        for (const float x : {frame.low.x, frame.high.x})
            for (const float y : {frame.low.y, frame.high.y}) {
                const float to_x = x == frame.low.x ? arm : -arm;
                const float to_y = y == frame.low.y ? arm : -arm;
                const ImVec2 corner[] = {{x + to_x, y}, {x, y}, {x, y + to_y}};
                canvas().AddPolyline(corner, 3, colour, 0, pen);
            }
    }
}

float corner_height(const Ui& ui, const State& state, float inner)
{
    return picture_height(state, inner) + ui.look.sizes.unit + hint_height(ui, inner);
}

/// The picture with its guide, in the middle of the room.
void draw_picture(const Ui& ui, const State& state, const Area& room)
{
    const Area picture = picture_area(state.camera->whole, room);
    canvas().AddRectFilled(room.low, room.high, ui.look.theme.hairline);
    grey_picture(state.camera->whole, picture);
    guide(ui, picture);
    ui.notes.push_back({ui.language.text(TextId::camera_picture), Role::Picture, std::nullopt, room.low, room.high});
}

void draw_corner(const Ui& ui, const State& state, Area corner)
{
    draw_picture(ui, state, corner.cut_top(picture_height(state, corner.width())));
    corner.cut_top(ui.look.sizes.unit);
    if (!state.camera->hint.empty())
        text(ui, state.camera->hint, Style::Bar, corner, Align::Centre);
}

/// Whether no word below a large picture is wider than it.
bool words_fit_in(const Ui& ui, float width)
{
    const auto fits = [&](TextId id) { return widest_word(ui, ui.language.text(id), Style::Bar) <= width; };
    return std::ranges::all_of(hints, fits) && fits(TextId::camera_middle);
}

float large_words_height(const Ui& ui, float width)
{
    return std::max(hint_height(ui, width),
                    text_height(ui, ui.language.text(TextId::camera_middle), Style::Bar, width));
}

/// The whole picture, and below it what to do.
void draw_whole(const Ui& ui, const State& state, Area area, float high)
{
    const Area room = area.cut_top(high);
    draw_picture(ui, state, Area{room}.cut_left(picture_area(state.camera->whole, room).width()));
    area.cut_top(ui.look.sizes.unit);
    if (!state.camera->hint.empty())
        text(ui, state.camera->hint, Style::Bar, area);
}

/// The middle, larger than it is, and below it what it is.
void draw_middle(const Ui& ui, const State& state, Area area, float high)
{
    const Area room = area.cut_top(high);
    const auto& middle = state.camera->middle;
    const Area picture = Area{room}.cut_left(picture_area(middle, room).width());
    grey_picture(middle, picture_area(middle, picture));
    area.cut_top(ui.look.sizes.unit);
    text(ui, ui.language.text(TextId::camera_middle), Style::Bar, area);
}

} // namespace

bool shows_camera(const State& state)
{
    return state.screen == ScreenId::Welcome || state.screen == ScreenId::NotFound ||
           state.screen == ScreenId::DeskCamera;
}

float camera_corner_width(const Ui& ui, const State& state, float width)
{
    if (!state.camera || !state.camera->has_picture())
        return 0;
    const float inner = inner_width(ui, width);
    for (const TextId id : hints)
        if (widest_word(ui, ui.language.text(id), Style::Bar) > inner)
            return 0;
    return inner + ui.look.sizes.gap <= width / 2 ? inner + ui.look.sizes.gap : 0;
}

void set_beside_camera(const Ui& ui, const State& state, float width, std::vector<Block>& blocks)
{
    const float inner = inner_width(ui, width);
    Block both{std::max(height_of(blocks), corner_height(ui, state, inner)), {}, false, 0};
    both.draw = [&ui, &state, inner, words = std::move(blocks)](Area area) {
        const Area corner = area.cut_right(inner);
        area.cut_right(ui.look.sizes.gap);
        for (std::size_t i = 0; i < words.size(); ++i) {
            area.cut_top(i > 0 ? words[i].gap : 0);
            words[i].draw(area.cut_top(words[i].height));
        }
        draw_corner(ui, state, corner);
    };
    blocks.clear();
    blocks.push_back(std::move(both));
}

std::optional<Block> camera_large(const Ui& ui, const State& state, float width, float height, float least)
{
    if (!state.camera || !state.camera->has_picture())
        return std::nullopt;
    const float gap = ui.look.sizes.gap;
    const float half = std::floor((width - gap) / 2);
    const bool both = state.camera->middle.can_be_drawn() && words_fit_in(ui, half);
    const float wide = both ? half : width;
    const float words = large_words_height(ui, wide) + ui.look.sizes.unit;
    const float high = picture_area(state.camera->whole, {{0, 0}, {wide, std::max(least, height - words)}}).height();
    return Block{high + words,
                 [&ui, &state, wide, high, gap, both](Area area) {
                     draw_whole(ui, state, area.cut_left(wide), high);
                     area.cut_left(gap);
                     if (both)
                         draw_middle(ui, state, area.cut_left(wide), high);
                 },
                 false, gap};
}

} // namespace ui
