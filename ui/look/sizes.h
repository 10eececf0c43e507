// The five letter sizes and the grid, in pixels of the window at hand.
#pragma once

namespace ui {

/// Sizes of letters (the em, in pixels) and of room, for one window size and one text size.
struct Sizes {
    float note;     ///< 24 px at 1280x800 and 100 %
    float bar;      ///< 24; in the bar and the notice, which are on every screen
    float text;     ///< 30
    float name;     ///< 38
    float figure;   ///< 47
    float headline; ///< 59
    float unit;     ///< the 8-px grid
    float margin;   ///< outer margin, 32 px
    float gap;      ///< between groups, 24 px
    float target;   ///< the least height and width of what is touched, 64 px
    float corner;   ///< 12 px
    float line;     ///< hairline, at least one pixel
    float width;    ///< of the window
    float height;
    [[nodiscard]] bool upright() const { return height > width; }
};

/// Letters grow with the text size; figure, name and headline less so, since they are large already and long words must
/// still fit, and the bar less so, since it would crowd out what people came for. Room grows with the window only.
[[nodiscard]] Sizes sizes_for(float width, float height, int text_percent);

/// The text sizes offered, in percent, smallest first.
inline constexpr int text_percents[] = {100, 125, 150, 200};

/// The size after this one; after the largest comes the smallest.
[[nodiscard]] int next_text_percent(int percent);

} // namespace ui
