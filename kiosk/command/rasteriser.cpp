#include "kiosk/command/rasteriser.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace kiosk {
namespace {

/// Positions in 1/256 of a pixel: integers, so that two triangles with a common edge never both take a pixel on it.
constexpr std::int64_t one = 256;

struct Point {
    std::int64_t x, y;
};

/// Where drawing is allowed: whole pixels, low <= x < high.
struct Clip {
    int left, top, right, bottom;
};

struct Colour {
    std::array<float, 4> parts; // red, green, blue, opacity; 0 to 255
};

Colour colour_of(ImU32 packed)
{
    const auto part = [packed](int shift) { return static_cast<float>((packed >> shift) & 0xFF); };
    return {{part(IM_COL32_R_SHIFT), part(IM_COL32_G_SHIFT), part(IM_COL32_B_SHIFT), part(IM_COL32_A_SHIFT)}};
}

/// A clipping rectangle of ImGui as pixels: those whose centre is inside, as a scissor test does.
Clip clip_of(const ImVec4& rect, const Picture& picture, ImVec2 origin)
{
    return {std::max(0, static_cast<int>(rect.x - origin.x)), std::max(0, static_cast<int>(rect.y - origin.y)),
            std::min(picture.width, static_cast<int>(rect.z - origin.x)),
            std::min(picture.height, static_cast<int>(rect.w - origin.y))};
}

class Canvas {
public:
    Canvas(Picture& picture, AtlasPixels atlas) : picture_(picture), atlas_(atlas) {}

    /// Mixes a colour into a pixel; opacity is 0 to 255.
    void blend(int x, int y, const std::array<float, 4>& colour, float texel)
    {
        const float opacity = colour[3] * texel / (255.0F * 255.0F);
        if (opacity <= 0)
            return;
        const auto at =
            (static_cast<std::size_t>(y) * static_cast<std::size_t>(picture_.width) + static_cast<std::size_t>(x)) * 4;
        for (std::size_t i = 0; i < 3; ++i) {
            const auto below = static_cast<float>(picture_.rgba[at + i]);
            picture_.rgba[at + i] = static_cast<std::uint8_t>(below + (colour[i] - below) * opacity + 0.5F);
        }
    }

    /// The atlas at a place given in texels, bilinearly.
    [[nodiscard]] float texel(float u, float v) const
    {
        const float x = u - 0.5F;
        const float y = v - 0.5F;
        const float left = std::floor(x);
        const float top = std::floor(y);
        const float across = x - left;
        const float down = y - top;
        const int column = static_cast<int>(left);
        const int row = static_cast<int>(top);
        const float upper = opacity(column, row) * (1 - across) + opacity(column + 1, row) * across;
        const float lower = opacity(column, row + 1) * (1 - across) + opacity(column + 1, row + 1) * across;
        return upper * (1 - down) + lower * down;
    }

    void triangle(const ImDrawVert& a, const ImDrawVert& b, const ImDrawVert& c, const Clip& clip, ImVec2 origin);

private:
    [[nodiscard]] float opacity(int column, int row) const
    {
        column = std::clamp(column, 0, atlas_.width - 1);
        row = std::clamp(row, 0, atlas_.height - 1);
        return static_cast<float>(
            atlas_.opacity[static_cast<std::size_t>(row) * static_cast<std::size_t>(atlas_.width) +
                           static_cast<std::size_t>(column)]);
    }

    Picture& picture_;
    AtlasPixels atlas_;
};

/// Twice the area of a, b, p: positive where p lies to the right of the way from a to b (y grows downwards).
std::int64_t side_of(Point a, Point b, Point p)
{
    return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
}

/// Pixels exactly on an edge belong to the triangle to the right of it or below it, so to one of two neighbours.
bool owns_its_points(Point a, Point b)
{
    return (a.y == b.y && b.x > a.x) || b.y < a.y;
}

int first_centre(std::int64_t low)
{
    return static_cast<int>((low - one / 2 + one - 1) >> 8);
}

int behind_centre(std::int64_t high)
{
    return static_cast<int>((high - one / 2) >> 8) + 1;
}

void Canvas::triangle(const ImDrawVert& a, const ImDrawVert& b, const ImDrawVert& c, const Clip& clip, ImVec2 origin)
{
    std::array<const ImDrawVert*, 3> corners{&a, &b, &c};
    const auto point = [origin](const ImDrawVert& v) {
        return Point{std::llround((v.pos.x - origin.x) * one), std::llround((v.pos.y - origin.y) * one)};
    };
    std::array<Point, 3> p{point(a), point(b), point(c)};
    std::int64_t area = side_of(p[0], p[1], p[2]);
    if (area == 0)
        return;
    if (area < 0) {
        std::swap(p[1], p[2]);
        std::swap(corners[1], corners[2]);
        area = -area;
    }
    const auto [low_x, high_x] = std::minmax({p[0].x, p[1].x, p[2].x});
    const auto [low_y, high_y] = std::minmax({p[0].y, p[1].y, p[2].y});
    const int left = std::max(clip.left, first_centre(low_x));
    const int right = std::min(clip.right, behind_centre(high_x));
    const int top = std::max(clip.top, first_centre(low_y));
    const int bottom = std::min(clip.bottom, behind_centre(high_y));

    // Edge i lies opposite corner i; its value at a pixel, over the area, is that corner's share there.
    std::array<std::int64_t, 3> step_x{};
    std::array<std::int64_t, 3> bias{};
    for (std::size_t i = 0; i < 3; ++i) {
        const Point from = p[(i + 1) % 3];
        const Point to = p[(i + 2) % 3];
        step_x[i] = -(to.y - from.y) * one;
        bias[i] = owns_its_points(from, to) ? 0 : -1;
    }
    std::array<Colour, 3> colours{};
    std::array<ImVec2, 3> places{};
    for (std::size_t i = 0; i < 3; ++i) {
        colours[i] = colour_of(corners[i]->col);
        places[i] = {corners[i]->uv.x * static_cast<float>(atlas_.width),
                     corners[i]->uv.y * static_cast<float>(atlas_.height)};
    }
    const bool one_colour = corners[0]->col == corners[1]->col && corners[1]->col == corners[2]->col;
    const bool one_texel = places[0].x == places[1].x && places[1].x == places[2].x && places[0].y == places[1].y &&
                           places[1].y == places[2].y;
    const float only_texel = one_texel ? texel(places[0].x, places[0].y) : 0;
    const float share_of = 1.0F / static_cast<float>(area);

    for (int y = top; y < bottom; ++y) {
        const Point start{left * one + one / 2, y * one + one / 2};
        std::array<std::int64_t, 3> edge{side_of(p[1], p[2], start), side_of(p[2], p[0], start),
                                         side_of(p[0], p[1], start)};
        for (int x = left; x < right; ++x) {
            if (edge[0] + bias[0] >= 0 && edge[1] + bias[1] >= 0 && edge[2] + bias[2] >= 0) {
                const std::array<float, 3> share{static_cast<float>(edge[0]) * share_of,
                                                 static_cast<float>(edge[1]) * share_of,
                                                 static_cast<float>(edge[2]) * share_of};
                auto colour = colours[0].parts;
                if (!one_colour)
                    for (std::size_t i = 0; i < 4; ++i)
                        colour[i] = colours[0].parts[i] * share[0] + colours[1].parts[i] * share[1] +
                                    colours[2].parts[i] * share[2];
                const float seen =
                    one_texel ? only_texel
                              : texel(places[0].x * share[0] + places[1].x * share[1] + places[2].x * share[2],
                                      places[0].y * share[0] + places[1].y * share[1] + places[2].y * share[2]);
                blend(x, y, colour, seen);
            }
            for (std::size_t i = 0; i < 3; ++i)
                edge[i] += step_x[i];
        }
    }
}

Picture blank(int width, int height, ImU32 ground)
{
    Picture picture{width, height, {}};
    picture.rgba.resize(static_cast<std::size_t>(width) * static_cast<std::size_t>(height) * 4);
    for (std::size_t at = 0; at < picture.rgba.size(); at += 4) {
        picture.rgba[at] = static_cast<std::uint8_t>(ground >> IM_COL32_R_SHIFT);
        picture.rgba[at + 1] = static_cast<std::uint8_t>(ground >> IM_COL32_G_SHIFT);
        picture.rgba[at + 2] = static_cast<std::uint8_t>(ground >> IM_COL32_B_SHIFT);
        picture.rgba[at + 3] = 255;
    }
    return picture;
}

void draw_list(Canvas& canvas, const ImDrawList& list, const Picture& picture, ImVec2 origin)
{
    for (const ImDrawCmd& command : list.CmdBuffer) {
        if (command.UserCallback)
            continue; // none of our screens has one
        const Clip clip = clip_of(command.ClipRect, picture, origin);
        const auto vertex = [&](unsigned index) -> const ImDrawVert& {
            const auto at = list.IdxBuffer[static_cast<int>(command.IdxOffset + index)] + command.VtxOffset;
            return list.VtxBuffer[static_cast<int>(at)];
        };
        for (unsigned i = 0; i + 2 < command.ElemCount; i += 3)
            canvas.triangle(vertex(i), vertex(i + 1), vertex(i + 2), clip, origin);
    }
}

} // namespace

Picture rasterise(const ImDrawData& data, AtlasPixels atlas, ImU32 ground)
{
    Picture picture = blank(static_cast<int>(data.DisplaySize.x), static_cast<int>(data.DisplaySize.y), ground);
    Canvas canvas(picture, atlas);
    for (int i = 0; i < data.CmdListsCount; ++i)
        draw_list(canvas, *data.CmdLists[i], picture, data.DisplayPos);
    return picture;
}

} // namespace kiosk
