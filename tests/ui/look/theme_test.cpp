// Contrast by the formula of WCAG 2.2, and the two sides as people see them who see colours otherwise.
#include "tests/support/reference_table.h"
#include "ui/look/theme.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <vector>

namespace {

using Light = std::array<double, 3>; // linear red, green and blue, from 0 to 1
using Matrix = std::array<Light, 3>;

/// One channel as light. Source: WCAG 2.2, relative luminance (threshold 0.04045 as in IEC 61966-2-1; for 8 bits the
/// older 0.03928 gives the same).
double linear(unsigned channel)
{
    const double value = channel / 255.0;
    return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
}

Light light_of(ImU32 colour)
{
    return {linear(colour >> IM_COL32_R_SHIFT & 0xFFU), linear(colour >> IM_COL32_G_SHIFT & 0xFFU),
            linear(colour >> IM_COL32_B_SHIFT & 0xFFU)};
}

double luminance(const Light& light)
{
    return 0.2126 * light[0] + 0.7152 * light[1] + 0.0722 * light[2];
}

/// Source: WCAG 2.2, contrast ratio.
double contrast(ImU32 a, ImU32 b)
{
    const auto [low, high] = std::minmax({luminance(light_of(a)), luminance(light_of(b))});
    return (high + 0.05) / (low + 0.05);
}

ImU32 from_hex(const std::string& hex)
{
    const auto value = static_cast<unsigned>(std::stoul(hex.substr(1), nullptr, 16));
    return IM_COL32(value >> 16U, value >> 8U & 0xFFU, value & 0xFFU, 255);
}

/// CIE 1976 L*a*b* under D65. Source: IEC 61966-2-1 (sRGB to XYZ), CIE 15 (XYZ to L*a*b*).
Light lab_of(const Light& c)
{
    const Light xyz{(0.4124 * c[0] + 0.3576 * c[1] + 0.1805 * c[2]) / 0.9505,
                    0.2126 * c[0] + 0.7152 * c[1] + 0.0722 * c[2],
                    (0.0193 * c[0] + 0.1192 * c[1] + 0.9505 * c[2]) / 1.0890};
    Light f{};
    for (std::size_t i = 0; i < 3; ++i)
        f[i] = xyz[i] > 216.0 / 24389 ? std::cbrt(xyz[i]) : (24389.0 / 27 * xyz[i] + 16) / 116;
    return {116 * f[1] - 16, 500 * (f[0] - f[1]), 200 * (f[1] - f[2])};
}

Light seen_through(const Matrix& matrix, const Light& light)
{
    Light seen{};
    for (std::size_t i = 0; i < 3; ++i)
        seen[i] = std::clamp(matrix[i][0] * light[0] + matrix[i][1] * light[1] + matrix[i][2] * light[2], 0.0, 1.0);
    return seen;
}

double apart(const Light& a, const Light& b)
{
    const Light x = lab_of(a);
    const Light y = lab_of(b);
    return std::hypot(x[0] - y[0], x[1] - y[1], x[2] - y[2]);
}

struct Named {
    std::string name;
    const ui::Theme& theme;
};

std::vector<Named> themes()
{
    return {{"paper", ui::paper()}, {"night", ui::night()}, {"plain", ui::plain()}};
}

} // namespace

TEST_CASE("theme: the contrast formula gives the published ratios")
{
    for (const auto& row : test::reference_rows("contrast_examples.csv")) {
        CAPTURE(row.place());
        const double ratio = contrast(from_hex(row["colour1"]), from_hex(row["colour2"]));
        CHECK(std::abs(ratio - std::stod(row["ratio_6_decimals"])) < 0.000001);
        CHECK((ratio >= 7) == (row["at_least_7"] == "yes"));
        CHECK((ratio >= 3) == (row["at_least_3"] == "yes"));
    }
}

// Source of 7:1: WCAG 2.2, success criterion 1.4.6; of 3:1: 1.4.11.
TEST_CASE("theme: every word is at least 7 to 1 on whatever lies behind it, every mark and line 3 to 1")
{
    for (const auto& [name, theme] : themes()) {
        const auto& told_name = name;
        CAPTURE(told_name);
        for (const ImU32 behind : {theme.ground, theme.left.tint, theme.right.tint}) {
            CHECK(contrast(theme.ink, behind) >= 7);
            CHECK(contrast(theme.quiet, behind) >= 7);
            CHECK(contrast(theme.hairline, behind) >= 3);
        }
        for (const auto& side : {theme.left, theme.right}) {
            CHECK(contrast(side.hue, theme.ground) >= 7);
            CHECK(contrast(side.hue, side.tint) >= 7);
        }
        CHECK(contrast(theme.ground, theme.ink) >= 7); // a pressed button: the word takes the ground
        // Nothing shines through: a ratio of half-clear colours would mean nothing.
        for (const ImU32 colour : {theme.ground, theme.ink, theme.quiet, theme.hairline, theme.left.hue,
                                   theme.left.tint, theme.right.hue, theme.right.tint})
            CHECK((colour >> IM_COL32_A_SHIFT) == 255U);
    }
}

// Source of the matrices: Machado, Oliveira and Fernandes, A Physiologically-based Model for Simulation of Color Vision
// Deficiency, IEEE TVCG 15(6), 2009, severity 1.0, on linear RGB; taken from several transcripts that agree.
// Least difference: 10 in L*a*b*, several times what can just be told apart (about 2.3); common practice.
TEST_CASE("theme: the hues of the two sides stay apart for people who see colours otherwise")
{
    struct Case {
        std::string sight;
        Matrix matrix;
    };
    const Case cases[] = {
        {"all cones", {{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}}},
        {"protanopia",
         {{{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}}}},
        {"deuteranopia",
         {{{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}}}},
        {"tritanopia",
         {{{1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}}}},
    };
    // "Plain" has no hues: there, as with no colour sight at all, the sides differ by pattern and mark alone; see
    // tests/ui/widgets/pattern_test.cpp.
    for (const auto& [name, theme] : {Named{"paper", ui::paper()}, Named{"night", ui::night()}})
        for (const auto& c : cases) {
            const auto& told_name = name;
            CAPTURE(told_name);
            CAPTURE(c.sight);
            CHECK(apart(seen_through(c.matrix, light_of(theme.left.hue)),
                        seen_through(c.matrix, light_of(theme.right.hue))) >= 10);
        }
    for (const auto& c : cases) // white stays white in each: a check of the matrices' rows
        CHECK(apart(seen_through(c.matrix, {1, 1, 1}), {1, 1, 1}) < 0.01);
}

TEST_CASE("theme: no theme paints a side green, amber or red")
{
    // By hue angle in L*a*b*: red about 40, amber 70 to 90, green 136 (sRGB primaries, worked out by lab_of).
    for (const auto& [name, theme] : {Named{"paper", ui::paper()}, Named{"night", ui::night()}})
        for (const ImU32 hue : {theme.left.hue, theme.right.hue}) {
            const auto& told_name = name;
            CAPTURE(told_name);
            const Light lab = lab_of(light_of(hue));
            const double angle = std::fmod(std::atan2(lab[2], lab[1]) * 180 / 3.14159265358979 + 360, 360);
            CHECK(angle > 170);
            CHECK(angle < 350);
        }
}
