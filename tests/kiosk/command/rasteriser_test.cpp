#include "kiosk/command/rasteriser.h"

#include <doctest/doctest.h>
#include <imgui_internal.h>

#include <array>
#include <cmath>
#include <numbers>

namespace {

using kiosk::Picture;

constexpr ImU32 white = IM_COL32(255, 255, 255, 255);
constexpr ImU32 black = IM_COL32(0, 0, 0, 255);
constexpr ImU32 half = IM_COL32(0, 0, 0, 128);

/// A list of triangles by hand: no window, no letters, an atlas of four texels.
class Sheet {
public:
    explicit Sheet(ImVec2 size) : size_(size) { list_.CmdBuffer.push_back(command({0, 0, size.x, size.y})); }

    void clip(ImVec4 to) { list_.CmdBuffer.push_back(command(to)); }
    void triangle(ImVec2 a, ImVec2 b, ImVec2 c, ImU32 colour, ImVec2 uv = {0.25F, 0.25F})
    {
        for (const ImVec2 at : {a, b, c})
            corner({at, uv, colour});
    }
    void corner(const ImDrawVert& vertex)
    {
        list_.IdxBuffer.push_back(static_cast<ImDrawIdx>(list_.VtxBuffer.Size));
        list_.VtxBuffer.push_back(vertex);
        ++list_.CmdBuffer.back().ElemCount;
    }
    void rectangle(ImVec2 low, ImVec2 high, ImU32 colour)
    {
        triangle(low, {high.x, low.y}, high, colour);
        triangle(low, high, {low.x, high.y}, colour);
    }
    [[nodiscard]] Picture picture()
    {
        ImDrawList* lists[] = {&list_};
        ImDrawData data;
        data.Valid = true;
        data.DisplaySize = size_;
        set_lists(data, lists);
        return kiosk::rasterise(data, {atlas.data(), 2, 2}, white);
    }

private:
    /// The lists are an array in 1.86 and a vector in 1.90.
    template<class Data>
    static void set_lists(Data& data, ImDrawList** lists)
    {
        data.CmdListsCount = 1;
        if constexpr (requires { data.CmdLists.push_back(lists[0]); })
            data.CmdLists.push_back(lists[0]);
        else
            data.CmdLists = lists;
    }
    [[nodiscard]] ImDrawCmd command(ImVec4 clip) const
    {
        ImDrawCmd made;
        made.ClipRect = clip;
        made.IdxOffset = static_cast<unsigned>(list_.IdxBuffer.Size);
        return made;
    }

    static constexpr std::array<std::uint8_t, 4> atlas{255, 255, 0, 255}; // rows: full full, empty full
    ImVec2 size_;
    ImDrawListSharedData shared_;
    ImDrawList list_{&shared_};
};

int grey(const Picture& picture, int x, int y)
{
    return picture.rgba[static_cast<std::size_t>(y * picture.width + x) * 4];
}

int darkened(const Picture& picture)
{
    int count = 0;
    for (int y = 0; y < picture.height; ++y)
        for (int x = 0; x < picture.width; ++x)
            count += grey(picture, x, y) < 255 ? 1 : 0;
    return count;
}

} // namespace

TEST_CASE("rasteriser: an empty list is the ground")
{
    Sheet sheet({5, 4});
    const auto picture = sheet.picture();
    CHECK(picture.width == 5);
    CHECK(picture.height == 4);
    CHECK(picture.rgba.size() == 80);
    CHECK(darkened(picture) == 0);
    CHECK(picture.rgba[3] == 255);
}

TEST_CASE("rasteriser: a rectangle on whole pixels covers exactly these, each once")
{
    Sheet sheet({10, 10});
    sheet.rectangle({2, 3}, {6, 8}, half);
    const auto picture = sheet.picture();
    for (int y = 0; y < 10; ++y)
        for (int x = 0; x < 10; ++x) {
            CAPTURE(x);
            CAPTURE(y);
            const bool inside = x >= 2 && x < 6 && y >= 3 && y < 8;
            CHECK(grey(picture, x, y) == (inside ? 127 : 255)); // twice would be 64: the diagonal belongs to one half
        }
}

TEST_CASE("rasteriser: a fan of thin triangles covers each of its pixels once, however they are turned")
{
    for (const bool clockwise : {true, false}) {
        CAPTURE(clockwise);
        Sheet sheet({64, 64});
        constexpr int slices = 37;
        const auto rim = [](int i) {
            const double angle = 2 * std::numbers::pi * i / slices;
            return ImVec2(static_cast<float>(32.3 + 25 * std::cos(angle)),
                          static_cast<float>(31.7 + 25 * std::sin(angle)));
        };
        for (int i = 0; i < slices; ++i) {
            if (clockwise)
                sheet.triangle({32.3F, 31.7F}, rim(i), rim(i + 1), half);
            else
                sheet.triangle({32.3F, 31.7F}, rim(i + 1), rim(i), half);
        }
        const auto picture = sheet.picture();
        for (int y = 0; y < 64; ++y)
            for (int x = 0; x < 64; ++x) {
                const int seen = grey(picture, x, y);
                CHECK((seen == 255 || seen == 127));
            }
        // 37 slices of a circle of radius 25 have 1,954 pixels of area; a rim pixel more or less for each slice.
        CHECK(std::abs(darkened(picture) - 1'954) < slices);
    }
}

TEST_CASE("rasteriser: draws nothing outside of the clipping rectangle and of the picture")
{
    Sheet sheet({10, 10});
    sheet.clip({2, 2, 5, 6});
    sheet.rectangle({-100, -100}, {100, 100}, black);
    const auto picture = sheet.picture();
    CHECK(darkened(picture) == 12);
    CHECK(grey(picture, 2, 2) == 0);
    CHECK(grey(picture, 4, 5) == 0);
    CHECK(grey(picture, 5, 5) == 255);
}

TEST_CASE("rasteriser: colours run evenly from corner to corner, and the texture thins them")
{
    Sheet sheet({100, 1});
    sheet.corner({{0, 0}, {0.25F, 0.25F}, black});
    sheet.corner({{100, 0}, {0.25F, 0.25F}, white});
    sheet.corner({{0, 100}, {0.25F, 0.25F}, black});
    const auto run = sheet.picture();
    for (int x = 1; x < 99; ++x)
        CHECK(std::abs(grey(run, x, 0) - 255 * (x + 0.5) / 100) <= 1);

    Sheet empty({4, 4});
    empty.triangle({0, 0}, {9, 0}, {0, 9}, black, {0.25F, 0.75F}); // the empty texel's middle
    CHECK(darkened(empty.picture()) == 0);
    Sheet between({4, 4});
    between.triangle({0, 0}, {9, 0}, {0, 9}, black, {0.25F, 0.5F}); // halfway to it
    CHECK(std::abs(grey(between.picture(), 0, 0) - 127.5) <= 0.5);
}

TEST_CASE("rasteriser: points, lines and nonsense draw nothing and do no harm")
{
    Sheet sheet({8, 8});
    sheet.triangle({1, 1}, {1, 1}, {1, 1}, black);
    sheet.triangle({1, 1}, {7, 7}, {4, 4}, black);
    sheet.triangle({0, 0}, {0.2F, 0}, {0, 0.2F}, black); // between the centres of pixels
    CHECK(darkened(sheet.picture()) == 0);
}
