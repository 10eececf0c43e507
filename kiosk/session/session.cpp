#include "kiosk/session/session.h"

#include "kiosk/session/sides.h"
#include "ui/look/sizes.h"
#include "ui/words/rule_words.h"

#include <algorithm>
#include <cstddef>
#include <string>

namespace kiosk {

using ui::Notice;
using ui::ScreenId;
using ui::Side;
using ui::TextId;

namespace {

TextId side_word(Side side)
{
    return side == Side::Left ? TextId::side_left : TextId::side_right;
}

TextId class_text(core::CodeClass code_class)
{
    switch (code_class) {
    case core::CodeClass::RestrictedRegion:
    case core::CodeClass::RestrictedCompany:
        return TextId::notice_store_code;
    case core::CodeClass::Coupon:
    case core::CodeClass::Refund:
        return TextId::notice_coupon;
    case core::CodeClass::Isbn:
    case core::CodeClass::Ismn:
    case core::CodeClass::Issn:
        return TextId::notice_book;
    case core::CodeClass::Product:
    case core::CodeClass::Demo:
    case core::CodeClass::Reserved:
    case core::CodeClass::Unassigned:
    case core::CodeClass::Unused:
        break;
    }
    return TextId::notice_not_assigned;
}

} // namespace

Session::Session(catalog::Store& store, std::span<const ui::Language> languages, Settings settings)
    : store_(&store), languages_(languages), settings_(std::move(settings))
{
    state_.by_aisle = is_for_leafing(*store_);
    refresh();
}

void Session::use(catalog::Store& store)
{
    leave_catalog();
    put_away_likely(); // what it may be is another question to another catalog
    store_ = &store;
    state_.by_aisle = is_for_leafing(store);
    look_for(state_.typed);
    read_again(state_);
    if (before_)
        read_again(*before_);
    say(Notice::Tone::Quiet, TextId::notice_reloaded);
    if (state_.screen == ScreenId::PickAisle || state_.screen == ScreenId::PickProduct)
        perform(ui::ChooseAisle{});
    count_for_desk();
    refresh();
}

/// What is on the sides, as this catalog has it; what it does not have stays as it was.
void Session::read_again(ui::State& state)
{
    for (auto& side : state.sides)
        if (side)
            if (auto product = store_->find(side->product.gtin))
                side->product = std::move(*product);
}

void Session::say_demo()
{
    say(Notice::Tone::Quiet, TextId::notice_demo);
}

void Session::say_settings_broken(std::span<const std::size_t> lines)
{
    constexpr std::size_t most = 5; // more than people count
    if (lines.empty())
        return say(Notice::Tone::Refused, TextId::notice_settings_file);
    std::string named;
    for (const std::size_t line : lines.first(std::min(most, lines.size())))
        named += (named.empty() ? "" : ", ") + std::to_string(line);
    if (lines.size() > most)
        named = language().fill(TextId::notice_settings_more, {{"lines", named}});
    if (lines.size() == 1)
        say(Notice::Tone::Refused, TextId::notice_settings, {{"line", named}});
    else
        say(Notice::Tone::Refused, TextId::notice_settings_lines, {{"lines", named}});
}

void Session::say_language_broken()
{
    say(Notice::Tone::Refused, TextId::notice_language);
}

void Session::say_scanner_trouble(PortTrouble what, const std::string& port)
{
    const auto id = what == PortTrouble::Absent    ? TextId::notice_scanner_absent
                    : what == PortTrouble::Pulled  ? TextId::notice_scanner_pulled
                    : what == PortTrouble::Refused ? TextId::notice_scanner_refused
                    : what == PortTrouble::Busy    ? TextId::notice_scanner_busy
                                                   : TextId::notice_scanner_no_port;
    say(Notice::Tone::Refused, id, {{"port", port}});
}

void Session::say_scanner_ready()
{
    say(Notice::Tone::Quiet, TextId::notice_scanner_ready);
}

void Session::say_catalog_broken()
{
    say(Notice::Tone::Refused, TextId::notice_catalog_broken);
}

void Session::apply(const ui::Actions& actions)
{
    for (const auto& action : actions) {
        state_.newest.reset();
        const unsigned said = state_.notice.number;
        std::visit([this](const auto& asked) { perform(asked); }, action);
        if (state_.notice.number == said) // whoever touched something has seen it
            state_.notice.words.clear();
    }
    if (!actions.empty())
        refresh();
}

void Session::take(const Scan& scan)
{
    if (desk_ && state_.screen == ScreenId::DeskCamera) { // whoever tries the camera wants to stay there
        desk_->has_read(scan.text);
        refresh_desk();
        return;
    }
    settle(scan);
    answer(look_up(scan, [this](const core::Gtin& gtin) { return store_->find(gtin); }));
    refresh();
}

void Session::answer(const Scanned& scanned)
{
    using Answer = Scanned::Answer;
    switch (scanned.answer) {
    case Answer::Found:
        if (scanned.products.size() > 1)
            offer(scanned.products);
        else
            place(scanned.products.front());
        break;
    case Answer::Unknown:
        not_found(scanned.code);
        break;
    case Answer::Case:
        leave_not_found();
        say(Notice::Tone::Refused, TextId::notice_case, {{"code", scanned.code}});
        break;
    case Answer::NoProduct:
        leave_not_found();
        say(Notice::Tone::Refused, class_text(scanned.code_class), {{"code", scanned.code}});
        break;
    case Answer::Unreadable:
        leave_not_found();
        say(Notice::Tone::Refused, scanned.code.empty() ? TextId::notice_other_code : TextId::notice_unreadable);
        break;
    }
}

void Session::not_found(const std::string& code)
{
    state_.code = code;
    go(ScreenId::NotFound); // first: the screen decides about the language
    say(Notice::Tone::Refused, TextId::notice_unknown, {{"code", code}});
}

/// That screen is about an earlier code, and its large digits would belie what is said of a later one.
void Session::leave_not_found()
{
    if (state_.screen == ScreenId::NotFound)
        perform(ui::GoBack{});
}

void Session::place(core::Product product)
{
    const std::string name = product.name;
    auto side = side_of(state_.sides, product.gtin);
    const bool already = side.has_value();
    if (!side)
        side = side_to_take(state_.sides);
    if (!side) {
        say(Notice::Tone::Refused, TextId::notice_both_kept);
        return;
    }
    if (already) // a catalog loaded since may know it better
        state_.sides[ui::index_of(*side)]->product = std::move(product);
    else {
        state_.sides[ui::index_of(*side)] = ui::Held{std::move(product), false, ++taken_};
        state_.prices[ui::index_of(*side)].reset(); // it was that of another package
        before_.reset();                            // what was put away is no longer the last thing that happened
    }
    state_.newest = side;
    state_.label_side = *side;
    go(state_.sides[0] && state_.sides[1] ? ScreenId::Pair : ScreenId::OneLabel);
    say(Notice::Tone::Found, already ? TextId::notice_already : TextId::notice_found,
        {{"name", name}, {"side", language().text(side_word(*side))}});
}

void Session::offer(const std::vector<core::Product>& products)
{
    state_.picks.clear();
    for (const auto& product : products)
        state_.picks.push_back({product.gtin, product.name, product.brand});
    go(ScreenId::WhichProduct);
    say(Notice::Tone::Found, TextId::notice_which);
}

void Session::perform(const ui::StartOver&)
{
    look_for("");
    if (state_.sides[0] || state_.sides[1])
        before_ = state_;
    state_.sides = {};
    state_.prices = {};
    state_.basis = core::Basis::Serving;
    state_.my_amount = {};
    state_.why_of.reset();
    state_.screen = ScreenId::Welcome;
    state_.page = 0;
    trail_.clear();
    if (before_)
        say(Notice::Tone::Quiet, TextId::notice_started_over);
}

void Session::perform(const ui::TakeBack&)
{
    if (!before_)
        return;
    state_.sides = before_->sides;
    state_.prices = before_->prices;
    state_.basis = before_->basis;
    state_.label_side = before_->label_side;
    before_.reset();
    go(state_.sides[0] && state_.sides[1] ? ScreenId::Pair : ScreenId::OneLabel);
    say(Notice::Tone::Quiet, TextId::notice_taken_back);
}

void Session::perform(const ui::NextLanguage&)
{
    language_ = next_language();
}

void Session::perform(const ui::NextTextSize&)
{
    set_text_percent(ui::next_text_percent(state_.text_percent));
}

void Session::perform(const ui::ChooseBasis& asked)
{
    state_.basis = asked.basis; // the page stays: the same nutrients, another basis
}

void Session::perform(const ui::ToggleKeep& asked)
{
    auto& held = state_.sides[ui::index_of(asked.side)];
    if (!held)
        return;
    held->kept = !held->kept;
    say(Notice::Tone::Quiet, held->kept ? TextId::notice_kept : TextId::notice_let_go, {{"name", held->product.name}});
}

void Session::perform(const ui::OpenLabel& asked)
{
    if (!state_.sides[ui::index_of(asked.side)])
        return;
    state_.label_side = asked.side;
    go(ScreenId::OneLabel);
}

void Session::perform(const ui::ShowPair&)
{
    if (state_.sides[0] && state_.sides[1])
        go(ScreenId::Pair);
}

void Session::perform(const ui::OpenAisle& asked)
{
    state_.picks = products_in(*store_, asked.aisle);
    state_.pick_title = asked.aisle;
    go(ScreenId::PickProduct);
}

void Session::perform(const ui::TakeProduct& asked)
{
    if (state_.screen == ScreenId::LikelyProduct) // the finger says what the camera could not
        take({asked.gtin.digits(), core::Symbology::Unknown, Scan::From::Finger, now_()});
    else if (auto product = store_->find(asked.gtin))
        place(std::move(*product));
    else
        not_found(asked.gtin.digits());
}

void Session::perform(const ui::TurnPage& asked)
{
    state_.page = std::max(0, state_.page + asked.by);
}

void Session::go(ScreenId screen)
{
    if (screen != state_.screen) {
        constexpr std::size_t longest_trail = 16;
        trail_.push_back({state_.screen, state_.page});
        if (trail_.size() > longest_trail)
            trail_.erase(trail_.begin());
    }
    state_.screen = screen;
    state_.page = 0;
}

void Session::say(Notice::Tone tone, std::string words)
{
    state_.notice = {std::move(words), tone, state_.notice.number + 1};
}

void Session::say(Notice::Tone tone, TextId id, std::initializer_list<ui::Fill> fills)
{
    say(tone, language().fill(id, fills));
}

void Session::set_language(std::string_view code)
{
    for (std::size_t i = 0; i < languages_.size(); ++i)
        if (languages_[i].code() == code && !languages_[i].is_draft())
            language_ = i;
    refresh();
}

void Session::set_text_percent(int percent)
{
    if (std::find(std::begin(ui::text_percents), std::end(ui::text_percents), percent) != std::end(ui::text_percents))
        state_.text_percent = percent;
    state_.page = 0;
}

void Session::show(ScreenId screen)
{
    go(screen);
    refresh();
}

/// Works out comparison and words again, so that no screen ever has to. Asks the catalog nothing: it may be broken.
void Session::refresh()
{
    leave_draft();
    const auto& left = state_.sides[0];
    const auto& right = state_.sides[1];
    state_.comparison.reset();
    state_.pair.reset();
    state_.label.reset();
    state_.amounts.reset();
    if (left && right)
        refresh_pair(left->product, right->product);
    refresh_prices();
    refresh_why();
    if (const auto& held = state_.sides[ui::index_of(state_.label_side)]) {
        state_.label = ui::label_words(held->product, language(), settings_.choices);
        ui::add_rules(held->product, settings_.rules, language(), *state_.label);
    }
    refresh_words();
    state_.aisles = aisle_words(aisles_, language());
    refresh_bundle();
    refresh_found();
    refresh_likely();
    refresh_desk();
    state_.can_take_back = before_.has_value();
    state_.other_language = languages_[next_language()].text(TextId::language_name);
    refresh_camera();
}

} // namespace kiosk
