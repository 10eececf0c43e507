// All that lives from frame to frame. Only the session writes it; screens read it and compute nothing.
#pragma once

#include "core/compare/comparison.h"
#include "core/figure/money.h"
#include "core/product.h"
#include "ui/access/voice_state.h"
#include "ui/actions.h"
#include "ui/camera_view.h"
#include "ui/desk.h"
#include "ui/look/theme.h"
#include "ui/words/amounts_words.h"
#include "ui/words/label_words.h"
#include "ui/words/pair_words.h"
#include "ui/words/what_is.h"
#include "ui/words/why_words.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace ui {

/// The screens.
enum class ScreenId {
    Welcome,
    OneLabel,
    Pair,
    NotFound,
    WhichProduct,
    FindByName,
    PickAisle,
    PickProduct,
    Prices,
    Amounts,
    Why,
    Words,
    GroupView,
    Ways,
    Measure,
    StillThere,
    LikelyProduct,
    Gallery,
    Desk,
    DeskFiles,
    DeskFile,
    DeskWork,
    DeskReport,
    DeskKey,
    DeskAudit,
    DeskRule,
    DeskDoubt,
    DeskCamera,
};

/// A product on one side.
struct Held {
    core::Product product;
    bool kept = false;  ///< stays when the next product comes
    unsigned taken = 0; ///< counts up with each product taken: the smaller one is the older side
    bool operator==(const Held&) const = default;
};

/// The visible answer to the last scan or touch, already in words.
struct Notice {
    enum class Tone { Quiet, Found, Refused }; ///< which sound goes with it
    std::string words;
    Tone tone = Tone::Quiet;
    unsigned number = 0; ///< counts up with each notice, so that the same words twice sound twice
    bool operator==(const Notice&) const = default;
};

/// One line of a list to choose from.
struct PickEntry {
    core::Gtin gtin;
    std::string name;
    std::string detail; ///< brand, net quantity; may have two lines
    bool operator==(const PickEntry&) const = default;
};

/// One aisle of the list.
struct PickAisle {
    std::string aisle; ///< as in the catalog; may be empty
    std::string words; ///< "Cereals"
    std::string count; ///< "16 products"
    bool operator==(const PickAisle&) const = default;
};

/// The state of the whole station, as screens see it.
struct State {
    ScreenId screen = ScreenId::Welcome;
    std::array<std::optional<Held>, 2> sides;
    std::optional<Side> newest; ///< the side that changed last: underlined until the next touch
    core::Basis basis = core::Basis::Serving;
    core::MyAmount my_amount;              ///< for Basis::MyAmount
    std::optional<OpenWhy> why_of;         ///< the figure that Why tells about
    std::optional<WhyWords> why;           ///< and what it tells
    ScreenId words_of = ScreenId::Welcome; ///< the screen whose words Words explains
    std::vector<Meaning> words;            ///< and those words
    std::optional<AmountsWords> amounts;   ///< what Amounts offers
    std::optional<core::Comparison> comparison;
    std::optional<PairWords> pair;   ///< both sides in words, once there are two
    std::optional<LabelWords> label; ///< the label that OneLabel shows
    Side label_side = Side::Left;
    std::array<std::optional<core::Money>, 2> prices; ///< as typed from the shelf
    Side price_side = Side::Left;                     ///< the price that is being typed
    std::optional<Section> price_words;               ///< both prices in words, once one is typed
    std::string code;                                 ///< what NotFound tells about
    std::vector<PickEntry> picks;                     ///< products to choose from (PickProduct, WhichProduct)
    std::vector<PickEntry> likely; ///< what the camera may see (LikelyProduct); empty: nothing is asked
    std::vector<PickAisle> aisles; ///< PickAisle
    std::string pick_title;
    bool by_aisle = false;        ///< there are aisles to leaf through, and few enough products
    std::string typed;            ///< the name that FindByName looks for, in capitals
    std::vector<PickEntry> found; ///< what fits it, as far as is known by now
    std::string found_words;      ///< how many there are, or why there are none; empty while nothing is typed
    int page = 0;                 ///< of the screen shown; a screen shows its last page when this is too high
    int text_percent = 100;
    ThemeName theme = ThemeName::Paper;
    VoiceState voice;
    float px_per_mm = 0;          ///< of the glass; 0: nobody has measured it
    int distance_mm = 500;        ///< from which one person reads
    int group_distance_mm = 2500; ///< from which a group reads GroupView
    int card_px = 0;              ///< the width of the card that Measure draws
    int idle_seconds = 0;         ///< without a touch, until the station asks whether somebody is there; 0: never
    bool may_measure = false;     ///< whether Ways leads to Measure
    int seconds_left = 0;         ///< until StillThere goes back to the start
    std::string other_language;   ///< the name of the language that the button changes to
    bool can_take_back = false;
    Notice notice;
    std::string reader;               ///< what the camera says of itself, in words; empty: nothing to say
    std::optional<CameraView> camera; ///< what it sees; nothing: no picture is shown
    std::string bundle;               ///< whose labels these are, in words; empty: the place's own
    bool desk_open = false;           ///< whether the leader desk can be reached from Welcome
    std::optional<DeskPage> desk;     ///< the page of the desk that is shown
};

} // namespace ui
