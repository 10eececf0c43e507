// The only writer of ui::State: performs what people ask, takes scans, keeps comparison and words ready.
#pragma once

#include "catalog/bundle/manifest.h"
#include "catalog/store/search.h"
#include "catalog/store/store.h"
#include "kiosk/camera/camera_sight.h"
#include "kiosk/camera/guidance.h"
#include "kiosk/camera/likely.h"
#include "kiosk/clock.h"
#include "kiosk/desk/desk.h"
#include "kiosk/desk/settings.h"
#include "kiosk/input/scan.h"
#include "kiosk/input/serial_port.h"
#include "kiosk/session/aisles.h"
#include "kiosk/session/scanning.h"
#include "kiosk/session/settled.h"
#include "ui/state.h"
#include "ui/words/language.h"

#include <chrono>
#include <functional>
#include <initializer_list>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace kiosk {

/// One station's session. Not thread safe: lives on the screen's thread.
class Session {
public:
    /// `languages` must begin with one that is no draft and, like `store`, must outlive the session. Throws
    /// std::runtime_error when the catalog is broken.
    Session(catalog::Store& store, std::span<const ui::Language> languages, Settings settings = {});

    [[nodiscard]] const ui::State& state() const { return state_; }
    /// The language of the screen that is shown: never a draft but at the leader desk.
    [[nodiscard]] const ui::Language& language() const;

    /// Performs what was asked for, in order. Throws std::runtime_error when the catalog is broken and needed.
    void apply(const ui::Actions& actions);

    /// Takes one scan: from its raw text to a side, or to an answer why not. Never throws for what was scanned, only
    /// std::runtime_error for a broken catalog; both sides and the screen are then as they were.
    void take(const Scan& scan);

    /// What there is to say about the camera.
    enum class Camera {
        Off, ///< nothing
        Ready,
        Small, ///< ready, with few pixels
        Black, ///< its picture is black
        None,
        Unplugged,
        Stalled,
        Busy,
        Refused,
        WrongFormat,
    };
    void camera_is(Camera camera);
    /// The device that somebody asked for by name, for the words about it; empty where nobody did.
    void camera_named(std::string device);
    /// What the camera sees now, and what to do about it; shown while it takes pictures.
    void camera_sees(const CameraSight& sight);
    /// What the camera may see, where it is not sure. Where the next package is awaited and the catalog has one to four
    /// of these products, the station asks whether it is one of them; it never chooses. Returns whether it asks now.
    /// Does not ask about what a person or a scan has just answered, and not while a page is read aloud.
    bool consider(const Likely& likely);
    /// The clock for what was answered when; without one no time passes.
    void goes_by(Now now);

    /// Works on the search by name while its screen is open: portions of about a millisecond, as long as `go_on` says
    /// so, at least one. Returns whether there is more to do. Throws std::runtime_error when the catalog is broken.
    bool search_on(const std::function<bool()>& go_on);
    /// Whether there is something to search on.
    [[nodiscard]] bool searching() const { return searching_ && state_.screen == ui::ScreenId::FindByName; }

    /// Goes on with another catalog (a new one was loaded). What is on the sides is shown as that catalog has it, and
    /// stays as it was where it has none. Throws std::runtime_error when the catalog is broken.
    void use(catalog::Store& store);
    /// Lets go of what holds the catalog open that will be closed before `use`.
    void leave_catalog();

    /// Says on Welcome from now on whose labels these are; nothing: the place's own.
    void shows(std::optional<catalog::Manifest> bundle);

    /// Lets touches reach the leader desk, which must outlive the session. Without it no touch does.
    void open_desk(Desk& desk);

    /// Takes what the work at the desk brought; true when the screen may look different, or a catalog may be another.
    bool follow_desk();

    /// Says once, visibly, that these are invented products.
    void say_demo();

    /// Says that lines of the settings could not be taken; without lines, that the file could not be read.
    void say_settings_broken(std::span<const std::size_t> lines);

    /// Says that a language file could not be used.
    void say_language_broken();

    /// Says that there is a scanner on a serial port which cannot be listened to, and what to do.
    void say_scanner_trouble(PortTrouble what, const std::string& port);

    /// Says that the scanner whose trouble was told is listened to now.
    void say_scanner_ready();

    /// Says that the catalog broke under the station; everything that needs no catalog goes on.
    void say_catalog_broken();

    /// Sets language ("en"), text size and basis without a notice: for `render` and settings. Unknown ones and
    /// drafts are ignored.
    void set_language(std::string_view code);
    void set_text_percent(int percent);
    void show(ui::ScreenId screen);

    /// What holds for the next person: the station begins with it, and goes back to it when nobody is there.
    struct Defaults {
        std::string language = "en";
        int text_percent = 100;
        ui::ThemeName theme = ui::ThemeName::Paper;
    };
    void begin_with(const Defaults& defaults);
    /// The glass: pixels a millimetre (0: not measured) and the width of a window in pixels, for the card on Measure.
    void glass_is(float px_per_mm, float width_px);
    /// Lets Ways lead to Measure. `keep` saves pixels a millimetre and tells whether that worked.
    void may_measure(std::function<bool(float px_per_mm)> keep);
    /// How long nobody may touch anything until the station asks; zero or less: it never does.
    void asks_after(std::chrono::seconds patience);
    /// There is something to speak with, or no longer.
    void voice_is(bool there);
    /// Reading aloud has come to its end.
    void voice_ended();

    /// Whether somebody has left something behind: what they scanned, or chose for themselves.
    [[nodiscard]] bool in_use() const;
    /// Whether somebody waits without touching: for words that are read, or for work at the desk.
    [[nodiscard]] bool occupied() const;
    /// Nobody has touched the station for a while: asks whether somebody is there, and counts down.
    void ask_whether_there(int seconds_left);
    /// Nobody was: forgets them, and is as it began.
    void forget();

private:
    void perform(const ui::GoBack&);
    void perform(const ui::StartOver&);
    void perform(const ui::TakeBack&);
    void perform(const ui::NextLanguage&);
    void perform(const ui::NextTextSize&);
    void perform(const ui::ChooseBasis&);
    void perform(const ui::OpenAmounts&);
    void perform(const ui::ChooseMyAmount&);
    void perform(const ui::OpenWhy&);
    void perform(const ui::ToggleKeep&);
    void perform(const ui::OpenLabel&);
    void perform(const ui::ShowPair&);
    void perform(const ui::ChooseAisle&);
    void perform(const ui::FindByName&);
    void perform(const ui::TypeLetters&);
    void perform(const ui::EraseLetter&);
    void perform(const ui::ClearLetters&);
    void perform(const ui::OpenAisle&);
    void perform(const ui::TakeProduct&);
    void perform(const ui::TurnPage&);
    void perform(const ui::OpenPrices&);
    void perform(const ui::PickPriceSide&);
    void perform(const ui::TypePriceDigit&);
    void perform(const ui::ErasePriceDigit&);
    void perform(const ui::ClearPrice&);
    void perform(const ui::AskDesk&);
    void perform(const ui::AskAccess& asked);
    void perform(const ui::OpenWays&);
    void perform(const ui::ChooseTheme&);
    void perform(const ui::ChooseTextSize&);
    void perform(const ui::ReadAloud&);
    void perform(const ui::ToggleVoiceOnly&);
    void perform(const ui::StopVoice&);
    void perform(const ui::PauseVoice&);
    void perform(const ui::SayAgain&);
    void perform(const ui::ChangeRate&);
    void perform(const ui::ChangeVolume&);
    void perform(const ui::OpenGroupView&);
    void perform(const ui::OpenWords&);
    void perform(const ui::KeepGoing&);
    void perform(const ui::OpenMeasure&);
    void perform(const ui::SetCardWidth&);
    void perform(const ui::KeepMeasure&);

    /// A screen that was left, and the page of it that was open.
    struct Visit {
        ui::ScreenId screen;
        int page;
    };

    [[nodiscard]] std::optional<Visit> way_back(const Visit& visit) const;
    void place(core::Product product);
    void go(ui::ScreenId screen);
    void stop_voice();
    void say(ui::Notice::Tone tone, std::string words);
    void say(ui::Notice::Tone tone, ui::TextId id, std::initializer_list<ui::Fill> fills = {});
    [[nodiscard]] bool may_speak(std::size_t language) const;
    [[nodiscard]] std::size_t default_language() const;
    [[nodiscard]] std::size_t next_language() const;
    void leave_draft();
    void answer(const Scanned& scanned);
    void read_again(ui::State& state);
    void leave_not_found();
    void not_found(const std::string& code);
    void offer(const std::vector<core::Product>& products);
    void put_away_likely();
    void settle(const Scan& scan);
    void refresh_likely();
    void refresh();
    void refresh_bundle();
    void look_for(std::string words);
    void ask();
    void refresh_found();
    void refresh_desk();
    void count_for_desk();
    void refresh_prices();
    void refresh_pair(const core::Product& left, const core::Product& right);
    void refresh_why();
    void refresh_words();
    void refresh_camera();
    [[nodiscard]] std::string hint_words() const;

    catalog::Store* store_;
    Desk* desk_ = nullptr; ///< nothing: no touch reaches it
    std::optional<catalog::Manifest> bundle_;
    std::span<const ui::Language> languages_;
    Settings settings_;
    Defaults defaults_;
    std::function<bool(float)> keep_measure_; ///< nothing: the glass is not measured here
    std::size_t language_ = 0;
    ui::State state_;
    std::optional<ui::State> before_;           ///< what StartOver put away
    std::vector<Visit> trail_;                  ///< where GoBack leads
    std::vector<Aisle> aisles_;                 ///< of the list that is open
    std::optional<catalog::NameSearch> search_; ///< once a name was typed
    std::vector<core::Product> found_;          ///< its answers, as the catalog has them
    std::size_t told_ = 0;                      ///< how many of its answers were looked at
    bool searching_ = false;
    std::vector<core::Product> likely_;      ///< what is asked about; empty: nothing
    std::vector<core::Gtin> likely_numbers_; ///< and all numbers that the camera took it for
    Settled settled_;
    TimePoint scanned_at_{};
    Now now_ = [] { return TimePoint{}; };
    unsigned taken_ = 0;
    Camera camera_ = Camera::Off;
    std::string camera_device_;
    Hint hint_ = Hint::Aim;
};

} // namespace kiosk
