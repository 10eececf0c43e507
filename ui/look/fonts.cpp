#include "ui/look/fonts.h"

#include <imgui_freetype.h>

#include <cmath>
#include <stdexcept>

namespace ui {
namespace {

/// The letters of today's languages in Latin (Spanish, Polish, Romanian, Vietnamese, Yoruba ...), Greek and Cyrillic,
/// and the punctuation of labels. Each costs time in every font at every change of text size, so letters of old books
/// and of dictionaries (the rest of these blocks of Unicode) are left out.
constexpr ImWchar letters[] = {0x20,   0x17F,  0x1A0,  0x1A1,  0x1AF,  0x1B0,  0x1CD,  0x1DC,  0x218,
                               0x21B,  0x384,  0x3CE,  0x400,  0x45F,  0x490,  0x491,  0x1E62, 0x1E63,
                               0x1E80, 0x1E85, 0x1EA0, 0x1EF9, 0x2010, 0x2027, 0x2030, 0x203A, 0x2044,
                               0x2044, 0x20AC, 0x20AC, 0x2122, 0x2122, 0x2150, 0x215F, 0};
/// Figures and headlines are ours: the Latin letters of languages that have a file here, Vietnamese with them.
constexpr ImWchar few_letters[] = {0x20,   0x17F,  0x1A0,  0x1A1,  0x1AF,  0x1B0, 0x1EA0,
                                   0x1EF9, 0x2010, 0x2027, 0x2150, 0x215F, 0};
constexpr ImWchar signs[] = {0x2190, 0x2193, 0x2212, 0x2212, 0x2264, 0x2265, 0x25A0, 0x25CF, 0};

/// Dear ImGui sizes a font by ascent plus descent. Noto Sans has 1.069 + 0.293 em, so that the em is what we ask for:
/// OpenType tables hhea and head of NotoSans-Regular.ttf.
constexpr float line_per_em = 1.362F;

ImFont* add(ImFontAtlas& atlas, std::span<const unsigned char> file, float em, const ImWchar* ranges, bool merge)
{
    ImFontConfig config;
    config.FontDataOwnedByAtlas = false;
    config.MergeMode = merge;
    config.OversampleH = 1;
    config.PixelSnapH = true;
    config.FontBuilderFlags = ImGuiFreeTypeBuilderFlags_LightHinting;
    // The atlas only reads the bytes; its interface is older than const.
    auto* bytes = const_cast<unsigned char*>(file.data());
    ImFont* font = file.empty() ? nullptr
                                : atlas.AddFontFromMemoryTTF(bytes, static_cast<int>(file.size()),
                                                             std::round(em * line_per_em), &config, ranges);
    if (!font)
        throw std::runtime_error("a font file is missing or is no font");
    return font;
}

ImFont* font_with_signs(ImFontAtlas& atlas, std::span<const unsigned char> file, const FontFiles& files, float em,
                        const ImWchar* ranges)
{
    ImFont* font = add(atlas, file, em, ranges, false);
    add(atlas, files.signs, em, signs, true);
    return font;
}

} // namespace

Fonts build_fonts(ImFontAtlas& atlas, const FontFiles& files, const Sizes& sizes)
{
    atlas.Clear();
    atlas.FontBuilderIO = ImGuiFreeType::GetBuilderForFreeType();
    constexpr float large_note = 48; // letters of which a narrow texture would be higher than graphics cards take
    atlas.TexDesiredWidth = sizes.note > large_note ? 4096 : 2048;
    atlas.Flags |= ImFontAtlasFlags_NoPowerOfTwoHeight; // up to half of the texture would be empty
    Fonts fonts;
    fonts.text = font_with_signs(atlas, files.regular, files, sizes.text, letters);
    fonts.note = font_with_signs(atlas, files.regular, files, sizes.note, letters);
    // The same letters twice would take the same time twice.
    fonts.bar = sizes.bar == sizes.note ? fonts.note : font_with_signs(atlas, files.regular, files, sizes.bar, letters);
    fonts.strong = font_with_signs(atlas, files.bold, files, sizes.text, letters);
    fonts.name =
        sizes.name == sizes.text ? fonts.strong : font_with_signs(atlas, files.bold, files, sizes.name, letters);
    fonts.figure = font_with_signs(atlas, files.regular, files, sizes.figure, few_letters);
    fonts.headline = font_with_signs(atlas, files.bold, files, sizes.headline, few_letters);
    if (!atlas.Build())
        throw std::runtime_error("a font file is no font");
    return fonts;
}

} // namespace ui
