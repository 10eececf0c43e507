// The letter sizes and the grid, in pixels of the window at hand; in millimetres where the glass was measured.
#pragma once

namespace ui {

/// The glass that people look at.
struct Glass {
    float width = 1280; ///< pixels
    float height = 800;
    float px_per_mm = 0;       ///< 0: nobody has measured it
    int distance_mm = 500;     ///< from which one person reads
    int group_distance_mm = 0; ///< from which a group reads what is shown now; 0: no group does
};

/// Sizes of letters (the em, in pixels) and of room, for one glass and one text size.
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
    float target;   ///< the least height and width of what is touched, 64 px, and 15 mm where the glass was measured
    float corner;   ///< 12 px
    float line;     ///< hairline, at least one pixel
    float width;    ///< of the window
    float height;
    [[nodiscard]] bool upright() const { return height > width; }
    /// Letters so large that one nutrient fills a page by itself: its words are then set smaller than titles.
    [[nodiscard]] bool crowded() const { return text > 7.5F * unit; }
    /// Letters of the bar so large that it would take a third of the glass and more.
    [[nodiscard]] bool crowded_bar() const { return bar > 4.6F * unit; }
};

/// A capital's part of the em: OS/2 sCapHeight 714 of 1,000 in NotoSans-Regular.ttf.
inline constexpr float capital_per_em = 0.714F;

/// The least height of a capital in mm for a reader at that distance: 0.7 degrees (EN 301 549 V3.2.1, 5.1.4: angle =
/// 180 x height / (pi x distance)) and a little more, and never below 3/16 in (36 CFR 1194 Appendix C, 402.4).
[[nodiscard]] float least_capital_mm(int distance_mm);

/// Letters grow with the text size; figure, name and headline less so, since they are large already and long words must
/// still fit, and the bar less so, since it would crowd out what people came for. Room grows with the window only. On a
/// measured glass no capital is lower than `least_capital_mm`, and for a group no letter of the content is lower than
/// 1/200 of its distance, as far as the longest word of a label fits the glass at that. Letters never grow past three
/// times the size that they have at 100 % where nobody measured, past two and a half where small glass asks for a large
/// bar: the longest words of a language would not fit.
[[nodiscard]] Sizes sizes_for(const Glass& glass, int text_percent);
/// The same for a glass that nobody has measured.
[[nodiscard]] Sizes sizes_for(float width, float height, int text_percent);

/// Whether both have the same letters, so that fonts need not be made anew.
[[nodiscard]] bool same_letters(const Sizes& a, const Sizes& b);

/// The text sizes offered, in percent, smallest first.
inline constexpr int text_percents[] = {100, 150, 200, 300};

/// The size after this one; after the largest comes the smallest.
[[nodiscard]] int next_text_percent(int percent);

} // namespace ui
