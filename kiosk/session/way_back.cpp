// Where Back leads.
#include "kiosk/desk/desk_words.h"
#include "kiosk/session/session.h"

namespace kiosk {

using ui::ScreenId;

namespace {

/// Screens that hold what was scanned; the others are steps on the way and GoBack does not return to them.
bool is_place(ScreenId screen)
{
    return screen == ScreenId::Welcome || screen == ScreenId::OneLabel || screen == ScreenId::Pair ||
           screen == ScreenId::PickAisle || screen == ScreenId::FindByName || screen == ScreenId::Desk ||
           screen == ScreenId::DeskFiles || screen == ScreenId::DeskFile || screen == ScreenId::DeskAudit ||
           screen == ScreenId::DeskRule || screen == ScreenId::DeskReport || screen == ScreenId::DeskCamera ||
           screen == ScreenId::Ways;
}

} // namespace

/// Where Back leads by a visit; nothing where that was a step on the way. Who looked up words goes on reading whatever
/// screen they stood on. Who was led away from work at the desk by a
/// scan comes back to it while it is done, and then to what came of it. Back to a question only while it is open.
std::optional<Session::Visit> Session::way_back(const Visit& visit) const
{
    if (visit.screen == ScreenId::LikelyProduct)
        return likely_.empty() ? std::nullopt : std::optional(visit);
    if (is_place(visit.screen) || state_.screen == ScreenId::Words)
        return visit;
    if (visit.screen != ScreenId::DeskWork || !desk_ || is_desk(state_.screen))
        return std::nullopt;
    if (desk_->busy())
        return visit;
    return desk_->state().came ? std::optional(Visit{*desk_->state().came, 0}) : std::nullopt;
}

void Session::perform(const ui::GoBack&)
{
    if (state_.screen == ScreenId::LikelyProduct) { // none of these: also back to a code that has no label
        put_away_likely();
        return;
    }
    Visit to{ScreenId::Welcome, 0};
    while (!trail_.empty()) {
        const auto last = way_back(trail_.back());
        trail_.pop_back();
        if (last && last->screen != state_.screen) {
            to = *last;
            break;
        }
    }
    state_.screen = to.screen;
    state_.page = to.page; // whoever looked something up goes on reading where they were
}

} // namespace kiosk
