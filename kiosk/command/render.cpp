#include "kiosk/command/render.h"

#include "kiosk/command/picture.h"
#include "kiosk/command/reach.h"
#include "kiosk/desk/settings_file.h"
#include "kiosk/files/catalog_place.h"
#include "kiosk/files/font_bytes.h"
#include "kiosk/files/languages.h"
#include "kiosk/files/themes.h"
#include "ui/look/sizes.h"
#include "ui/screens/screens.h"

#include <algorithm>
#include <array>
#include <exception>
#include <ostream>
#include <stdexcept>
#include <system_error>

namespace kiosk {
namespace {

namespace fs = std::filesystem;

/// The sizes that every screen must fit: a small and a large screen lying, a small one upright.
constexpr std::array<std::pair<int, int>, 3> sizes{{{1280, 800}, {1920, 1080}, {800, 1280}}};

/// The settings; std::invalid_argument with the first fault's sentence when there is one: a picture is drawn on
/// purpose.
Settings settings_or_throw(const std::string& given, const ui::Language& language)
{
    const auto read = read_settings_file(settings_place(given));
    if (!read.faults.empty())
        throw std::invalid_argument(settings_trouble(read, language).front());
    return read.settings;
}

/// What all pictures of one call share.
struct Studio {
    explicit Studio(const RenderArguments& arguments)
        : languages(read_language_files(data_folder())), fonts(read_fonts()),
          catalog(station_catalog(arguments.catalog, data_folder(), language_named(arguments.language, languages))),
          settings(settings_or_throw(arguments.settings, language_named(arguments.language, languages)))
    {
        if (arguments.rules)
            settings.rules = *arguments.rules;
    }
    LanguageFiles languages;
    FontBytes fonts;
    StationCatalog catalog;
    Settings settings;
};

const ui::ScreenInfo& screen_named(const std::string& name)
{
    const auto all = ui::screens();
    const auto found = std::ranges::find(all, name, &ui::ScreenInfo::name);
    if (found != all.end())
        return *found;
    std::string names = "all";
    for (const auto& screen : all)
        names += ", " + std::string(screen.name);
    throw std::invalid_argument("there is no screen \"" + name + "\"; there are: " + names);
}

/// Nothing, or why the screen cannot be reached.
std::optional<std::string> draw_one(Studio& studio, const RenderArguments& arguments, const ui::ScreenInfo& screen,
                                    const fs::path& file)
{
    PictureDesk desk({studio.catalog.place().path, arguments.files, arguments.file}); // outlives the session
    Session session(studio.catalog.store(), studio.languages.languages, studio.settings);
    session.shows(studio.catalog.bundle());
    session.set_language(arguments.language);
    session.set_text_percent(arguments.text_percent);
    const auto pixels = static_cast<float>(arguments.width);
    session.glass_is(arguments.glass_mm > 0 ? pixels / static_cast<float>(arguments.glass_mm) : 0, pixels);
    session.voice_is(true); // as on a station with a loudspeaker
    session.asks_after(std::chrono::seconds{studio.settings.idle_seconds});
    const Route route{screen.id,
                      arguments.left,
                      arguments.right,
                      arguments.basis,
                      arguments.page,
                      arguments.left_price,
                      arguments.right_price,
                      arguments.amount,
                      core::nutrient_by_key(arguments.nutrient),
                      arguments.words,
                      &desk};
    if (auto trouble = reach(session, studio.catalog.store(), route))
        return trouble;
    const PictureLook look{ui::theme_of(theme_named(arguments.theme)), studio.fonts.files(), arguments.width,
                           arguments.height};
    write_png(draw_picture(session.state(), session.language(), look), file);
    return std::nullopt;
}

std::string file_name(const ui::ScreenInfo& screen, const RenderArguments& arguments)
{
    return std::string(screen.name) + "." + arguments.language + "." + std::to_string(arguments.width) + "x" +
           std::to_string(arguments.height) + "." + std::to_string(arguments.text_percent) + ".png";
}

/// One screen in every language, size and text size. Nothing, or why it cannot be reached.
std::optional<std::string> draw_everywhere(Studio& studio, RenderArguments arguments, const ui::ScreenInfo& screen)
{
    for (const auto& language : studio.languages.languages) {
        if (language.is_draft())
            continue;
        for (const auto& [width, height] : sizes) {
            for (const int percent : ui::text_percents) {
                arguments.language = language.code();
                arguments.width = width;
                arguments.height = height;
                arguments.text_percent = percent;
                const fs::path file = fs::path(arguments.out) / file_name(screen, arguments);
                if (auto trouble = draw_one(studio, arguments, screen, file))
                    return trouble;
            }
        }
    }
    return std::nullopt;
}

void draw_all(Studio& studio, const RenderArguments& arguments, std::ostream& out)
{
    std::error_code error;
    fs::create_directories(arguments.out, error);
    if (error)
        throw std::invalid_argument(arguments.out + ": no folder can be made here (" + error.message() +
                                    "); give another name, or one of a folder that is there");
    for (const auto& screen : ui::screens())
        if (const auto trouble = draw_everywhere(studio, arguments, screen))
            out << screen.name << " is left out: " << *trouble << '\n';
}

} // namespace

int render(const RenderArguments& arguments, std::ostream& out, std::ostream& err)
{
    try {
        const ui::ScreenInfo* screen = arguments.screen == "all" ? nullptr : &screen_named(arguments.screen);
        Studio studio(arguments);
        if (!screen)
            draw_all(studio, arguments, out);
        else if (const auto trouble = draw_one(studio, arguments, *screen, arguments.out))
            throw std::invalid_argument(*trouble);
        return 0;
    } catch (const std::exception& broken) {
        err << "pairstand render: " << broken.what() << '\n';
        return 2;
    }
}

} // namespace kiosk
