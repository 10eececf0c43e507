#include "kiosk/app.h"

#include "catalog/bundle/installed.h"
#include "kiosk/camera/pipeline.h"
#include "kiosk/desk/desk.h"
#include "kiosk/desk/settings_file.h"
#include "kiosk/desk/today.h"
#include "kiosk/files/font_bytes.h"
#include "kiosk/files/glass.h"
#include "kiosk/files/languages.h"
#include "kiosk/files/themes.h"
#include "kiosk/loop.h"

#include <exception>
#include <memory>
#include <mutex>
#include <optional>
#include <ostream>
#include <stdexcept>
#include <vector>

namespace kiosk {
namespace {

/// Sentences for whoever looks after the station, from any thread.
class Complaints {
public:
    explicit Complaints(std::ostream& err) : err_(err) {}
    void operator()(const std::string& sentence)
    {
        const std::lock_guard lock(mutex_);
        err_ << "pairstand: " << sentence << std::endl;
    }

private:
    std::ostream& err_;
    std::mutex mutex_;
};

std::unique_ptr<CameraSource> camera_for(const CameraChoices& choices, const std::string& source, Every<Scan>& scans)
{
    if (choices.which == "off")
        return nullptr;
    if (!source.empty())
        if (const auto fault = Pipeline::fault_of(source))
            throw std::runtime_error("--camera-source: " + *fault);
    CaptureOptions options;
    options.source = source;
    if (choices.which != "auto")
        options.device = choices.which;
    options.turn = {choices.rotate / 90, choices.mirror == Mirror::Camera};
    options.power_line_hz = choices.power_line_hz;
    const SightChoices sights{ui::GreyPicture::most_pixels, choices.mirror == Mirror::Picture};
    return std::make_unique<CameraSource>(std::move(options), scans, &Window::wake, AttentionLimits{}, sights);
}

std::unique_ptr<SerialSource> serial_for(const Settings& settings, Every<Scan>& scans)
{
    if (settings.scanner_serial == "off")
        return nullptr;
    SerialOptions options;
    options.port = settings.scanner_serial;
    options.around = settings.scanner;
    return std::make_unique<SerialSource>(std::move(options), scans, &Window::wake);
}

/// Where the desk works: loads go where the station looks for its catalog, and never into the demo.
DeskPlaces desk_places(const StationArguments& arguments, CameraSource* camera)
{
    DeskPlaces places;
    places.data = own_data();
    const auto named = process_environment("PAIRSTAND_CATALOG");
    places.catalog_named = !arguments.catalog.empty() || named;
    places.catalog = !arguments.catalog.empty() ? std::filesystem::path(arguments.catalog)
                     : named                    ? std::filesystem::path(*named)
                                                : catalog::own_catalog(places.data);
    if (places.data.empty())
        throw std::runtime_error("this user has no folder of data (HOME is not set), so the leader desk cannot work");
    if (!arguments.files.empty())
        places.folders.emplace_back(arguments.files);
    if (camera) {
        places.take_picture = [camera] { return camera->picture_within(std::chrono::seconds{3}); };
        places.look_afresh = [camera] { camera->look_afresh(); };
    }
    places.today = words_of_today;
    return places;
}

/// How large the glass is, and whether it may be measured here: whoever looks after the station does that.
void tell_glass(const Window& window, Session& session, const Settings& settings, bool may_measure)
{
    const auto own = own_data();
    const auto pixels = static_cast<float>(window.screen_width());
    const auto width_mm = glass_width(own, settings.screen_width_mm, window.screen_height() > window.screen_width());
    session.glass_is(width_mm && pixels > 0 ? pixels / *width_mm : 0, static_cast<float>(window.width()));
    if (may_measure && pixels > 0)
        session.may_measure([own, pixels](float px_per_mm) { return keep_glass_width(own, pixels / px_per_mm); });
}

void run(const StationArguments& arguments, Complaints& complaints)
{
    const auto complain = [&complaints](const std::string& sentence) { complaints(sentence); };
    const auto data = data_folder();
    const auto languages = read_language_files(data);
    const auto& language = first_language(arguments.language, languages);
    for (const auto& [code, sentence] : languages.refused)
        complain(sentence);
    const FontBytes fonts = read_fonts();
    StationCatalog catalog = station_catalog(arguments.catalog, data, language);
    catalog.on_trouble([&](const CatalogPlace& place, const core::Error& error) {
        complain(catalog_trouble(place, error, language));
    });
    const auto settings = read_settings_file(settings_place(arguments.settings));
    for (const auto& sentence : settings_trouble(settings, language))
        complain(sentence);
    Session session(catalog.store(), languages.languages, settings.settings);
    session.shows(catalog.bundle());
    session.begin_with({language.code(), arguments.text_percent, theme_named(arguments.theme)});
    if (catalog.place().demo)
        session.say_demo();
    if (!settings.faults.empty())
        session.say_settings_broken(lines_with_faults(settings));
    if (!languages.refused.empty())
        session.say_language_broken();
    std::unique_ptr<Trace> trace;
    if (!arguments.trace.empty())
        trace = std::make_unique<Trace>(arguments.trace);

    Every<Scan> scans;
    Window window({arguments.width, arguments.height, arguments.fullscreen, fonts.files()});
    tell_glass(window, session, settings.settings, arguments.desk);
    // Before the sound: it may set a variable of the environment. Before the desk, whose work may take a picture.
    CameraChoices choices = settings.settings.camera;
    if (!arguments.camera.empty())
        choices.which = arguments.camera;
    const auto camera = camera_for(choices, arguments.camera_source, scans);
    std::optional<Desk> desk;
    if (arguments.desk) {
        desk.emplace(desk_places(arguments, camera.get()), &Window::wake);
        session.open_desk(*desk);
    }
    std::unique_ptr<Sound> sound;
    if (!arguments.silent)
        sound = std::make_unique<Sound>([&] { complain(language.text(ui::TextId::sound_none) + "."); }, &Window::wake);
    const auto serial = serial_for(settings.settings, scans);
    if (camera)
        camera->start();
    if (serial)
        serial->start();
    session.goes_by(Clock::now);
    session.asks_after(std::chrono::seconds{settings.settings.idle_seconds});
    if (choices.which != "auto" && choices.which != "off" && arguments.camera_source.empty())
        session.camera_named(choices.which);
    const bool expected = choices.which != "auto" || !arguments.camera_source.empty();
    Loop({window, session, catalog, scans, camera.get(), expected, sound.get(), trace.get(),
          std::chrono::seconds{settings.settings.idle_seconds}, Milliseconds{settings.settings.switch_pace_ms},
          complain, serial.get(), settings.settings.scanner})
        .run();
}

} // namespace

int open_station(const StationArguments& arguments, std::ostream& err)
{
    Complaints complain(err);
    try {
        run(arguments, complain);
        return 0;
    } catch (const std::exception& broken) {
        complain(broken.what());
        return 2;
    }
}

} // namespace kiosk
